package lastcopy.history;

import java.util.Arrays;
import lastcopy.scenario.Rebuild;

/**
 * Repair of sets that survive: noticed, wait, rebuild; each failed drive runs its own. A rebuild
 * whose end finds the last redundancy used up pays for the bits that it could not read.
 */
final class Repairs implements Mechanism {

  private final Stage stage;
  private final Plan plan;
  private final int[] failures;

  /** Bytes that the copy held when the rebuild of a slot started, which reads the part in use. */
  private final double[] inUse;

  private final double[] seenAt;

  Repairs(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    failures = new int[plan.slots];
    inUse = new double[plan.slots];
    seenAt = new double[plan.slots];
  }

  void clear() {
    Arrays.fill(failures, 0);
  }

  /** A drive of a set that survives has failed. */
  void start(int slot, int copy) {
    int k = failures[slot]++;
    double seen = stage.times.seenAt(slot, k, stage.now);
    double ready = seen + stage.times.arrivalHours(slot, k);
    seenAt[slot] = seen;
    Rebuild rebuild = stage.times.rebuild(copy);
    boolean byRate = rebuild.time() instanceof Rebuild.ByRate;
    boolean partInUse = rebuild.reads() == Rebuild.Reads.USED;
    if (partInUse && (byRate || plan.readErrors[copy] > 0)) {
      stage.lives.state(slot, Lives.State.ORDERED);
      stage.set(plan.timer.repair(slot), ready);
    } else {
      stage.set(plan.timer.repair(slot), ready + stage.times.rebuildHours(slot, k, inUse[slot]));
    }
    int timer = plan.timer.repair(slot);
    boolean known = stage.lives.state(slot) != Lives.State.ORDERED && stage.agenda.isSet(timer);
    double until = known ? stage.agenda.time(timer) : Double.NaN;
    stage.say(Happening.Kind.DRIVE_FAILED, copy, slot - plan.firstSlot[copy], 0, until);
  }

  /** Whether some drive of a set other than this one is down and nobody has seen it yet. */
  boolean unseen(int copy, int slot) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      boolean isDown = stage.lives.state(s) == Lives.State.DOWN;
      if (s != slot && (isDown || stage.lives.state(s) == Lives.State.ORDERED)) {
        if (seenAt[s] > stage.now) {
          return true;
        }
      }
    }
    return false;
  }

  /** Counts a failure of a slot's drives; how many there were before. */
  int failed(int slot) {
    return failures[slot]++;
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
          stage.now + stage.times.rebuildHours(slot, failures[slot] - 1, inUse[slot]));
    } else {
      wholeAgain(slot, copy);
    }
  }

  private void wholeAgain(int slot, int copy) {
    if (plan.readErrors[copy] > 0 && stage.down[copy] == plan.survives[copy]) {
      boolean all = stage.times.rebuild(copy).reads() == Rebuild.Reads.ALL;
      double held = all ? stage.heldBytes(copy) : inUse[slot]; // nothing to lose in empty space
      stage.clips.readByRebuild(copy, held, slot, failures[slot] - 1);
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
