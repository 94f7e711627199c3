package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Law;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;

/**
 * Repair of sets that survive: noticed, wait, rebuild; each failed drive runs its own. A rebuild
 * whose end finds the last redundancy used up pays for the bits that it could not read.
 */
final class Repairs implements Mechanism {

  private final Stage stage;
  private final Plan plan;
  private final int[] failures;
  private final double[] inUse;

  Repairs(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    failures = new int[plan.slots];
    inUse = new double[plan.slots];
  }

  void clear() {
    Arrays.fill(failures, 0);
  }

  /** A drive of a set that survives has failed. */
  void start(int slot, int copy) {
    int k = failures[slot]++;
    double ready = replacedAt(slot, copy, k);
    Rebuild rebuild = rebuild(copy);
    boolean byRate = rebuild.time() instanceof Rebuild.ByRate;
    boolean partInUse = rebuild.reads() == Rebuild.Reads.USED;
    if (partInUse && (byRate || plan.readErrors[copy] > 0)) {
      stage.lives.state(slot, Lives.State.ORDERED);
      stage.set(plan.timer.repair(slot), ready);
    } else {
      stage.set(plan.timer.repair(slot), ready + hours(slot, copy, k, rebuild));
    }
    if (stage.witness != null) {
      double until = stage.agenda.isSet(plan.timer.repair(slot)) ? ready : Double.NaN;
      stage.say(
          Happening.Kind.DRIVE_FAILED,
          copy,
          slot - plan.firstSlot[copy],
          0,
          stage.lives.state(slot) == Lives.State.ORDERED || Double.isNaN(until)
              ? until
              : stage.agenda.time(plan.timer.repair(slot)));
    }
  }

  /** When the k-th failed drive of a slot has been noticed and its replacement has arrived. */
  double replacedAt(int slot, int copy, int k) {
    long source = plan.slotSource[slot];
    Copy.Repair repair = plan.copy[copy].repair();
    return stage.now
        + stage.delay(repair.noticed(), Draws.key(source, Draws.NOTICED, k))
        + stage.delay(repair.arrival(), Draws.key(source, Draws.ARRIVAL, k));
  }

  /** Counts a failure of a slot's drives; how many there were before. */
  int failed(int slot) {
    return failures[slot]++;
  }

  private double hours(int slot, int copy, int k, Rebuild rebuild) {
    if (rebuild.time() instanceof Rebuild.ByLaw byLaw) {
      Law law = byLaw.law();
      return stage.delay(law, Draws.key(plan.slotSource[slot], Draws.REBUILD, k));
    }
    return rebuild.reads() == Rebuild.Reads.ALL
        ? plan.wholeRebuildHours(copy)
        : plan.rebuildHours(copy, inUse[slot]);
  }

  private Rebuild rebuild(int copy) {
    return ((Medium.DriveSet) plan.copy[copy].medium()).rebuild();
  }

  /** A replacement has arrived, or its rebuild is done, or a drive of a shelf is back. */
  @Override
  public void due(int slot) {
    int copy = plan.copyOfSlot[slot];
    if (plan.shelf[copy]) {
      stage.shelves.driveIsBack(slot);
    } else if (stage.lives.state(slot) == Lives.State.ORDERED) {
      inUse[slot] = stage.heldBytes(copy);
      stage.lives.state(slot, Lives.State.DOWN);
      stage.set(
          plan.timer.repair(slot),
          stage.now + hours(slot, copy, failures[slot] - 1, rebuild(copy)));
    } else {
      wholeAgain(slot, copy);
    }
  }

  private void wholeAgain(int slot, int copy) {
    if (plan.readErrors[copy] > 0 && stage.down[copy] == plan.survives[copy]) {
      boolean all = rebuild(copy).reads() == Rebuild.Reads.ALL;
      stage.clips.readByRebuild(
          copy, plan.rebuildReads(copy, all, inUse[slot]), slot, failures[slot] - 1);
    }
    stage.down[copy]--;
    stage.lives.renew(slot);
    stage.lives.strainChanged(copy);
    stage.say(Happening.Kind.DRIVE_READY, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
  }

  void drop(int slot) {
    stage.agenda.cancel(plan.timer.repair(slot));
  }
}
