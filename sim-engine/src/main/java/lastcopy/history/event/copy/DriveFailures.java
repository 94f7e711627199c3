package lastcopy.history.event.copy;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Spending;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.drive.Clips;
import lastcopy.history.event.drive.Drives;
import lastcopy.history.event.drive.Repairs;
import lastcopy.history.hazard.Clocks;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Cause;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;

/** What follows when a drive or service fails: a repair, or the loss of its copy. */
public final class DriveFailures implements Mechanism, TimerHandler {

  private final HistoryState state;
  private final Plan plan;
  private final LossRule rule;
  private final Spending spending;
  private final Clocks clocks;
  private final Drives drives;
  private final Repairs repairs;
  private final Shelves shelves;
  private final Clips clips;
  private final Outages outages;

  /** Failures of a state's drives. */
  public DriveFailures(
      Common common,
      Clocks clocks,
      Drives drives,
      Repairs repairs,
      Shelves shelves,
      Clips clips,
      Outages outages) {
    state = common.state();
    plan = state.plan();
    rule = common.rule();
    spending = common.spending();
    this.clocks = clocks;
    this.drives = drives;
    this.repairs = repairs;
    this.shelves = shelves;
    this.clips = clips;
    this.outages = outages;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return copy.set().lots() > 1
        ? EnumSet.of(Effect.FAILURES, Effect.PAIRS)
        : EnumSet.of(Effect.FAILURES);
  }

  /** A drive or service fails. */
  @Override
  public void due(int slot) {
    clocks.fired(slot);
    state.clock().cancel(state.timers().swap(slot));
    DriveState drive = state.drive(slot);
    spending.fails(drive);
    CopyState copy = state.copyOf(drive);
    if (copy.isGone()) {
      drive.condition(DriveState.Condition.FAILED);
    } else if (copy.plan().set().shelf()) {
      shelves.driveFails(drive);
    } else {
      failsInSet(drive, copy);
    }
  }

  private void failsInSet(DriveState drive, CopyState copy) {
    drive.condition(DriveState.Condition.DOWN);
    copy.driveFails(drive);
    if (copy.downWith(drive) > copy.plan().set().survives()) {
      tellRule(drive, copy);
      outages.goes(copy, drive);
      return;
    }
    repairs.start(drive, copy);
    drives.downChanged(copy);
    if (copy.downWith(drive) == copy.plan().set().survives()) {
      clips.defectsMetByRebuild(copy, drive);
    }
  }

  private void tellRule(DriveState drive, CopyState copy) {
    if (copy.plan().set().service()) {
      rule.struck(plan.serviceCauses());
    } else if (copy.downWith(drive) > 1) {
      boolean unseen = isAnotherUnseen(drive, copy);
      rule.struck(plan.driveCauses(), unseen ? Cause.Context.UNSEEN : Cause.Context.REBUILD);
    } else {
      rule.struck(plan.driveCauses());
    }
  }

  /** Whether another that would stand in for a drive is down and nobody has seen it yet. */
  private boolean isAnotherUnseen(DriveState but, CopyState copy) {
    for (DriveState drive : copy.drives()) {
      if (drive != but && copy.standTogether(drive, but) && drive.isUnseen(state.now())) {
        return true;
      }
    }
    return false;
  }
}
