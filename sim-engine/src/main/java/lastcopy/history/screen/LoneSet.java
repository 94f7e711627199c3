package lastcopy.history.screen;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Rebuild;

/**
 * Drives that stand in for each other, by themselves: whether they fail and heal up to the horizon
 * without ever too many being down at once. While that is so no drive's failures and repairs depend
 * on another's, so each drive's are reckoned in one go, those of one model together, with the draws
 * of the general path and the same sums. Mirrored pairs are reckoned pair by pair.
 */
final class LoneSet {

  /** Where so few new drives outlive the horizon it costs more to ask than to draw all lives. */
  private static final double WORTH_ASKING = 0.5;

  /** All that it reckons with; shocks are sources by themselves. */
  private static final Set<Effect> RECKONS =
      EnumSet.of(
          Effect.FAILURES, Effect.REPAIRS, Effect.SHOCKS, Effect.PAIRS, Effect.UNLIKE_DRIVES);

  private final HistoryLanes histories;
  private final CopyPlan copy;
  private final Kind[] kinds;
  private final double horizon;
  private final double[] limit;
  private final Downtimes downtimes;
  private final double[] failed;
  private final Runnable step;

  /** Drives of one model, of which a set has one or two. */
  private record Kind(SlotPlan[] slots, DriveLanes lanes, double outlives) {

    /**
     * Drives that are alike.
     *
     * @param slots at least one
     * @param horizon for which a new drive outlives the history if its uniform is below a limit
     */
    static Kind of(HistoryLanes histories, List<SlotPlan> slots, double horizon) {
      long[] sources = slots.stream().mapToLong(SlotPlan::source).toArray();
      SlotPlan first = slots.get(0);
      double hazard = SlotPlan.hazard(first.life(), first.boughtAt(), horizon);
      return new Kind(
          slots.toArray(SlotPlan[]::new), new DriveLanes(histories, sources), Screen.below(hazard));
    }
  }

  /**
   * A lot of drives of a copy.
   *
   * @param lot its number
   * @param limit by slot, uniforms below which the first drive surely lives to the horizon
   * @param step run for each round of lives
   */
  LoneSet(
      Plan plan, HistoryLanes histories, CopyPlan copy, int lot, double[] limit, Runnable step) {
    this.histories = histories;
    this.copy = copy;
    this.limit = limit;
    this.step = step;
    horizon = plan.horizon();
    Map<Integer, List<SlotPlan>> alike =
        copy.set()
            .drivesOf(lot)
            .mapToObj(drive -> plan.slot(copy.firstSlot() + drive))
            .collect(Collectors.groupingBy(SlotPlan::kind, TreeMap::new, Collectors.toList()));
    kinds =
        alike.values().stream()
            .map(slots -> Kind.of(histories, slots, horizon))
            .toArray(Kind[]::new);
    downtimes = new Downtimes(copy.set().survives(), horizon);
    failed = new double[HistoryLanes.SIZE * copy.set().together()];
  }

  /** Whether all that can befall the set of a copy is reckoned with here. */
  static boolean stands(CopyPlan copy, Set<Effect> effects) {
    return copy.set().survives() > 0 && RECKONS.containsAll(effects);
  }

  /** The histories in which the set, it may be, has too many drives down. */
  long fails() {
    boolean some = false;
    for (Kind kind : kinds) {
      some |= mayFail(kind);
    }
    if (!some) {
      return 0;
    }
    downtimes.clear();
    for (Kind kind : kinds) {
      if (!kind.lanes().isEmpty()) {
        reckon(kind);
      }
    }
    return downtimes.areTooManyToTell() ? -1 : downtimes.tooMany();
  }

  private boolean mayFail(Kind kind) {
    kind.lanes().clear();
    for (int d = 0; d < kind.slots().length; d++) {
      SlotPlan slot = kind.slots()[d];
      kind.lanes().add(d, histories.atLeast(limit[slot.index()], slot.firstKey()));
    }
    return !kind.lanes().isEmpty();
  }

  private void reckon(Kind kind) {
    DriveLanes lanes = kind.lanes();
    SlotPlan any = kind.slots()[0];
    lanes.passes(any.age(), 0, Draws.AGE, 0);
    lanes.firstLifePasses(any.life());
    lanes.keepBy(horizon);
    for (int k = 0; !lanes.isEmpty() && !downtimes.areTooManyToTell(); k++) {
      step.run();
      lanes.times(failed);
      repair(lanes, k);
      lanes.wereDown(failed, downtimes);
      if (kind.outlives() > WORTH_ASKING) {
        lanes.keepAtLeast(kind.outlives(), Draws.LIFE, k + 1);
      }
      lanes.passes(any.life(), any.boughtAt(), Draws.LIFE, k + 1);
      lanes.keepBy(horizon);
    }
  }

  /** The k-th repair of those that failed, a sum of the same parts as in {@code RepairTimes}. */
  private void repair(DriveLanes lanes, int k) {
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
