package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.RandomShoots;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Studio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * At any time each position that was offloaded and has not aged out is held somewhere or lost, and
 * none is both, nor lost twice: a balance, whatever happens, that needs no second simulator. With
 * -Dconservation.studios=15 it is done with so many of the studios.
 */
class ConservationTest {

  private static final int STUDIOS = Integer.getInteger("conservation.studios", 150);
  private static final int HISTORIES = 20;

  @ParameterizedTest
  @ValueSource(strings = {"whole", "unlikely", "at random", "empty"})
  void heldOrLost(String kind) {
    RandomStudios studios = new RandomStudios(91, kind.equals("unlikely"));
    long looks = 0;
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next(kind);
      Plan plan = Plan.of(studio, studio.layouts().get(0));
      Draws draws = new Draws(5);
      RandomShoots random = new RandomShoots(plan, draws);
      EventLoop loop = new EventLoop(plan, draws);
      Balance balance = new Balance(loop.state());
      for (int k = 0; k < HISTORIES; k++) {
        draws.start(k);
        balance.what = kind + " studio " + i + " history " + k;
        ShootTable shoots = plan.evenShoots() ? plan.shoots() : random.until(plan.horizon());
        loop.audience().counts(balance);
        loop.run(shoots, null);
      }
      looks += balance.looks;
    }
    assertThat(looks).isGreaterThan(100L * STUDIOS * HISTORIES);
  }

  /** Looks at what is held whenever time passes. */
  private static final class Balance implements Ledger {

    private final HistoryState state;
    private final PositionSet some = new PositionSet();
    private final PositionSet all = new PositionSet();
    private String what = "";
    private long looks;

    Balance(HistoryState state) {
      this.state = state;
    }

    @Override
    public void lost(Loss loss) {}

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {
      looks++;
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

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {}

    @Override
    public boolean wantsTime() {
      return true;
    }
  }
}
