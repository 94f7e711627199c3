package lastcopy.history;

import lastcopy.law.Law;

/**
 * A set of drives by itself: whether it fails and heals up to the horizon without ever having too
 * many drives down at once. While that is so no drive's failures and repairs depend on another's,
 * so each drive's are reckoned in one go, with the draws of the general path and the same sums.
 */
final class LoneSet {

  /** Beyond so many failures of a set in one history the general path takes over. */
  private static final int MOST_FAILURES = 256;

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final int from;
  private final int to;
  private final int survives;
  private final double[] limit;
  private final double[] failsAt = new double[MOST_FAILURES];
  private final double[] wholeAt = new double[MOST_FAILURES];
  private int failures;

  /**
   * The set of a copy.
   *
   * @param limit by slot, uniforms below which the first drive surely lives to the horizon
   */
  LoneSet(Plan plan, Draws draws, RepairTimes times, int copy, double[] limit) {
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    from = plan.firstSlot[copy];
    to = plan.firstSlot[copy + 1];
    survives = plan.survives[copy];
    this.limit = limit;
  }

  /**
   * Whether nothing but failures of drives can happen to the set of a copy, and none of them
   * matters to another.
   */
  static boolean stands(Plan plan, RepairTimes times, int copy) {
    return plan.survives[copy] > 0
        && plan.strain[copy] == 1
        && !times.dependOnWhatIsHeld(copy)
        && staysAsItIs(plan, copy);
  }

  /** Whether drives of a copy age by themselves, and are either whole or failed as a whole. */
  static boolean staysAsItIs(Plan plan, int copy) {
    boolean plain = !plan.shelf[copy] && plan.defects[copy] == null && plan.readErrors[copy] == 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      plain &=
          plan.batchOf[s] < 0
              && plan.lifeOff[s] == null
              && plan.replaceAt[s] == Double.POSITIVE_INFINITY;
    }
    return plain;
  }

  /** Whether in the history of the draws the set never has too many drives down. */
  boolean heals() {
    failures = 0;
    for (int slot = from; slot < to; slot++) {
      if (draws.uniform(plan.firstLifeKey[slot]) >= limit[slot] && !reckon(slot)) {
        return false;
      }
    }
    return failures <= survives || neverTooManyDown();
  }

  /** Failures of a slot's drives by the horizon, with the ends of their repairs. */
  private boolean reckon(int slot) {
    Law life = plan.life[slot];
    long source = plan.slotSource[slot];
    double age = draws.remaining(plan.age[slot], 0, Draws.key(source, Draws.AGE, 0));
    double at = life.remaining(age, draws.budget(plan.firstLifeKey[slot]));
    for (int k = 0; at <= plan.horizon; k++) {
      if (failures == MOST_FAILURES) {
        return false;
      }
      double whole = times.replacedAt(slot, k, at) + times.rebuildHours(slot, k, 0);
      failsAt[failures] = at;
      wholeAt[failures++] = Math.min(whole, Double.MAX_VALUE);
      long key = Draws.key(source, Draws.LIFE, k + 1);
      at = whole + life.remaining(plan.boughtAt[slot], draws.budget(key));
    }
    return true;
  }

  private boolean neverTooManyDown() {
    for (int i = 0; i < failures; i++) {
      double at = failsAt[i];
      int down = 0;
      for (int j = 0; j < failures; j++) {
        // At least 0 if it lies between failure and repair, both included: one branch, not two.
        if ((at - failsAt[j]) * (wholeAt[j] - at) >= 0) {
          down++;
        }
      }
      if (down > survives) {
        return false;
      }
    }
    return true;
  }
}
