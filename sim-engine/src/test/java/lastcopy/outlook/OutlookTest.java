package lastcopy.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** Room, ways, times, lags and warnings by hand arithmetic. */
class OutlookTest {

  private static Medium drives(int n, Arrangement arrangement, double bytes, double speed) {
    DriveModel model =
        DriveModel.builder("small", bytes).speed(speed).fails(new Exponential(1e6)).build();
    return Medium.DriveSet.builder(arrangement, n).of(model).build();
  }

  private static Copy copy(String id, Medium medium, Optional<Feed> feed) {
    CopyBuilder copy = Copy.builder(id).at(Place.of(id)).on(medium);
    feed.ifPresent(copy::fed);
    return copy.build();
  }

  private static Optional<Feed> feed(Feed.Schedule schedule, double bytesPerSecond) {
    return Optional.of(Feed.from("main").schedule(schedule).link(bytesPerSecond).build());
  }

  private static Outlook outlook(double years, double onHand, Shoots shoots, Copy... copies) {
    Studio studio =
        Studio.builder("s", years)
            .footage(Footage.builder(shoots).onHand(onHand).build())
            .layout(Layout.of("l", copies))
            .build();
    return Outlook.of(studio).get(0);
  }

  private static Shoots every(double hours, double bytes) {
    return new Shoots(hours, bytes, Shoots.Spacing.EVEN);
  }

  private static List<String> ids(Outlook outlook) {
    return outlook.warnings().stream().map(Warning::id).toList();
  }

  /**
   * 1 TB a year for 2 years needs 2 TB usable, so a mirror of two 2 TB drives; room is planned for
   * 2 to 3 years (common practice, no source).
   */
  @Test
  void mirrorOfTwoTerabyteDrivesLastsTwoYearsAndNoLonger() {
    Copy main = copy("main", drives(2, Arrangement.MIRROR, 2e12, 120e6), Optional.empty());
    Shoots monthly = every(Units.HOURS_PER_MONTH, 1e12 / 12);
    Outlook two = outlook(2, 0, monthly, main);
    assertThat(two.room().get(2).footageBytes()).isCloseTo(2e12, within(1.0));
    assertThat(two.copies().get(0).usableBytes()).hasValue(2e12);
    assertThat(outlook(1.99, 0, monthly, main).copies().get(0).fillsAtYears()).isEmpty();
    assertThat(outlook(3, 0, monthly, main).copies().get(0).fillsAtYears().getAsDouble())
        .isBetween(2.0, 2.0 + 1.0 / 12);
  }

  /**
   * Behind gigabit a small mechanical drive that writes 80 MB/s is the slowest part, and a faster
   * network changes nothing (common practice, no source).
   */
  @Test
  void slowDriveBehindAFastNetworkIsTheSlowestPart() {
    for (double link : new double[] {113e6, 290e6, 1170e6}) {
      Copy main = copy("main", drives(1, Arrangement.SINGLE, 2e12, 200e6), Optional.empty());
      Medium slow = drives(1, Arrangement.SINGLE, 2e12, 80e6);
      Outlook outlook =
          outlook(
              1, 0, every(168, 1e9), main, copy("far", slow, feed(new Feed.Continuous(), link)));
      Route way = outlook.copies().get(1).way(Route.Kind.FEED).orElseThrow();
      assertThat(way.slowest()).isEqualTo(new Route.Part("drive small", 80e6));
      assertThat(ids(outlook)).contains("rate-above-hardware");
    }
  }

  /** 8 TB at 100 MB/s: 80,000 s = 22.2 h. */
  @Test
  void rebuildAndRefillHours() {
    Copy main = copy("main", drives(2, Arrangement.MIRROR, 8e12, 100e6), Optional.empty());
    Medium far = drives(1, Arrangement.SINGLE, 8e12, 100e6);
    Outlook outlook =
        outlook(1, 4e12, every(1e5, 1), main, copy("far", far, feed(new Feed.Continuous(), 50e6)));
    assertThat(outlook.copies().get(0).rebuildHours().getAsDouble()).isCloseTo(22.2, within(0.03));
    assertThat(outlook.copies().get(0).refillHours().getAsDouble()).isCloseTo(22.2, within(0.03));
    assertThat(outlook.copies().get(1).rebuildHours()).isEmpty();
    double firstFill = outlook.copies().get(1).feed().orElseThrow().firstFillHours().getAsDouble();
    assertThat(firstFill).isCloseTo(22.2, within(0.03));
  }

  /** Weekly shoots of 72 GB at 10 MB/s: 2 h to cross, a night late: mean 25 h, worst 26 h. */
  @Test
  void lagOfANightlyFeedThatMeetsItsShoots() {
    Copy main = copy("main", drives(1, Arrangement.SINGLE, 8e12, 100e6), Optional.empty());
    Medium far = drives(1, Arrangement.SINGLE, 8e12, 100e6);
    Outlook meets =
        outlook(1, 0, every(168, 72e9), main, copy("far", far, feed(new Feed.Every(24, 0), 10e6)));
    FeedOutlook feed = meets.copies().get(1).feed().orElseThrow();
    assertThat(feed.worstLagHours().getAsDouble()).isCloseTo(26, within(1e-6));
    assertThat(feed.meanLagHours().getAsDouble()).isCloseTo(25, within(1e-6));
    assertThat(meets.warnings()).anyMatch(w -> w.text().endsWith("better: at: 1 h."));
    Outlook better =
        outlook(1, 0, every(168, 72e9), main, copy("far", far, feed(new Feed.Every(24, 1), 10e6)));
    assertThat(ids(better)).doesNotContain("run-at-shoot");
    assertThat(better.copies().get(1).feed().orElseThrow().worstLagHours().getAsDouble())
        .isCloseTo(3, within(1e-6));
  }

  /** 36 GB each 10 h need 1 MB/s. */
  @Test
  void feedThatNeverCatchesUpNamesTheRateThatWould() {
    Copy main = copy("main", drives(1, Arrangement.SINGLE, 8e12, 100e6), Optional.empty());
    Medium far = drives(1, Arrangement.SINGLE, 8e12, 100e6);
    Outlook slow =
        outlook(1, 0, every(10, 36e9), main, copy("far", far, feed(new Feed.Continuous(), 0.9e6)));
    FeedOutlook feed = slow.copies().get(1).feed().orElseThrow();
    assertThat(feed.neverCatchesUp()).isTrue();
    assertThat(feed.rateNeeded()).isCloseTo(1e6, within(1.0));
    assertThat(ids(slow)).contains("feed-too-slow", "slow-restore", "seen-at-once");
  }
}
