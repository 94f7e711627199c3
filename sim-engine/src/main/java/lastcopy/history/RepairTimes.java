package lastcopy.history;

import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;

/** How long the repair of a drive takes: the same luck wherever a history is decided. */
final class RepairTimes {

  private final Plan plan;
  private final Draws draws;

  RepairTimes(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  /** When somebody notices the k-th drive of a slot that failed. */
  double seenAt(int slot, int k, double failedAt) {
    Copy.Repair repair = plan.copy[plan.copyOfSlot[slot]].repair();
    long key = Draws.key(plan.slotSource[slot], Draws.NOTICED, k);
    return failedAt + delay(repair.noticed(), failedAt, key);
  }

  /** How long its replacement takes from then on. */
  double arrivalHours(int slot, int k) {
    Copy.Repair repair = plan.copy[plan.copyOfSlot[slot]].repair();
    long key = Draws.key(plan.slotSource[slot], Draws.ARRIVAL, k);
    return draws.remaining(repair.arrival(), 0, key);
  }

  /** When the k-th drive of a slot that failed has been noticed and its replacement arrived. */
  double replacedAt(int slot, int k, double failedAt) {
    return seenAt(slot, k, failedAt) + arrivalHours(slot, k);
  }

  /** The k-th repair of drives that failed, where its time does not depend on what is held. */
  void repair(int copy, int k, DriveLanes lanes) {
    Copy.Repair repair = plan.copy[copy].repair();
    if (repair.noticed() instanceof Delay.Looks looks) {
      lanes.waitsForLook(looks);
    } else {
      lanes.passes(((Delay.Lawful) repair.noticed()).law(), 0, Draws.NOTICED, k);
    }
    lanes.passes(repair.arrival(), 0, Draws.ARRIVAL, k);
    if (rebuild(copy).time() instanceof Rebuild.ByLaw byLaw) {
      lanes.passes(byLaw.law(), 0, Draws.REBUILD, k);
    } else {
      lanes.passes(plan.wholeRebuildHours(copy));
    }
  }

  /** When a copy that is gone at a time, for the k-th time, has hardware again. */
  double backAt(int copy, int k, double goneAt) {
    long source = plan.copySource[copy];
    Copy.Repair repair = plan.copy[copy].repair();
    return goneAt
        + delay(repair.goneNoticed(), goneAt, Draws.key(source, Draws.GONE_NOTICED, k))
        + draws.remaining(repair.arrival(), 0, Draws.key(source, Draws.GONE_ARRIVAL, k));
  }

  /**
   * Hours of the rebuild after it.
   *
   * @param inUse bytes held when it starts, which decide nothing if all is rebuilt
   */
  double rebuildHours(int slot, int k, double inUse) {
    int copy = plan.copyOfSlot[slot];
    Rebuild rebuild = rebuild(copy);
    if (rebuild.time() instanceof Rebuild.ByLaw byLaw) {
      Law law = byLaw.law();
      return draws.remaining(law, 0, Draws.key(plan.slotSource[slot], Draws.REBUILD, k));
    }
    return rebuild.reads() == Rebuild.Reads.ALL
        ? plan.wholeRebuildHours(copy)
        : plan.rebuildHours(copy, inUse);
  }

  /** Whether the time of a rebuild depends on what the copy holds when it starts. */
  boolean dependOnWhatIsHeld(int copy) {
    Rebuild rebuild = rebuild(copy);
    return rebuild.reads() == Rebuild.Reads.USED && rebuild.time() instanceof Rebuild.ByRate;
  }

  Rebuild rebuild(int copy) {
    return ((Medium.DriveSet) plan.copy[copy].medium()).rebuild();
  }

  /** A delay from an instant, in hours. */
  double delay(Delay delay, double from, long key) {
    return delay instanceof Delay.Lawful lawful
        ? draws.remaining(lawful.law(), 0, key)
        : ((Delay.Looks) delay).hoursUntilNext(from);
  }
}
