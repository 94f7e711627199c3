package lastcopy.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.cli.scenario.Texts;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Shoots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every form of a value. */
class ValuesTest {

  @ParameterizedTest
  @CsvSource({
    "96 GB, 96e9",
    "2 TiB, 2199023255552",
    "0.5TB, 5e11",
    "3 PB, 3e15",
    "5 MiB, 5242880",
    "7 bytes, 7",
    "1e3 kB, 1e6"
  })
  void sizes(String text, double bytes) {
    assertThat(Texts.model(Texts.withDrive("size: " + text + ", fails: 2 %/year")).sizeBytes())
        .isEqualTo(bytes);
  }

  @ParameterizedTest
  @CsvSource({
    "6 h, 6",
    "1 hour, 1",
    "90 min, 1.5",
    "30 minutes, 0.5",
    "1 day, 24",
    "4 days, 96",
    "2 weeks, 336",
    "3 months, 2190",
    "5 years, 43800",
    "3600 s, 1",
    "0 h, 0"
  })
  void times(String text, double hours) {
    assertThat(Texts.main(Texts.withMain("drives: 1 x desk, wait: " + text)).repair().arrival())
        .isEqualTo(new Fixed(hours));
  }

  @ParameterizedTest
  @CsvSource({
    "20 Mbit/s, 2.5e6",
    "1 Gbit / s, 1.25e8",
    "110 MB/s, 1.1e8",
    "8 kbit/s, 1e3",
    "2 GB/s, 2e9",
    "1 MiB/s, 1048576"
  })
  void links(String text, double bytesPerSecond) {
    assertThat(Texts.main(Texts.withMain("drives: 1 x desk, restores_at: " + text)).restoresAt())
        .hasValue(bytesPerSecond);
  }

  @ParameterizedTest
  @CsvSource({"5 TB/year, 13698630136.986301", "730 GB/month, 24e9", "7 GB per week, 1e9"})
  void ingestIsOneShootADay(String text, double bytes) {
    Shoots shoots = Texts.studio(Texts.withFootage("ingest: " + text)).footage().shoots();
    assertThat(shoots.everyHours()).isEqualTo(24);
    assertThat(shoots.spacing()).isEqualTo(Shoots.Spacing.EVEN);
    assertThat(shoots.sizeBytes()).isCloseTo(bytes, within(bytes * 1e-12));
  }

  @Test
  void chancesAndRates() {
    assertThat(rate("2 %/year")).isEqualTo(Rate.ofYearlyProbability(0.02));
    assertThat(rate("2 % per year")).isEqualTo(Rate.ofYearlyProbability(0.02));
    assertThat(rate("0.02 per year")).isEqualTo(Rate.perYear(0.02));
    assertThat(rate("3 per year").perHour()).isEqualTo(3.0 / 8760);
    assertThat(rate("0 %/year")).isEqualTo(Rate.NONE);
  }

  private static Rate rate(String text) {
    String scenario = Texts.VALID.replace("fire: {rate: 1 %/year}", "fire: {rate: " + text + "}");
    return Texts.main(scenario).place().mishaps().get(0).rate();
  }

  @Test
  void laws() {
    assertThat(fails("2 %/year")).isEqualTo(Exponential.ofYearlyProbability(0.02));
    assertThat(fails("0.5 per year")).isEqualTo(new Exponential(17_520));
    assertThat(fails("0 %/year")).isEqualTo(new Never());
    assertThat(fails("{mean: 50000 h}")).isEqualTo(new Exponential(50_000));
    assertThat(fails("{fixed: 4 days}")).isEqualTo(new Fixed(96));
    assertThat(fails("4 days")).isEqualTo(new Fixed(96));
    assertThat(fails("{weibull: {shape: 1.12, scale: 461386 h, location: 6 h}}"))
        .isEqualTo(new Weibull(1.12, 461_386, 6));
    assertThat(fails("{weibull: {shape: 1.12, scale: 461386 h}}"))
        .isEqualTo(new Weibull(1.12, 461_386, 0));
    assertThat(fails("{uniform: [1 day, 3 days]}")).isEqualTo(new Uniform(24, 72));
    assertThat(fails("{by_age: [4 %/year, 1.5 %/year]}"))
        .isEqualTo(new ByAge(List.of(0.04, 0.015)));
    assertThat(fails("{sum: [2 %/year, {fixed: 1 day}]}"))
        .isEqualTo(new Competing(List.of(Exponential.ofYearlyProbability(0.02), new Fixed(24))));
  }

  private static Law fails(String text) {
    return Texts.model(Texts.withDrive("size: 8 TB, fails: " + text)).fails();
  }

  @Test
  void looksByTheClock() {
    String keys = "drives: 1 x desk, noticed: {checked_every: 30 days}";
    assertThat(Texts.main(Texts.withMain(keys)).repair().noticed()).isEqualTo(new Delay.Looks(720));
    assertThat(Texts.main(Texts.withMain(keys)).repair().goneNoticed())
        .isEqualTo(new Delay.Looks(720));
  }

  @Test
  void rebuilds() {
    assertThat(rebuild("rebuild: 120 MB/s, rebuild_reads: used, daily_work_takes: 30 %").time())
        .isEqualTo(new Rebuild.ByRate(java.util.OptionalDouble.of(120e6), 0.3));
    assertThat(rebuild("rebuild: 20 h, rebuild_reads: used"))
        .isEqualTo(new Rebuild(new Rebuild.ByLaw(new Fixed(20)), Rebuild.Reads.USED));
    assertThat(rebuild("rebuild: {weibull: {shape: 2, scale: 12 h, location: 6 h}}").time())
        .isEqualTo(new Rebuild.ByLaw(new Weibull(2, 12, 6)));
  }

  private static Rebuild rebuild(String keys) {
    return Texts.mainDrives(Texts.withMain("drives: 2 x desk, arrangement: mirror, " + keys))
        .rebuild();
  }
}
