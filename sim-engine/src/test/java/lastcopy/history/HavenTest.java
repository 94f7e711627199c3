package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.footage.PositionSet;
import lastcopy.history.report.Loss;
import lastcopy.history.state.HistoryState;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Studio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever befalls a studio, nothing is lost, and nothing stands in one copy only, if copies in a
 * haven have all at once: they never fail, nothing strikes there, their feeds take no time, and
 * they keep for good what is deleted. But for what waits on its cards, and for what has just been
 * shot while the working copy is itself being filled: behind that a feed takes a quarter of an
 * hour.
 */
class HavenTest {

  private static final double QUARTER = 0.25 + 1e-6;

  private static Studio with(Studio studio, int havens) {
    Layout layout = studio.layouts().get(0);
    List<Copy> copies = new ArrayList<>(layout.copies());
    // Or what is shot goes to a working copy that holds nothing usable, and from there nowhere.
    Copy main = copies.get(0);
    copies.set(0, RandomStudios.with(main, main.startsFull(), Optional.empty()));
    DriveModel eternal = DriveModel.builder("eternal", 1e30).fails(new Exponential(1e30)).build();
    for (int i = 0; i < havens; i++) {
      copies.add(
          Copy.builder("haven" + i)
              .at(Place.of("haven" + i))
              .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(eternal).build())
              .fed(Feed.from("main").continuous().link(1e18).build())
              .keepsDeleted(Double.POSITIVE_INFINITY)
              .offline()
              .build());
    }
    Layout more = new Layout(layout.id(), layout.title(), copies, layout.cardsKeepHours());
    return Studio.builder("haven", studio.years())
        .footage(studio.footage())
        .desk(studio.desk())
        .layout(more)
        .build();
  }

  @ParameterizedTest
  @ValueSource(strings = {"whole", "unlikely", "at random", "tricks"})
  void nothingIsLostNorBare(String kind) {
    double hours = WatchedHistories.of(kind, 23, studio -> with(studio, 2), Watch::new);
    assertThat(hours)
        .isGreaterThan(WatchedHistories.STUDIOS * (double) WatchedHistories.HISTORIES * 100);
  }

  private static final class Watch extends WatchedHistories.Watch {

    private final PositionSet some = new PositionSet();
    private final List<Double> times = new ArrayList<>();
    private final List<Double> offloaded = new ArrayList<>();

    Watch(HistoryState state) {
      super(state);
    }

    /** What had been offloaded a quarter of an hour ago. */
    private double notJustOffloaded() {
      while (times.size() > 1 && times.get(1) <= state.now() - QUARTER) {
        times.remove(0);
        offloaded.remove(0);
      }
      return offloaded.isEmpty() || times.get(0) > state.now() - QUARTER ? 0 : offloaded.get(0);
    }

    @Override
    public void lost(Loss loss) {
      some.copyFrom(state.lost());
      some.remove(notJustOffloaded(), Double.POSITIVE_INFINITY);
      assertThat(some.bytes()).as("lost: %s at %s h, %s", what, state.now(), loss).isZero();
    }

    @Override
    public void passed(
        double took, double bare, double fragile, double down, double refill, double most) {
      looked += took;
      if (state.now() == 0) {
        times.clear();
        offloaded.clear();
      }
      times.add(state.now());
      offloaded.add(state.offloadedBytes());
      if (state.offloadedBytes() == notJustOffloaded()) {
        double waits = state.holdings().onlyOnCards();
        assertThat(most - waits).as("bare: %s at %s h", what, state.now()).isLessThan(1);
      }
    }
  }
}
