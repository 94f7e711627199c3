package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long, and how much, stands in one copy only while nothing fails, by hand. */
class TimeInOneCopyTest {

  private static final double HOURS = 1_680;

  private static Copy copy(String id, Optional<Feed> feed) {
    return new Copy(
        id,
        new Place(id, List.of()),
        Optional.empty(),
        new Medium.Service(Rate.NONE, OptionalDouble.empty()),
        new Copy.Repair(Delay.none(), Delay.none(), new Fixed(0)),
        feed,
        OptionalDouble.empty(),
        0,
        Copy.Reach.ONLINE,
        true,
        Optional.empty(),
        Optional.empty());
  }

  private static Log undisturbed(boolean byCourse, Copy... copies) {
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    Footage footage =
        new Footage(
            0,
            new Shoots(168, 100, Shoots.Spacing.EVEN),
            0,
            OptionalDouble.empty(),
            1,
            OptionalDouble.empty());
    Studio studio =
        new Studio(
            "s",
            HOURS / Units.HOURS_PER_YEAR,
            Optional.empty(),
            footage,
            Desk.QUIET,
            List.of(layout));
    Log log = new Log();
    new History(studio, layout, 1, Bias.NONE, byCourse).simulate(0, log);
    return log;
  }

  /**
   * A shoot at 168 h, a run at its very instant: it goes a night later, 24 h + 2 h of transfer. Of
   * ten shoots the last, at the horizon itself, has no time to be bare in.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void nightlyFeedOfWeeklyShootsIsBareForADayAndTheTransfer(boolean byCourse) {
    Feed nightly =
        new Feed(
            "main",
            new Feed.Every(24, 0),
            OptionalDouble.of(50 / Units.SECONDS_PER_HOUR),
            Rate.NONE,
            OptionalDouble.empty(),
            Feed.DEFAULT_VISIT_HOURS);
    Log log =
        undisturbed(byCourse, copy("main", Optional.empty()), copy("far", Optional.of(nightly)));
    assertThat(log.time[1]).isCloseTo(9 * 26.0, within(1e-9));
    assertThat(log.time[5]).isEqualTo(100);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void oneCopyIsBareFromTheFirstShoot(boolean byCourse) {
    Log log = undisturbed(byCourse, copy("main", Optional.empty()));
    assertThat(log.time[1]).isCloseTo(HOURS - 168, within(1e-9));
  }
}
