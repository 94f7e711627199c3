package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.history.report.Happening.Kind;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;
import org.junit.jupiter.api.Test;

/**
 * What feeds have brought by the horizon, by hand. There are 100 bytes on hand, all on the working
 * copy, and other copies start empty; a link carries a byte an hour where nothing else is said.
 */
class EndsByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, FOREVER);
  }

  private static Copy main() {
    return copy("main", FOREVER).build();
  }

  private static Copy fed(String id, double lives, FeedBuilder feed) {
    return copy(id, lives).startsEmpty().fed(feed.build()).build();
  }

  private static FeedBuilder slow(String from, double everyHours, double at) {
    return Feed.from(from).every(everyHours, at).link(PER_HOUR);
  }

  private static Studio studio(double horizon, double shootsEvery, Copy... copies) {
    return Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
        .footage(
            Footage.builder(new Shoots(shootsEvery, 10, Shoots.Spacing.EVEN))
                .onHand(100)
                .clip(1)
                .build())
        .layout(Layout.of("l", copies))
        .build();
  }

  /**
   * What each copy holds at the end; a copy whose drive dies beside them keeps it off the course.
   */
  private static double[] held(double horizon, Copy... copies) {
    double[][] held = new double[1][];
    Studio studio = studio(horizon, FOREVER, copies);
    new History(studio, studio.layouts().get(0), 1)
        .tell(0, (told, now) -> held[0] = now.heldBytes());
    return held[0];
  }

  /**
   * At 2 h the far copy begins to be filled and the third, due at that instant, finds nothing on
   * it; a day later it finds 24 bytes and at 30 h it has 4 of them. Red if it waits until the far
   * copy has all.
   */
  @Test
  void aFeedThatFoundNothingLooksAgainTheNextDay() {
    assertThat(
            held(
                30,
                main(),
                fed("far", FOREVER, slow("main", 1e6, 2)),
                fed("third", FOREVER, slow("far", 24, 2))))
        .containsExactly(new double[] {100, 28, 4}, within(1e-9));
  }

  /**
   * A continuous feed behind it takes, at each quarter of an hour, what has come since: 28 bytes at
   * 30 h, a tenth of an hour before the end. Red if it waits until the far copy has all.
   */
  @Test
  void aContinuousFeedCarriesOnWhatComes() {
    assertThat(
            held(
                30.1,
                main(),
                fed("far", FOREVER, slow("main", 1e6, 2)),
                fed("third", FOREVER, Feed.from("far").continuous().link(1e6))))
        .containsExactly(new double[] {100, 28.1, 28}, within(1e-6));
  }

  /** Two share 2 bytes an hour from 2 h on; the third dies at 12 h, and the far copy has both. */
  @Test
  void whoseRunIsCutLeavesTheUplinkToOthers() {
    Uplink line = Uplink.of("line", 2 * PER_HOUR);
    assertThat(
            held(
                30,
                main(),
                fed("far", FOREVER, Feed.from("main").every(1e6, 2).over(line)),
                fed("third", 12, Feed.from("main").every(1e6, 2).over(line))))
        .containsExactly(new double[] {100, 10 + 2 * 18, 0}, within(1e-9));
  }

  private static Copy[] visiting(double otherLives) {
    return new Copy[] {
      main(),
      copy("far", FOREVER)
          .startsEmpty()
          .fed(Feed.from("main").every(336).link(PER_HOUR).visits(24).build())
          .rotation(2, 168)
          .build(),
      fed("other", otherLives, slow("main", 1e6, 0))
    };
  }

  /**
   * Of two drives that take turns the first visits from 0 to 24 h, the second from 168 to 192 h: a
   * byte an hour each. Nothing happens, or a copy beside them dies at 10 or at 175 h.
   */
  @Test
  void aVisitThatEndsCutsTheRun() {
    for (double lives : new double[] {FOREVER, 10, 175}) {
      double[] held = held(300, visiting(lives));
      assertThat(held).as("dies at " + lives).hasSize(4);
      assertThat(held[0]).isEqualTo(100);
      assertThat(held[1]).as("dies at " + lives).isCloseTo(24, within(1e-9));
      assertThat(held[2]).as("dies at " + lives).isCloseTo(24, within(1e-9));
    }
  }

  /**
   * A feed stops about once an hour and nobody looks: what it has brought by then stays all there
   * is, of a first fill that is going on and of shoots every 10 h. Red if the run goes on, or if a
   * feed is thought to run again.
   */
  @Test
  void aFeedThatStoppedBringsNothingMore() {
    FeedBuilder feed = slow("main", 12, 0).stops(new Rate(1));
    Studio studio = studio(100, 10, main(), fed("far", FOREVER, feed));
    Studio full = studio(100, 10, main(), copy("far", FOREVER).fed(feed.link(1).build()).build());
    for (Studio each : new Studio[] {studio, full}) {
      History history = new History(each, each.layouts().get(0), 1);
      double[] stopped = {Double.NaN, Double.NaN};
      for (int k = 0; k < 20; k++) {
        history.tell(
            k,
            (told, now) -> {
              if (told.kind() == Kind.FEED_STOPPED) {
                stopped[0] = told.hours();
                stopped[1] = now.heldBytes()[1];
              } else if (told.kind() == Kind.END) {
                assertThat(now.heldBytes()[1]).as("at %s h", stopped[0]).isEqualTo(stopped[1]);
              }
            });
      }
    }
  }
}
