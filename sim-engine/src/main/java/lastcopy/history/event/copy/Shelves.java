package lastcopy.history.event.copy;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.event.Common;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.desk.DeskDamage;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/**
 * Shelves: rows of separate drives filled one after another. A failed drive takes its own positions
 * only; {@link Returns} says what follows when it is back, empty.
 */
public final class Shelves implements Mechanism {

  private final Common common;
  private final HistoryState state;
  private final RepairTimes times;
  private final Flows flows;
  private final DeskDamage desk;
  private final Offloads offloads;
  private final Interruptions interruptions;
  private final PositionSet part = new PositionSet();

  /** The shelves of a state. */
  public Shelves(
      Common common,
      RepairTimes times,
      Flows flows,
      DeskDamage desk,
      Offloads offloads,
      Interruptions interruptions) {
    this.common = common;
    state = common.state();
    this.times = times;
    this.flows = flows;
    this.desk = desk;
    this.offloads = offloads;
    this.interruptions = interruptions;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return copy.set().shelf() ? EnumSet.of(Effect.SEPARATE_DRIVES) : Mechanism.none();
  }

  private Positions within(DriveState drive, Positions set) {
    part.copyFrom(set);
    part.remove(0, drive.plan().from());
    part.remove(drive.plan().to(), Double.POSITIVE_INFINITY);
    return part;
  }

  /** A drive of a shelf fails. */
  void driveFails(DriveState drive) {
    CopyState copy = state.copyOf(drive);
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    common.rule().struck(state.plan().driveCauses());
    Positions its = within(drive, copy.held());
    double bytes = its.bytes();
    common.rule().removed(copy, its);
    copy.loses(within(drive, copy.believed()));
    flows.cannotSend(copy, its);
    desk.cannotKeep(copy, drive.plan().from(), drive.plan().to());
    copy.bars(drive.plan().from(), drive.plan().to());
    flows.cannotTake(copy, copy.barred());
    drive.condition(DriveState.Condition.DOWN);
    copy.driveFails(drive);
    double back = times.replacedAt(drive.plan(), drive.countFailure(), state.now());
    state.clock().set(state.timers().repair(drive.slot()), back);
    common.spending().isOrdered(drive, back);
    if (copy.index() == 0) {
      Cause cause = state.plan().driveCauses().get(Cause.Context.ALONE);
      interruptions.shelfDriveFails(cause, !offloads.takesNext());
    }
    common.narrator().say(Happening.Kind.DRIVE_FAILED, drive, bytes, back);
  }
}
