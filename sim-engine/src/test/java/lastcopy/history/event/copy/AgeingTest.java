package lastcopy.history.event.copy;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.history.event.Flows;
import lastcopy.history.event.desk.UnnoticedDamage;
import lastcopy.history.plan.Plan;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.kernel.SimulationClock;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Footage that ages out while a run brings it, by hand. */
class AgeingTest {

  private static Medium drive(Arrangement arrangement) {
    DriveModel model =
        DriveModel.builder("drive", 8 * Units.TB).fails(new Exponential(1e30)).build();
    return Medium.DriveSet.builder(arrangement, 1).of(model).build();
  }

  private static HistoryState state(Arrangement far) {
    Footage footage =
        Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN)).clip(1).keepFor(10).build();
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(drive(Arrangement.SINGLE)).build(),
            Copy.builder("far").on(drive(far)).fed(Feed.from("main").every(24).build()).build());
    Studio studio = Studio.builder("s", 1).footage(footage).layout(layout).build();
    Plan plan = Plan.of(studio, layout);
    SimulationClock clock = new SimulationClock(plan.timers().priorities(), plan.horizon());
    HistoryState state = new HistoryState(plan, clock);
    state.clear(plan.shoots());
    return state;
  }

  /**
   * 100 bytes at 1 an hour end at 100 h, whatever the first 10 of them do at 50 h. Red if what is
   * left of a run is reckoned from its start and not from now: 140 h.
   */
  @ParameterizedTest
  @EnumSource(names = {"SINGLE", "SHELF"})
  void aRunEndsWhenAllHasCome(Arrangement arrangement) {
    HistoryState state = state(arrangement);
    CopyState far = state.copy(1);
    far.receives(0, 100, 0, 1, 0);
    state.clock().passTo(50);
    new Ageing(state, new Flows(state), new UnnoticedDamage(state)).due(0);
    assertThat(state.clock().of(state.timers().runEnd(1))).isEqualTo(100);
    assertThat(state.holdings().aged()).isEqualTo(10);
    assertThat(far.held().bytes()).isEqualTo(arrangement == Arrangement.SHELF ? 50 : 40);
  }
}
