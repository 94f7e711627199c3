package lastcopy.history.event.drive;

import java.util.EnumSet;
import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.Spending;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.DriveState;
import lastcopy.history.state.HistoryState;
import lastcopy.kernel.SimulationClock;
import lastcopy.scenario.Rebuild;

/**
 * Repair of sets that survive: noticed, wait, rebuild; each failed drive runs its own. A rebuild
 * whose end finds the last redundancy used up pays for the bits that it could not read.
 */
public final class Repairs implements Mechanism, TimerHandler {

  private final HistoryState state;
  private final SimulationClock clock;
  private final Narrator narrator;
  private final Spending spending;
  private final RepairTimes times;
  private final Drives drives;
  private final Clips clips;

  /** Repairs of a state's drives. */
  public Repairs(Common common, RepairTimes times, Drives drives, Clips clips) {
    state = common.state();
    clock = state.clock();
    narrator = common.narrator();
    spending = common.spending();
    this.times = times;
    this.drives = drives;
    this.clips = clips;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    SetPlan set = copy.set();
    Set<Effect> all = EnumSet.of(Effect.REPAIRS);
    if (!set.service() && set.rebuildsWhatIsHeld()) {
      all.add(Effect.REBUILDS_OF_WHAT_IS_HELD);
    }
    return all;
  }

  /** A drive of a set that survives has failed. */
  public void start(DriveState drive, CopyState copy) {
    int k = drive.countFailure();
    double seen = times.seenAt(drive.plan(), k, state.now());
    double ready = seen + times.arrivalHours(drive.plan(), k);
    drive.seenAt(seen);
    spending.isOrdered(drive, ready);
    int timer = state.timers().repair(drive.slot());
    SetPlan set = copy.plan().set();
    boolean partInUse = set.rebuild().reads() == Rebuild.Reads.USED;
    if (partInUse && (set.rebuildsWhatIsHeld() || set.readErrors() > 0)) {
      drive.condition(DriveState.Condition.ORDERED);
      clock.set(timer, ready);
    } else {
      clock.set(timer, ready + times.rebuildHours(drive.plan(), k, drive.inUse()));
    }
    boolean known = drive.condition() != DriveState.Condition.ORDERED && clock.isSet(timer);
    double until = known ? clock.of(timer) : Double.NaN;
    narrator.say(Happening.Kind.DRIVE_FAILED, drive, 0, until);
  }

  /** A replacement has arrived, or its rebuild is done. */
  @Override
  public void due(int slot) {
    DriveState drive = state.drive(slot);
    CopyState copy = state.copyOf(drive);
    if (drive.condition() == DriveState.Condition.ORDERED) {
      drive.inUse(state.heldBytes(copy));
      drive.condition(DriveState.Condition.DOWN);
      double hours = times.rebuildHours(drive.plan(), drive.repair(), drive.inUse());
      clock.set(state.timers().repair(slot), state.now() + hours);
    } else {
      isWholeAgain(drive, copy);
    }
  }

  private void isWholeAgain(DriveState drive, CopyState copy) {
    SetPlan set = copy.plan().set();
    if (set.readErrors() > 0 && copy.downWith(drive) == set.survives()) {
      boolean all = set.rebuild().reads() == Rebuild.Reads.ALL;
      double held = all ? state.heldBytes(copy) : drive.inUse(); // nothing to lose in empty space
      clips.readByRebuild(copy, held / set.lots(), drive);
    }
    copy.driveIsBack(drive);
    drives.renew(drive);
    spending.isReplaced(drive);
    drives.downChanged(copy);
    narrator.say(Happening.Kind.DRIVE_READY, drive, 0, Double.NaN);
  }
}
