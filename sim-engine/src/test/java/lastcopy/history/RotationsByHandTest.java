package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * Where drives stand that take turns, by hand: two, each of which comes to the studio every 200 h
 * for 24 h, the first at 0, 200, 400 h and the second at 100, 300, 500. What is shot crosses in no
 * time; the working copy is gone for 3 h when it dies, a turn for 5.
 */
class RotationsByHandTest {

  private static final int HISTORIES = 2_000;
  private static final double FOREVER = 1e9;

  private static Copy main(double lives, Place where) {
    return ByHand.copy("main", Arrangement.SINGLE, 1e6, lives, 3).at(where).build();
  }

  private static Copy turns(double lives, FeedBuilder feed) {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Fixed(lives)).build();
    CopyBuilder turns =
        Copy.builder("turn")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .arrival(new Fixed(5))
            .at(Place.of("home"))
            .restoresAt(1e9)
            .rotation(2, 100)
            .offline();
    return turns.fed(feed.every(100).link(1e9).visits(24).build()).build();
  }

  private static History history(double horizon, double shootsEvery, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(shootsEvery, 10, Shoots.Spacing.EVEN))
            .onHand(100)
            .clip(1)
            .build();
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    return new History(
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build(),
        layout,
        1);
  }

  private static Place burns() {
    return Place.of("studio", new Mishap("fire", new Rate(1 / 300.0), 1));
  }

  /** Which copies the first fire of a history takes, if it is between two times. */
  private static List<List<Integer>> taken(History history, double from, double to) {
    List<List<Integer>> all = new ArrayList<>();
    for (int k = 0; k < HISTORIES; k++) {
      List<Happening> told = new ArrayList<>();
      history.tell(k, (each, now) -> told.add(each));
      double fire =
          told.stream()
              .filter(each -> each.kind() == Kind.MISHAP)
              .mapToDouble(Happening::hours)
              .findFirst()
              .orElse(Double.NaN);
      if (fire > from && fire < to) {
        all.add(
            told.stream()
                .filter(each -> each.kind() == Kind.COPY_GONE && each.hours() == fire)
                .map(Happening::copy)
                .toList());
      }
    }
    assertThat(all).hasSizeGreaterThan(5);
    return all;
  }

  /** As ever: with the working copy it takes the one that is there. */
  @Test
  void aFireTakesTheOneThatVisits() {
    History history = history(400, 30, main(FOREVER, burns()), turns(FOREVER, Feed.from("main")));
    assertThat(taken(history, 0, 24)).containsOnly(List.of(0, 1));
    assertThat(taken(history, 24, 100)).containsOnly(List.of(0));
    assertThat(taken(history, 100, 124)).containsOnly(List.of(0, 2));
    assertThat(taken(history, 124, 200)).containsOnly(List.of(0));
    assertThat(taken(history, 200, 224)).containsOnly(List.of(0, 1));
  }

  /** Both turns die at 103 h, and what replaces them at 108 is at home, until 200. */
  @Test
  void aDriveThatDiesDuringItsVisitDoesNotVisitAnyMore() {
    History history = history(200, 30, main(FOREVER, burns()), turns(103, Feed.from("main")));
    assertThat(taken(history, 103, 124)).containsOnly(List.of(0));
  }

  /**
   * The working copy is gone from 199 to 202 h: nobody brings the turn of 200, which would have had
   * nothing to carry. Red if all is thought to be as if nothing had happened.
   */
  @Test
  void aTurnThatWasMissedStaysAtHome() {
    History history = history(400, FOREVER, main(199, burns()), turns(FOREVER, Feed.from("main")));
    assertThat(taken(history, 202, 224)).containsOnly(List.of(0));
    assertThat(taken(history, 300, 324)).containsOnly(List.of(0, 2));
  }

  /**
   * Ten bytes are shot every 30 h. The feed of one or the other stops for a while, until somebody
   * looks at 150 or 300 h. The turns of 200 and 300 h are there to see it: what was shot before
   * them is on them at 399 h.
   */
  @Test
  void aFeedThatHadStoppedGoesOnWithItsNextTurn() {
    FeedBuilder feed = Feed.from("main").stops(new Rate(1 / 300.0)).checkedEvery(150);
    History history = history(399, 30, main(FOREVER, Place.of("studio")), turns(FOREVER, feed));
    int stops = 0;
    for (int k = 0; k < 100; k++) {
      List<Double> stopped = new ArrayList<>();
      double[][] held = new double[1][];
      history.tell(
          k,
          (each, now) -> {
            held[0] = now.heldBytes();
            if (each.kind() == Kind.FEED_STOPPED) {
              stopped.add(each.hours());
            }
          });
      if (stopped.stream().allMatch(at -> at < 150)) {
        // Six shoots before 200 h, and nine before 300, of which that of 300 itself is none.
        assertThat(held[0]).as("history %d", k).containsExactly(230, 160, 190);
        stops += stopped.size();
      }
    }
    assertThat(stops).isPositive();
  }

  /** A byte an hour, from nothing: 24 by the end of each visit, and on at the next turn. */
  @Test
  void aRunThatTheEndOfAVisitCutsGoesOnAtTheNextTurn() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Fixed(FOREVER)).build();
    FeedBuilder feed = Feed.from("main").every(100).link(1 / Units.SECONDS_PER_HOUR).visits(24);
    Copy turns =
        Copy.builder("turn")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .startsEmpty()
            .rotation(2, 100)
            .offline()
            .fed(feed.build())
            .build();
    for (double lives : new double[] {FOREVER, 80}) { // as if nothing had happened, and not
      Copy other =
          ByHand.copy("other", Arrangement.SINGLE, 1e6, lives, FOREVER)
              .fed(Feed.from("main").every(1_000).build())
              .build();
      History history = history(250, FOREVER, main(FOREVER, Place.of("studio")), turns, other);
      double[] held = ToldHistory.of(history, 0).after(Kind.END).heldBytes();
      assertThat(held)
          .containsExactly(new double[] {100, 48, 24, lives < 250 ? 0 : 100}, within(1e-9));
    }
  }
}
