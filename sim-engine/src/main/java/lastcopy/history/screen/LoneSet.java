package lastcopy.history.screen;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.IntStream;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Rebuild;

/**
 * A set of drives by itself: whether it fails and heals up to the horizon without ever having too
 * many drives down at once. While that is so no drive's failures and repairs depend on another's,
 * so each drive's are reckoned in one go, with the draws of the general path and the same sums.
 */
final class LoneSet {

  /** Where so few new drives outlive the horizon it costs more to ask than to draw all lives. */
  private static final double WORTH_ASKING = 0.5;

  /** All that it reckons with; shocks are sources by themselves. */
  private static final Set<Effect> RECKONS =
      EnumSet.of(Effect.FAILURES, Effect.REPAIRS, Effect.SHOCKS);

  private final Plan plan;
  private final HistoryLanes histories;
  private final CopyPlan copy;
  private final Law life;
  private final Law age;
  private final double boughtAt;
  private final double horizon;
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
  LoneSet(Plan plan, HistoryLanes histories, CopyPlan copy, double[] limit, Runnable step) {
    this.plan = plan;
    this.histories = histories;
    this.copy = copy;
    this.limit = limit;
    this.step = step;
    horizon = plan.horizon();
    long[] sources =
        IntStream.range(copy.firstSlot(), copy.endSlot())
            .mapToLong(s -> plan.slot(s).source())
            .toArray();
    lanes = new DriveLanes(histories, sources);
    downtimes = new Downtimes(copy.set().survives(), horizon);
    failed = new double[HistoryLanes.SIZE * sources.length];
    SlotPlan first = plan.slot(copy.firstSlot());
    life = first.life();
    age = first.age();
    boughtAt = first.boughtAt();
    outlives = Screen.below(SlotPlan.hazard(life, boughtAt, horizon));
  }

  /** Whether all that can befall the set of a copy is reckoned with here. */
  static boolean stands(CopyPlan copy, Set<Effect> effects) {
    return copy.set().survives() > 0 && RECKONS.containsAll(effects);
  }

  /** The histories in which the set, it may be, has too many drives down. */
  long fails() {
    lanes.clear();
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      long who = histories.atLeast(limit[s], plan.slot(s).firstKey());
      lanes.add(s - copy.firstSlot(), who);
    }
    if (lanes.isEmpty()) {
      return 0;
    }
    downtimes.clear();
    lanes.passes(age, 0, Draws.AGE, 0);
    lanes.firstLifePasses(life);
    lanes.keepBy(horizon);
    for (int k = 0; !lanes.isEmpty() && !downtimes.areTooManyToTell(); k++) {
      step.run();
      lanes.times(failed);
      repair(k);
      lanes.wereDown(failed, downtimes);
      if (outlives > WORTH_ASKING) {
        lanes.keepAtLeast(outlives, Draws.LIFE, k + 1);
      }
      lanes.passes(life, boughtAt, Draws.LIFE, k + 1);
      lanes.keepBy(horizon);
    }
    return downtimes.areTooManyToTell() ? -1 : downtimes.tooMany();
  }

  /** The k-th repair of those that failed, a sum of the same parts as in {@code RepairTimes}. */
  private void repair(int k) {
    Copy.Repair repair = copy.stated().repair();
    SetPlan set = copy.set();
    if (repair.noticed() instanceof Delay.Looks looks) {
      lanes.waitsForLook(looks);
    } else {
      lanes.passes(((Delay.Lawful) repair.noticed()).law(), 0, Draws.NOTICED, k);
    }
    lanes.passes(repair.arrival(), 0, Draws.ARRIVAL, k);
    if (set.rebuild().time() instanceof Rebuild.ByLaw byLaw) {
      lanes.passes(byLaw.law(), 0, Draws.REBUILD, k);
    } else {
      lanes.passes(set.wholeRebuildHours());
    }
  }
}
