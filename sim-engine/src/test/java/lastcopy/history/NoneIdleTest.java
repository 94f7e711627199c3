package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.UnaryOperator;
import lastcopy.history.plan.Way;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever happens, no feed and no refill stands idle that could bring something: whoever takes
 * something from a copy, or gives it, must begin or plan what brings it on. As the conservation of
 * footage, this needs no second simulator. With -Dconservation.studios=15 it is done with so many
 * of the studios.
 */
class NoneIdleTest {

  @ParameterizedTest
  @ValueSource(strings = {"whole", "unlikely", "at random", "empty"})
  void bringsWhatItCan(String kind) {
    double looks = WatchedHistories.of(kind, 17, UnaryOperator.identity(), Watch::new);
    assertThat(looks).isGreaterThan(WatchedHistories.STUDIOS * (double) WatchedHistories.HISTORIES);
  }

  /** Looks at what stands idle whenever time passes. */
  private static final class Watch extends WatchedHistories.Watch {

    /** Less is a rounding. */
    private static final double LEAST_HOURS = 1e-6;

    private static final double A_QUARTER = 0.25;

    Watch(HistoryState state) {
      super(state);
    }

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {
      for (CopyState copy : state.copies()) {
        if (!copy.isGone() && !copy.flow().isGoing()) {
          if (copy.index() == 0) {
            refills(copy);
          } else {
            isFed(copy);
          }
        }
      }
    }

    private void isFed(CopyState copy) {
      Way way = copy.plan().way();
      CopyState source = state.sourceOf(copy);
      if (state.mayFeed(copy)
          && state.holdings().hours(copy, source, way.bytesPerHour(), state.now()) > LEAST_HOURS) {
        looked++;
        double latest = way.continuous() ? state.now() + A_QUARTER : way.dueAfter(state.now());
        isPlanned(state.timers().runStart(copy.index()), latest, copy);
      }
    }

    private void refills(CopyState working) {
      for (CopyState from : state.copies()) {
        double perHour = working.plan().refillPerHour()[from.index()];
        if (from.index() > 0
            && !from.isGone()
            && state.holdings().hours(working, from, perHour, state.now()) > LEAST_HOURS) {
          looked++;
          isPlanned(state.timers().runEnd(0), state.now() + A_QUARTER, working);
        }
      }
    }

    private void isPlanned(int timer, double latest, CopyState copy) {
      if (latest > state.plan().horizon()) {
        return; // what comes after the end is not planned
      }
      String as = copy.plan().name() + " of " + what + " at " + state.now() + " h";
      assertThat(state.clock().isSet(timer)).as("planned: %s", as).isTrue();
      assertThat(state.clock().of(timer)).as(as).isLessThanOrEqualTo(latest);
    }
  }
}
