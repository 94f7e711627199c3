package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import lastcopy.history.hazard.Bias;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
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
    CopyBuilder copy = Copy.builder(id).on(Medium.Service.losing(Rate.NONE));
    feed.ifPresent(copy::fed);
    return copy.build();
  }

  private static Log undisturbed(boolean byCourse, Copy... copies) {
    Layout layout = Layout.of("l", copies);
    Studio studio =
        Studio.builder("s", HOURS / Units.HOURS_PER_YEAR)
            .footage(Footage.builder(new Shoots(168, 100, Shoots.Spacing.EVEN)).clip(1).build())
            .layout(layout)
            .build();
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
    Feed nightly = Feed.from("main").every(24).link(50 / Units.SECONDS_PER_HOUR).build();
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
