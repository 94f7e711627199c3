package lastcopy.history.state;

import lastcopy.history.plan.Plan;
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

/** States of three copies that hold nothing yet: one to work on, one fed from it, a shelf. */
final class States {

  private States() {}

  /** Shoots of 10 bytes every 30 h beside 100 bytes on hand, kept for so many hours. */
  static HistoryState keptFor(double hours) {
    Footage footage =
        Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN))
            .onHand(100)
            .clip(1)
            .keepFor(hours)
            .build();
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(drives(Arrangement.SINGLE, 1)).startsEmpty().build(),
            fed("far", Arrangement.MIRROR, 2),
            fed("shelf", Arrangement.SHELF, 1));
    Studio studio = Studio.builder("s", 1).footage(footage).layout(layout).build();
    Plan plan = Plan.of(studio, layout);
    HistoryState state =
        new HistoryState(plan, new SimulationClock(plan.timers().priorities(), plan.horizon()));
    state.clear(plan.shoots());
    return state;
  }

  private static Copy fed(String id, Arrangement arrangement, int drives) {
    return Copy.builder(id)
        .on(drives(arrangement, drives))
        .fed(Feed.from("main").every(24).build())
        .build();
  }

  private static Medium drives(Arrangement arrangement, int drives) {
    DriveModel model = DriveModel.builder("drive", Units.TB).fails(new Exponential(1e30)).build();
    return Medium.DriveSet.builder(arrangement, drives).of(model).build();
  }
}
