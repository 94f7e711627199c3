package lastcopy.history.plan;

import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Rebuild;

/** How long the repair of a drive takes: the same luck wherever a history is decided. */
public final class RepairTimes {

  private final Plan plan;
  private final Draws draws;

  /** Repairs of a layout's drives with the luck of a history. */
  public RepairTimes(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  private Copy.Repair repair(SlotPlan slot) {
    return plan.copyOf(slot).stated().repair();
  }

  /** When somebody notices the k-th drive of a slot that failed. */
  public double seenAt(SlotPlan slot, int k, double failedAt) {
    return failedAt + delay(repair(slot).noticed(), failedAt, slot.key(Draws.NOTICED, k));
  }

  /** How long its replacement takes from then on. */
  public double arrivalHours(SlotPlan slot, int k) {
    return draws.remaining(repair(slot).arrival(), 0, slot.key(Draws.ARRIVAL, k));
  }

  /** When the k-th drive of a slot that failed has been noticed and its replacement arrived. */
  public double replacedAt(SlotPlan slot, int k, double failedAt) {
    return seenAt(slot, k, failedAt) + arrivalHours(slot, k);
  }

  /** When a copy that is gone at a time, for the k-th time, has hardware again. */
  public double backAt(CopyPlan copy, int k, double goneAt) {
    Copy.Repair repair = copy.stated().repair();
    long noticed = Draws.key(copy.source(), Draws.GONE_NOTICED, k);
    long arrives = Draws.key(copy.source(), Draws.GONE_ARRIVAL, k);
    return goneAt
        + delay(repair.goneNoticed(), goneAt, noticed)
        + draws.remaining(repair.arrival(), 0, arrives);
  }

  /**
   * Hours of the rebuild after it.
   *
   * @param inUse bytes held when it starts, which decide nothing if all is rebuilt
   */
  public double rebuildHours(SlotPlan slot, int k, double inUse) {
    SetPlan set = plan.copyOf(slot).set();
    if (set.rebuild().time() instanceof Rebuild.ByLaw byLaw) {
      return draws.remaining(byLaw.law(), 0, slot.key(Draws.REBUILD, k));
    }
    return set.rebuild().reads() == Rebuild.Reads.ALL
        ? set.wholeRebuildHours()
        : set.rebuildHours(inUse);
  }

  private double delay(Delay delay, double from, long key) {
    return delay instanceof Delay.Lawful lawful
        ? draws.remaining(lawful.law(), 0, key)
        : ((Delay.Looks) delay).hoursUntilNext(from);
  }
}
