package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Uniform;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Carried;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Costs;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Uplink;
import lastcopy.scenario.Work;
import org.junit.jupiter.api.Test;

/** Every key that is simulated, once, and what becomes of it; and what is left out. */
class EveryKeyTest {
  static final String FULL =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 2.5
      currency: EUR
      energy: 0.30 per kWh
      work: {price: 40 per h, repair: 2 h, visit: 20 min, look: 5 min, trial: 1 h}
      footage:
        on_hand: 2.4 TB
        shoots: {per_year: 40, size: 120 GB, spacing: random}
        growth: -10 %/year
        clip: 4 GB
        worth: 900 per shoot
      places:
        studio: {mishaps: {fire: {rate: 0.3 %/year}, theft: {rate: 3 per year, takes: 0.5}}}
        home:
      boxes:
        tower: {rate: 0.2 %/year, price: 250, power: 15 W, speed: 300 MB/s}
      uplinks:
        office: {speed: 50 Mbit/s, price: 40 per month}
      desk:
        deletion: {rate: 0 %/year, size: 2 shoots, noticed: {mean: 20 days}}
        malware: {rate: 0 %/year, noticed: 2 days}
      drives:
        used: {size: 4 TB, price: 40, owned: true, power: 6 W, speed: 90 MB/s, fails: 2 %/year,
               age: {uniform: [2 years, 6 years]}, bought_at: 3 years}
      layouts:
        all:
          title: All keys
          costs: {once: 60, per_year: 24, per_month: 3}
          copies:
            main: {place: studio, box: tower, drives: 3 x used, arrangement: parity,
                   noticed: {checked_every: 30 days}, gone_noticed: 1 h, wait: 4 days,
                   rebuild: 120 MB/s, rebuild_reads: used, daily_work_takes: 0.25,
                   strain: 1, read_errors: 0, latent_defects: 0 %/year}
            far: {place: home, drives: 1 x used, restores_at: 100 MB/s, starts: empty,
                  feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s, stops: 0 per year,
                         between: [20 h, 6 h], carried: {takes: 2 days, rate: 100 MB/s},
                         checked_every: 30 days},
                  keeps_deleted: for good, reach: offline, spoils: {rate: 0 %/year}}
            cloud: {place: hall, service: {loses: 0.001 %/year, price: 5 per TB per month,
                    retrieval: 20 per TB, restores_in: 2 days},
                    feed: {from: far, continuous: true, link: office}, keeps_deleted: 30 days,
                    costs: {once: 5}}
      """;

  private static final Studio STUDIO = Texts.studio(FULL);
  private static final Layout LAYOUT = STUDIO.layouts().get(0);

  @Test
  void theStudioAndItsFootage() {
    assertThat(STUDIO.name()).isEqualTo("Reed Bank Films");
    assertThat(STUDIO.years()).isEqualTo(2.5);
    assertThat(STUDIO.currency()).hasValue("EUR");
    assertThat(STUDIO.energyPerKwh()).hasValue(0.3);
    assertThat(STUDIO.work()).isEqualTo(new Work(OptionalDouble.of(40), 2, 1 / 3.0, 5 / 60.0, 1));
    assertThat(LAYOUT.costs()).isEqualTo(new Costs(60, 24, 3));
    assertThat(STUDIO.footage())
        .isEqualTo(
            new Footage(
                2.4e12,
                new Shoots(219, 120e9, Shoots.Spacing.RANDOM),
                -0.1,
                OptionalDouble.empty(),
                4e9,
                OptionalDouble.of(900)));
    assertThat(STUDIO.desk().deletion().orElseThrow().noticed()).isEqualTo(new Exponential(480));
    assertThat(STUDIO.desk().malware().orElseThrow().noticed()).isEqualTo(new Fixed(48));
  }

  @Test
  void theWorkingCopy() {
    Copy main = LAYOUT.workingCopy();
    Medium.DriveSet set = main.driveSet().orElseThrow();
    assertThat(LAYOUT.title()).isEqualTo("All keys");
    assertThat(main.place().mishaps().get(1).takes()).isEqualTo(0.5);
    assertThat(main.place().mishaps().get(1).rate()).isEqualTo(Rate.perYear(3));
    assertThat(main.box().orElseThrow().bytesPerSecond()).hasValue(300e6);
    assertThat(main.box().orElseThrow().price()).hasValue(250);
    assertThat(main.box().orElseThrow().powerWatts()).hasValue(15);
    assertThat(main.costs()).isEqualTo(Costs.NONE);
    assertThat(main.repair())
        .isEqualTo(
            new Copy.Repair(new Delay.Looks(720), new Delay.Lawful(new Fixed(1)), new Fixed(96)));
    assertThat(set.drives()).isEqualTo(3);
    assertThat(set.arrangement()).isEqualTo(Arrangement.PARITY);
    assertThat(set.model(0).age()).isEqualTo(new Uniform(17_520, 52_560));
    assertThat(set.model(0).boughtAtHours()).isEqualTo(26_280);
    assertThat(set.model(0).price()).hasValue(40);
    assertThat(set.model(0).owned()).isTrue();
    assertThat(set.model(0).powerWatts()).hasValue(6);
    assertThat(set.model(0).speed()).isEqualTo(90e6);
  }

  @Test
  void theFedCopies() {
    Copy far = LAYOUT.copies().get(1);
    assertThat(far.feed().orElseThrow().schedule()).isEqualTo(new Feed.Every(24, 2));
    assertThat(far.feed().orElseThrow().bytesPerSecond()).hasValue(2.5e6);
    assertThat(far.feed().orElseThrow().checkedEveryHours()).hasValue(720);
    assertThat(far.feed().orElseThrow().between()).hasValue(new DailyHours(20, 6));
    assertThat(far.feed().orElseThrow().carried()).hasValue(new Carried(48, 100e6));
    assertThat(far.restoresAt()).hasValue(100e6);
    assertThat(far.keepsDeletedHours()).isInfinite();
    assertThat(far.reach()).isEqualTo(Copy.Reach.OFFLINE);
    assertThat(far.startsFull()).isFalse();
    Copy cloud = LAYOUT.copies().get(2);
    assertThat(cloud.place().id()).isEqualTo("hall");
    assertThat(cloud.costs()).isEqualTo(new Costs(5, 0, 0));
    assertThat(cloud.medium())
        .isEqualTo(
            new Medium.Service(
                Rate.ofYearlyProbability(0.00001),
                OptionalDouble.of(5),
                OptionalDouble.of(20),
                48));
    assertThat(cloud.feed().orElseThrow().uplink())
        .hasValue(new Uplink("office", 6.25e6, OptionalDouble.of(40)));
    assertThat(cloud.feed().orElseThrow().bytesPerSecond()).hasValue(6.25e6);
    assertThat(cloud.feed().orElseThrow().schedule()).isEqualTo(new Feed.Continuous());
  }

  @Test
  void whatIsLeftOutIsListed() {
    assertThat(Texts.far(Texts.VALID).place().id()).isEqualTo("copy:far");
    assertThat(Texts.scenario(Texts.VALID).defaults())
        .contains(
            new Default("drives.desk", "speed", "120 MB/s", "assumption"),
            new Default("footage", "clip", "1 GB", "format default"),
            new Default("layouts.pair.main", "arrangement", "single", "format default"),
            new Default("layouts.pair.main", "noticed", "0 h", "format default"),
            new Default("layouts.pair.main", "wait", "0 h", "format default"),
            new Default("layouts.pair.far", "restores_at", "the feed's link", "format default"),
            new Default("layouts.pair.far.feed", "at", "0 h", "format default"))
        .noneMatch(d -> d.where().equals("layouts.pair.main") && d.key().equals("place"));
  }
}
