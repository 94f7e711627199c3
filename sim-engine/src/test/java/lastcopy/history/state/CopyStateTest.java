package lastcopy.history.state;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.plan.Plan;
import lastcopy.history.state.CopyState.Condition;
import lastcopy.kernel.SimulationClock;
import lastcopy.scenario.Studio;
import lastcopy.simulate.DriveSets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What follows from what, by hand, for a parity set, which survives one drive. */
class CopyStateTest {

  private CopyState copy;

  @BeforeEach
  void start() {
    Studio studio = DriveSets.studio("parity");
    Plan plan = Plan.of(studio, studio.layouts().get(0));
    SimulationClock clock = new SimulationClock(plan.timers().priorities(), plan.horizon());
    HistoryState state = new HistoryState(plan, clock);
    state.clear(plan.shoots());
    copy = state.working();
    copy.takes(0, 100);
  }

  @Test
  void failsAndHeals() {
    assertThat(copy.condition()).isEqualTo(Condition.WHOLE);
    copy.driveFails(copy.drives()[0]);
    assertThat(copy.condition()).isEqualTo(Condition.DEGRADED);
    assertThat(copy.isFragile()).isTrue();
    assertThat(copy.wrong()).isEqualTo(1);
    assertThat(copy.isUndisturbed()).isTrue();
    copy.driveIsBack(copy.drives()[0]);
    assertThat(copy.condition()).isEqualTo(Condition.WHOLE);
    assertThat(copy.held().bytes()).isEqualTo(100);
  }

  @Test
  void goesAndIsFilledAgain() {
    assertThat(copy.goes()).isZero();
    assertThat(copy.condition()).isEqualTo(Condition.GONE);
    assertThat(copy.held().isEmpty()).isTrue();
    assertThat(copy.wrong()).isEqualTo(2);
    copy.comesBack();
    assertThat(copy.condition()).isEqualTo(Condition.REFILLING);
    copy.driveFails(copy.drives()[0]);
    assertThat(copy.condition()).isEqualTo(Condition.REFILLING);
    copy.isFilled();
    assertThat(copy.condition()).isEqualTo(Condition.DEGRADED);
    assertThat(copy.goes()).as("how often before").isEqualTo(1);
  }

  /** Red if a copy that spoils forgets that it had not been filled again. */
  @Test
  void spoiltRemembersThatItWasNotFull() {
    copy.spoils();
    assertThat(copy.isUsable()).isFalse();
    assertThat(copy.isRefilling()).isFalse();
    copy.goes();
    copy.comesBack();
    copy.spoils();
    assertThat(copy.condition()).isEqualTo(Condition.SPOILT);
    assertThat(copy.isRefilling()).isTrue();
    copy.goes();
    assertThat(copy.isRefilling()).isFalse();
    assertThat(copy.isSpoilt()).isFalse();
  }
}
