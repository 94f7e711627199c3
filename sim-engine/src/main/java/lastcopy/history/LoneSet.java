package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Law;

/**
 * A set of drives by itself: whether it fails and heals up to the horizon without ever having too
 * many drives down at once. While that is so no drive's failures and repairs depend on another's,
 * so each drive's are reckoned in one go, with the draws of the general path and the same sums.
 */
final class LoneSet {

  /** Where so few new drives outlive the horizon it costs more to ask than to draw all lives. */
  private static final double WORTH_ASKING = 0.5;

  private final Plan plan;
  private final HistoryLanes histories;
  private final RepairTimes times;
  private final int copy;
  private final double[] limit;
  private final DriveLanes lanes;
  private final Downtimes downtimes;
  private final double[] failed;
  private final Runnable step;

  /** Uniforms below it surely mean that a new drive lives for as long as a whole history. */
  private final double outlives;

  /**
   * The set of a copy.
   *
   * @param limit by slot, uniforms below which the first drive surely lives to the horizon
   * @param step run for each round of lives
   */
  LoneSet(
      Plan plan,
      HistoryLanes histories,
      RepairTimes times,
      int copy,
      double[] limit,
      Runnable step) {
    this.plan = plan;
    this.histories = histories;
    this.times = times;
    this.copy = copy;
    this.limit = limit;
    this.step = step;
    long[] sources =
        Arrays.copyOfRange(plan.slotSource, plan.firstSlot[copy], plan.firstSlot[copy + 1]);
    lanes = new DriveLanes(histories, sources);
    downtimes = new Downtimes(plan.survives[copy], plan.horizon);
    failed = new double[HistoryLanes.SIZE * sources.length];
    int slot = plan.firstSlot[copy];
    outlives = Screen.below(Plan.hazard(plan.life[slot], plan.boughtAt[slot], plan.horizon));
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
  private static boolean staysAsItIs(Plan plan, int copy) {
    boolean plain = !plan.shelf[copy] && plan.defects[copy] == null && plan.readErrors[copy] == 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      plain &=
          plan.batchOf[s] < 0
              && plan.lifeOff[s] == null
              && plan.replaceAt[s] == Double.POSITIVE_INFINITY;
    }
    return plain;
  }

  /** The histories in which the set, it may be, has too many drives down. */
  long fails() {
    int first = plan.firstSlot[copy];
    lanes.clear();
    for (int slot = first; slot < plan.firstSlot[copy + 1]; slot++) {
      lanes.add(slot - first, histories.atLeast(limit[slot], plan.firstLifeKey[slot]));
    }
    if (lanes.isEmpty()) {
      return 0;
    }
    downtimes.clear();
    Law life = plan.life[first];
    lanes.passes(plan.age[first], 0, Draws.AGE, 0);
    lanes.firstLifePasses(life);
    lanes.keepBy(plan.horizon);
    for (int k = 0; !lanes.isEmpty() && !downtimes.areTooManyToTell(); k++) {
      step.run();
      lanes.times(failed);
      times.repair(copy, k, lanes);
      lanes.wereDown(failed, downtimes);
      if (outlives > WORTH_ASKING) {
        lanes.keepAtLeast(outlives, Draws.LIFE, k + 1);
      }
      lanes.passes(life, plan.boughtAt[first], Draws.LIFE, k + 1);
      lanes.keepBy(plan.horizon);
    }
    return downtimes.areTooManyToTell() ? -1 : downtimes.tooMany();
  }
}
