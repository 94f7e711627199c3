package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * At any time each position that was offloaded and has not aged out is held somewhere or lost, and
 * none is both, nor lost twice: a balance, whatever happens, that needs no second simulator. With
 * -Dconservation.studios=15 it is done with so many of the studios.
 */
class ConservationTest {

  @ParameterizedTest
  @ValueSource(strings = {"whole", "unlikely", "at random", "empty"})
  void heldOrLost(String kind) {
    double looks = WatchedHistories.of(kind, 91, UnaryOperator.identity(), Balance::new);
    assertThat(looks).isGreaterThan(100.0 * WatchedHistories.STUDIOS * WatchedHistories.HISTORIES);
  }

  /** Looks at what is held whenever time passes. */
  private static final class Balance extends WatchedHistories.Watch {

    private final PositionSet some = new PositionSet();
    private final PositionSet all = new PositionSet();

    Balance(HistoryState state) {
      super(state);
    }

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {
      looked++;
      all.clear();
      for (CopyState copy : state.copies()) {
        isHeld(copy.held(), copy.plan().name());
        isHeld(copy.kept(), copy.plan().name());
      }
      isHeld(state.holdings().cards(), "cards");
      some.clear();
      some.add(state.holdings().aged(), state.offloadedBytes());
      some.removeAll(all);
      some.removeAll(state.lost());
      assertThat(state.lostBytes())
          .as("what was lost, one loss after another: %s at %s h", what, state.now())
          .isCloseTo(state.lost().bytes(), within(1e-9 * state.offloadedBytes()));
      assertThat(some.bytes())
          .as("neither held nor lost: %s at %s h", what, state.now())
          .isLessThanOrEqualTo(1e-9 * state.offloadedBytes());
    }

    private void isHeld(Positions set, String by) {
      all.addAll(set);
      some.copyFrom(set);
      double bytes = some.bytes();
      some.removeAll(state.lost());
      assertThat(bytes - some.bytes())
          .as("held by %s and lost: %s at %s h", by, what, state.now())
          .isLessThanOrEqualTo(1e-9 * state.offloadedBytes());
    }
  }
}
