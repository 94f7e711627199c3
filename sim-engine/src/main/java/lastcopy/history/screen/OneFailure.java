package lastcopy.history.screen;

import lastcopy.history.hazard.Hazards;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Fixed;

/**
 * Drives that stand in for each other of which one fails in a whole history, and surely no other,
 * however much they are strained meanwhile: of most histories with a failure that is all.
 */
final class OneFailure {

  /** Rounding never hides an event. */
  private static final double SURELY = 1 + 1e-9;

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final Hazards hazards;
  private final double strain;
  private final int first;
  private final int end;

  /** By drive, the histories of the lanes in which it may fail by the horizon. */
  private final long[] mayFail;

  /** By drive, uniforms below which any later one surely lives to the horizon. */
  private final double[] lasts;

  /** Whether one failure takes nothing, and drives age by the clock. */
  private final boolean decides;

  /**
   * A lot of drives of a copy.
   *
   * @param lot its number
   */
  OneFailure(Plan plan, Draws draws, RepairTimes times, Hazards hazards, CopyPlan copy, int lot) {
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.hazards = hazards;
    SetPlan set = copy.set();
    strain = set.strain();
    first = copy.firstSlot() + lot * set.together();
    end = first + set.together();
    mayFail = new long[end];
    lasts = new double[end];
    boolean all = set.survives() > 1 || set.hidesNothing();
    for (int s = first; s < end; s++) {
      SlotPlan slot = plan.slot(s);
      lasts[s] = Screen.below(SlotPlan.hazard(slot.life(), slot.boughtAt(), plan.horizon()));
      all &= slot.batch() < 0 && !slot.isSwapped() && slot.agesByTheClock();
    }
    decides = all;
  }

  /** The histories of the lanes in which a drive may fail by the horizon. */
  long mayFail(HistoryLanes lanes, double[] limit) {
    long some = 0;
    for (int s = first; s < end; s++) {
      mayFail[s] = lanes.atLeast(limit[s], plan.slot(s).firstKey());
      some |= mayFail[s];
    }
    return some;
  }

  /** Whether in a lane, the history of the draws, surely no more happens than one failure. */
  boolean isAll(int lane) {
    int one = decides ? only(lane) : -1;
    if (one < 0) {
      return false;
    }
    SlotPlan slot = plan.slot(one);
    double at = hazards.after(one, 0, ageAtStart(slot), draws.budget(slot.firstKey()));
    if (at > plan.horizon()) {
      return true;
    }
    if (draws.uniform(slot.key(Draws.LIFE, 1)) >= lasts[one]) {
      return false;
    }
    double whole = times.replacedAt(slot, 0, at) + times.rebuildHours(slot, 0, 0);
    double until = Math.min(plan.horizon(), whole);
    for (int s = first; s < end; s++) {
      if (s != one && !endures(plan.slot(s), at, until)) {
        return false;
      }
    }
    return true;
  }

  /** The only drive that may fail in a lane; −1 if there are several. */
  private int only(int lane) {
    int one = -1;
    for (int s = first; s < end; s++) {
      if ((mayFail[s] >>> lane & 1) != 0) {
        if (one >= 0) {
          return -1;
        }
        one = s;
      }
    }
    return one;
  }

  private static double ageAtStart(SlotPlan slot) {
    return ((Fixed) slot.age()).hours();
  }

  /** Whether a drive, strained from one time to another, surely lives to the horizon. */
  private boolean endures(SlotPlan slot, double from, double to) {
    double strained = hazards.between(slot.index(), from, ageAtStart(slot) + from, to);
    double most = slot.firstHazard() + Math.max(0, strain - 1) * strained;
    return draws.budget(slot.firstKey()) > most * SURELY;
  }
}
