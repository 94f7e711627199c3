package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.cli.Written;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.outlook.FeedOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.DriveDue;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every time that {@code inspect} states against the engine: drives fail at a fixed hour, and what
 * the told history then does is timed.
 */
class InspectTimesTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 3
      footage: {on_hand: 2 TB, shoots: {every: 90 days, size: 1 kB}}
      uplinks: {office: {speed: 30 Mbit/s}}
      drives:
        sound: {size: 8 TB, speed: 120 MB/s, fails: 0 %/year}
        dies: {size: 8 TB, speed: 100 MB/s, fails: {fixed: 4000 h}}
        weak: {size: 8 TB, speed: 90 MB/s, fails: {mean: 9000 h}}
      layouts:
        one:
          copies:
      """;

  private static Written layout(String... copies) {
    StringBuilder text = new StringBuilder(STUDIO);
    for (String copy : copies) {
      text.append("      ").append(copy).append('\n');
    }
    return Written.of(text.toString());
  }

  /** From the first run after the return until the copy is full. Red if the feed is ignored. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s}",
        "feed: {from: main, every: 7 days, at: 5 h, link: 20 Mbit/s}, restores_at: 100 MB/s",
        "feed: {from: main, continuous: true, link: 10 Mbit/s}, restores_at: 100 MB/s",
        "feed: {from: main, every: 1 day}",
        "feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s, between: [20 h, 6 h]}",
        "feed: {from: main, every: 7 days, at: 5 h, link: 20 Mbit/s, between: [8 h, 17.3 h]}",
        "feed: {from: main, continuous: true, link: 30 Mbit/s, between: [1 h, 6 h]}",
        "feed: {from: main, every: 1 day, at: 2 h, link: office, between: [22 h, 24 h]}",
        "rotation: {drives: 2, every: 7 days}, feed: {from: main, every: 7 days, at: 3 h,"
            + " visits: 30 h, link: 40 Mbit/s}, restores_at: 100 MB/s",
        "rotation: {drives: 2, every: 7 days}, feed: {from: main, every: 7 days, at: 3 h,"
            + " visits: 30 h, link: 90 Mbit/s, between: [0 h, 7 h]}, restores_at: 100 MB/s",
      })
  void aFedCopyComesBackByItsFeed(String feed) {
    Written studio =
        layout(
            "main: {drives: 1 x sound, noticed: 1 day, wait: 1 day}",
            "far: {drives: 1 x dies, noticed: 1 day, wait: 1 day, " + feed + "}");
    Story story = studio.tell(0);
    double back = Written.first(story, Kind.COPY_BACK, 4000);
    double done = Written.first(story, Kind.REFILLED, back);
    double firstRun = feed.contains("continuous") ? back : due(feed, back);
    assertThat(done - (feed.contains("visits") ? firstRun : opening(feed, firstRun)))
        .isCloseTo(studio.outlook("far").refillHours().orElseThrow(), within(1e-3));
  }

  /**
   * The first run that is due; of two drives that take turns the first that came back is looked at.
   */
  private static double due(String feed, double back) {
    double every = feed.contains("rotation") ? 336 : feed.contains("7 days") ? 168 : 24;
    double at = feed.contains("at: 2 h") ? 2 : feed.contains("at: 5 h") ? 5 : 0;
    at = feed.contains("at: 3 h") ? 3 : at;
    double first = at + Math.ceil((back - at) / every) * every;
    // The second of two turns is a week later, if that is sooner.
    return feed.contains("rotation") && first - 168 >= back ? first - 168 : first;
  }

  /** When the link of a feed may be used from a time on. */
  private static double opening(String feed, double time) {
    double[] hours =
        feed.contains("[20")
            ? new double[] {20, 30}
            : feed.contains("[8")
                ? new double[] {8, 17.3}
                : feed.contains("[1 h")
                    ? new double[] {1, 6}
                    : feed.contains("[22") ? new double[] {22, 24} : new double[] {0, 24};
    double ofDay = (time - hours[0] + 240) % 24; // since it last opened
    return ofDay < hours[1] - hours[0] ? time : time + 24 - ofDay;
  }

  /** Carried, also while the link is closed or shared, from the first run after the return on. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "every: 1 day, at: 2 h, link: 20 Mbit/s, carried: {takes: 2 days, rate: 100 MB/s}",
        "every: 1 day, at: 2 h, link: office, between: [20 h, 1 h], carried: {takes: 30 h, rate: 1"
            + " MB/s}",
        "continuous: true, link: 20 Mbit/s, carried: {takes: 0 h, rate: 3 MB/s}",
      })
  void aFedCopyComesBackByHand(String feed) {
    Written studio =
        layout(
            "main: {drives: 1 x sound, noticed: 1 day, wait: 1 day}",
            "far: {drives: 1 x dies, noticed: 1 day, wait: 1 day, feed: {from: main, "
                + feed
                + "}}");
    Story story = studio.tell(0);
    double back = Written.first(story, Kind.COPY_BACK, 4000);
    double firstRun = feed.contains("continuous") ? back : due(feed, back);
    double said = studio.outlook("far").byHandHours().orElseThrow();
    assertThat(said).isLessThan(studio.outlook("far").refillHours().orElseThrow());
    assertThat(Written.first(story, Kind.CARRIED, back)).isEqualTo(firstRun);
    assertThat(Written.first(story, Kind.REFILLED, back) - firstRun).isCloseTo(said, within(1e-3));
  }

  /** From its return until the working copy is full. Red if another copy's rate is taken. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "far: {drives: 1 x sound, feed: {from: main, every: 1 day, link: 50 Mbit/s}}",
        "far: {drives: 1 x sound, feed: {from: main, every: 1 day, link: 50 Mbit/s},"
            + " restores_at: 30 MB/s}",
        "far: {drives: 1 x sound, feed: {from: main, every: 1 day}}",
        "far: {service: {loses: 0 %/year}, feed: {from: main, every: 1 day, link: 20 Mbit/s},"
            + " restores_at: 90 Mbit/s}",
        "far: {service: {loses: 0 %/year, restores_in: 2 days}, feed: {from: main, every: 1 day,"
            + " link: 20 Mbit/s}, restores_at: 90 Mbit/s}",
        "far: {service: {loses: 0 %/year, restores_in: 90 days}, feed: {from: main, every: 1 day,"
            + " link: 20 Mbit/s}, restores_at: 90 MB/s}\n      mid: {drives: 1 x sound, feed:"
            + " {from: main, every: 1 day, link: 20 Mbit/s}}",
      })
  void theWorkingCopyComesBackFromTheFastest(String far) {
    Written studio =
        layout(
            "main: {drives: 1 x dies, noticed: 1 day, wait: 1 day}",
            far,
            "slow: {drives: 1 x sound, feed: {from: main, every: 1 day, link: 1 Mbit/s}}");
    Story story = studio.tell(0);
    double back = Written.first(story, Kind.COPY_BACK, 4000);
    assertThat(Written.first(story, Kind.REFILLED, back) - back)
        .isCloseTo(studio.outlook("main").refillHours().orElseThrow(), within(1e-3));
  }

  /** From the replacement's arrival until the drive is whole. Red if all is read where used is. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "2 x weak, arrangement: mirror",
        "2 x weak, arrangement: mirror, rebuild: 40 MB/s, daily_work_takes: 25 %",
        "2 x weak, arrangement: mirror, rebuild_reads: used",
        "5 x weak, arrangement: double-parity, rebuild_reads: used",
        "5 x weak, arrangement: double-parity",
        "3 x weak, arrangement: parity, rebuild: {fixed: 31 h}",
      })
  void aRebuildTakesSoLong(String drives) {
    Written studio = layout("main: {drives: " + drives + ", noticed: 1 day, wait: 2 days}");
    double said = studio.outlook("main").rebuildHours().orElseThrow();
    for (long number = 0; number < 200; number++) {
      List<lastcopy.story.Moment> moments = studio.tell(number).moments();
      for (int i = 0; i + 1 < moments.size(); i++) {
        var failed = moments.get(i);
        var ready = moments.get(i + 1);
        if (failed.kind() == Kind.DRIVE_FAILED && ready.kind() == Kind.DRIVE_READY) {
          assertThat(ready.hours() - failed.hours() - 72).isCloseTo(said, within(1e-3));
          return;
        }
      }
    }
    throw new AssertionError("no rebuild was seen");
  }

  private static final String SHOOTING =
      STUDIO.replace("on_hand: 2 TB, shoots: {every: 90 days, size: 1 kB}", "FOOTAGE");

  private static Written shooting(String footage, double dies, String far) {
    return Written.of(
        SHOOTING
                .replace("FOOTAGE", footage)
                .replace("years: 3", "years: 0.5")
                .replace("fixed: 4000 h", "fixed: " + dies + " h")
            + "      main: {drives: 1 x dies, noticed: 1 day, wait: 1 day}\n"
            + "      far: {drives: 1 x sound, "
            + far
            + "}\n");
  }

  /**
   * The working copy dies every 90 minutes of four weeks. What is lost then had not crossed: its
   * age is at most the worst lag, and its sum over time is the mean lag times what was shot. Red if
   * only the first of two rotated drives is looked at.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s}",
        "feed: {from: main, every: 7 days, at: 60 h, link: 30 Mbit/s}",
        "feed: {from: main, continuous: true, link: 10 Mbit/s}",
        "feed: {from: main, every: 1 day, at: 2 h, link: 18 Mbit/s, between: [20 h, 6 h]}",
        "feed: {from: main, continuous: true, link: 25 Mbit/s, between: [8 h, 12.5 h]}",
        "feed: {from: main, every: 1 day, at: 2 h, link: office}}\n      other: {drives: 1 x sound,"
            + " feed: {from: main, every: 1 day, at: 2 h, link: office}",
        "feed: {from: main, continuous: true, link: office}}\n      chain: {drives: 1 x sound, feed:"
            + " {from: far, every: 1 day, at: 2 h, link: office, between: [20 h, 6 h]}",
        "rotation: {drives: 2, every: 7 days}, feed: {from: main, every: 7 days, at: 30 h,"
            + " link: 100 Mbit/s}",
      })
  void lagsAreWhatIsLostIfTheWorkingCopyDies(String far) {
    String footage = "on_hand: 100 GB, shoots: {every: 7 days, size: 90 GB}";
    FeedOutlook said = shooting(footage, 4000, far).outlook("far").feed().orElseThrow();
    double from = 2 * 168;
    double to = from + 4 * 168;
    double step = 1.5;
    double sum = 0;
    double worst = 0;
    for (double at = from + step / 2; at < to; at += step) {
      double lost = lostAt(shooting(footage, at, far), at);
      sum += lost * step;
      int shoots = (int) Math.ceil(lost / 90e9 - 1e-9);
      double oldest = 168 * (Math.floor(at / 168) - shoots + 1);
      worst = lost > 0 ? Math.max(worst, at - oldest) : worst;
    }
    assertThat(worst).isCloseTo(said.worstLagHours().orElseThrow(), within(step));
    assertThat(sum / (4 * 90e9)).isCloseTo(said.meanLagHours().orElseThrow(), within(step));
  }

  private static double lostAt(Written studio, double hours) {
    return studio.tell(0).losses().stream()
        .filter(loss -> Math.abs(loss.hours() - hours) < 1e-6)
        .mapToDouble(Loss::bytes)
        .sum();
  }

  /** Just before the first fill is done something is lost with the working copy, then nothing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s}",
        "feed: {from: main, continuous: true, link: 15 Mbit/s}",
        "feed: {from: main, every: 1 day, at: 2 h, link: 20 Mbit/s, between: [20 h, 6 h]}",
        "feed: {from: main, every: 1 day, at: 2 h, link: office, between: [2 h, 6 h], carried:"
            + " {takes: 2 days, rate: 50 MB/s}}",
      })
  void theFirstFillIsDoneWhenNothingWouldBeLost(String far) {
    String footage = "on_hand: 800 GB, shoots: {every: 7 days, size: 2 GB}";
    String empty = "starts: empty, " + far;
    double done =
        shooting(footage, 4000, empty)
            .outlook("far")
            .feed()
            .orElseThrow()
            .firstFillHours()
            .orElseThrow();
    assertThat(lostAt(shooting(footage, done - 0.02, empty), done - 0.02)).isPositive();
    assertThat(lostAt(shooting(footage, done + 0.02, empty), done + 0.02)).isZero();
    // Of a copy that starts full, what is on hand over the link.
    assertThat(
            shooting("on_hand: 800 GB, shoots: {every: 170 days, size: 2 GB}", 4000, far)
                .outlook("far")
                .feed()
                .orElseThrow()
                .firstFillHours()
                .orElseThrow())
        .isCloseTo(done, within(far.contains("every") ? 2.5 : done * 0.01));
  }

  /** A shelf gets its second drive when the first is full. */
  @Test
  void roomIsFullWhenAShelfNeedsItsNextDrive() {
    List<Double> said = new ArrayList<>();
    for (String drives : List.of("1 x sound", "2 x sound, arrangement: shelf")) {
      Written studio =
          Written.of(
              SHOOTING.replace("FOOTAGE", "on_hand: 2 TB, shoots: {every: 7 days, size: 90 GB}")
                  + "      main: {drives: "
                  + drives
                  + "}\n");
      said.add(studio.outlook("main").fillsAtYears().orElse(Double.NaN));
      if (drives.startsWith("2")) {
        assertThat(Written.first(studio.tell(0), Kind.DRIVE_ADDED, 1) / 8760)
            .isCloseTo(said.get(0), within(1e-9));
      }
    }
  }

  /**
   * A shelf in the engine gets its drives when they are full to the brim: of drives that are as
   * large as the limit leaves. Also where footage ages out, which it does not on a shelf. Red if
   * the limit is left out, and if a shelf forgets.
   */
  @ParameterizedTest
  @ValueSource(strings = {"", ", growth: 30 %/year", ", keep_for: 200 days"})
  void theNextDrivesAreDueWhenAShelfOfTheirLimitGetsThem(String more) {
    String footage = "on_hand: 2 TB, shoots: {every: 7 days, size: 90 GB}" + more;
    Written shelf = shelf(footage, "8 TB");
    Written ofLimit = shelf(footage, "6.4 TB");
    RoomAndTime room =
        RoomAndTime.of(shelf.studio(), Outlook.of(shelf.studio()), 0.8, OptionalDouble.empty());
    List<Double> said =
        room.layouts().get(0).copies().get(0).dues().stream().map(DriveDue::years).toList();
    List<Double> added =
        ofLimit.tell(0).moments().stream()
            .filter(moment -> moment.kind() == Kind.DRIVE_ADDED)
            .map(moment -> moment.hours() / 8760)
            .toList();
    assertThat(said).hasSizeGreaterThan(1).hasSameSizeAs(added);
    for (int i = 0; i < said.size(); i++) {
      assertThat(said.get(i)).isCloseTo(added.get(i), within(1e-9));
    }
    assertThat(ofLimit.outlook("main").fillsAtYears().orElseThrow())
        .isCloseTo(added.get(0), within(1e-9));
    // The number that it ends with is the one that the table tells.
    assertThat(1 + added.size())
        .isEqualTo(
            room.choices().stream()
                .filter(choice -> choice.arrangement() == Arrangement.SHELF)
                .filter(choice -> choice.years() == 3 && choice.model().id().equals("sound"))
                .findFirst()
                .orElseThrow()
                .drives()
                .orElseThrow());
  }

  private static Written shelf(String footage, String size) {
    return Written.of(
        SHOOTING.replace("FOOTAGE", footage).replace("sound: {size: 8 TB", "sound: {size: " + size)
            + "      main: {drives: 1 x sound, arrangement: shelf}\n");
  }

  /**
   * Each route into the working copy by itself: with the other copies gone from the layout, it is
   * the one that the engine takes. Red if a route is told with another's rate or delay.
   */
  @Test
  void eachRouteBackTakesSoLong() {
    List<String> far =
        List.of(
            "near: {drives: 1 x sound, feed: {from: main, every: 1 day, link: 50 MB/s}}",
            "home: {drives: 1 x sound, feed: {from: main, every: 1 day, link: 20 Mbit/s},"
                + " restores_at: 30 MB/s}",
            "cloud: {service: {loses: 0 %/year, restores_in: 2 days}, feed: {from: main, every: 1"
                + " day, link: 20 Mbit/s}, restores_at: 90 Mbit/s}");
    String main = "main: {drives: 1 x dies, noticed: 1 day, wait: 1 day}";
    Written all = layout(main, far.get(0), far.get(1), far.get(2));
    for (int i = 0; i < far.size(); i++) {
      Story story = layout(main, far.get(i)).tell(0);
      double back = Written.first(story, Kind.COPY_BACK, 4000);
      assertThat(all.outlook("main").comebacks().get(i).hoursAtEnd())
          .as(far.get(i))
          .isCloseTo(Written.first(story, Kind.REFILLED, back) - back, within(1e-3));
    }
  }

  /**
   * An offload at the speed of the drives: as long as a feed without a link takes to bring one
   * shoot to drives alike, which is what a death of the working copy before its end still loses.
   */
  @Test
  void anOffloadTakesAsLongAsDrivesTakeForAShoot() {
    String footage = "on_hand: 0 GB, shoots: {every: 30 days, size: 900 GB}";
    String far = "feed: {from: main, continuous: true}";
    Studio studio = shooting(footage, 4000, far).studio();
    double hours =
        RoomAndTime.of(studio, Outlook.of(studio), 0.8, OptionalDouble.empty())
            .layouts()
            .get(0)
            .offload()
            .orElseThrow()
            .hoursNow();
    double done = 720 + hours;
    assertThat(lostAt(shooting(footage, done - 0.02, far), done - 0.02)).isPositive();
    assertThat(lostAt(shooting(footage, done + 0.02, far), done + 0.02)).isZero();
  }
}
