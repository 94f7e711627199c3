package lastcopy.history.screen;

import java.util.stream.IntStream;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Fixed;

/**
 * The first fill of a working copy that starts empty. If nothing happens before it is surely over,
 * and it reads nothing that may be hidden, the history goes on as one that starts full.
 */
final class FirstFill {

  private final boolean mayPass;
  private final double hours;
  private final long[] key;

  /** Uniforms below them surely mean that a source does not happen before it is over. */
  private final double[] limit;

  /**
   * The first fill of a layout.
   *
   * @param hours after which a refill of the working copy is surely over
   * @param key by source, of the draw of its first time
   */
  FirstFill(Plan plan, double hours, long[] key) {
    boolean none = plan.copy(0).startsFull();
    this.hours = hours;
    this.key = none ? new long[0] : key.clone();
    limit =
        IntStream.range(0, this.key.length)
            .mapToDouble(i -> Screen.below(hazard(plan, i)))
            .toArray();
    mayPass =
        none || (readsAll(plan) && IntStream.range(0, limit.length).allMatch(i -> limit[i] > 0));
  }

  /** Whether each other copy has all at the start, and gives all while nothing happens. */
  private static boolean readsAll(Plan plan) {
    for (int c = 1; c < plan.copies(); c++) {
      CopyPlan copy = plan.copy(c);
      if (!copy.startsFull() || !(copy.set().hidesNothing() || copy.set().survives() > 0)) {
        return false;
      }
    }
    return plan.copies() > 1;
  }

  private double hazard(Plan plan, int source) {
    if (source >= plan.slots()) {
      return plan.shock(source - plan.slots()).perHour() * hours;
    }
    SlotPlan slot = plan.slot(source);
    if (slot.enters() > hours) {
      return 0;
    }
    boolean known = slot.enters() == 0 && slot.batch() < 0 && !slot.isSwapped();
    if (!known || !(slot.age() instanceof Fixed age)) {
      return Double.POSITIVE_INFINITY;
    }
    double on = SlotPlan.hazard(slot.life(), age.hours(), hours);
    return slot.lifeOff() == null ? on : on + SlotPlan.hazard(slot.lifeOff(), age.hours(), hours);
  }

  /** Whether any history with it may pass. */
  boolean mayPass() {
    return mayPass;
  }

  /** The histories in which something may happen before it is over. */
  long disturbed(HistoryLanes lanes) {
    long some = 0;
    for (int i = 0; i < key.length; i++) {
      some |= lanes.atLeast(limit[i], key[i]);
    }
    return some;
  }
}
