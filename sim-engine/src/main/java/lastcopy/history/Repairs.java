package lastcopy.history;

import java.util.Arrays;
import lastcopy.scenario.Rebuild;

/**
 * Repair of sets that survive: noticed, wait, rebuild; each failed drive runs its own. A rebuild
 * whose end finds the last redundancy used up pays for the bits that it could not read.
 */
final class Repairs implements Mechanism {

  private final HistoryState state;
  private final Plan plan;
  private final int[] failures;

  /** Bytes that the copy held when the rebuild of a slot started, which reads the part in use. */
  private final double[] inUse;

  private final double[] seenAt;

  Repairs(HistoryState state) {
    this.state = state;
    plan = state.plan;
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
    double seen = state.times.seenAt(slot, k, state.now);
    double ready = seen + state.times.arrivalHours(slot, k);
    seenAt[slot] = seen;
    Rebuild rebuild = state.times.rebuild(copy);
    boolean byRate = rebuild.time() instanceof Rebuild.ByRate;
    boolean partInUse = rebuild.reads() == Rebuild.Reads.USED;
    if (partInUse && (byRate || plan.readErrors[copy] > 0)) {
      state.lives.state(slot, Lives.State.ORDERED);
      state.set(plan.timer.repair(slot), ready);
    } else {
      state.set(plan.timer.repair(slot), ready + state.times.rebuildHours(slot, k, inUse[slot]));
    }
    int timer = plan.timer.repair(slot);
    boolean known = state.lives.state(slot) != Lives.State.ORDERED && state.agenda.isSet(timer);
    double until = known ? state.agenda.time(timer) : Double.NaN;
    state.say(Happening.Kind.DRIVE_FAILED, copy, slot - plan.firstSlot[copy], 0, until);
  }

  /** Whether some drive of a set other than this one is down and nobody has seen it yet. */
  boolean unseen(int copy, int slot) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      boolean isDown = state.lives.state(s) == Lives.State.DOWN;
      if (s != slot && (isDown || state.lives.state(s) == Lives.State.ORDERED)) {
        if (seenAt[s] > state.now) {
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
      state.shelves.driveIsBack(slot);
    } else if (state.lives.state(slot) == Lives.State.ORDERED) {
      inUse[slot] = state.heldBytes(copy);
      state.lives.state(slot, Lives.State.DOWN);
      state.set(
          plan.timer.repair(slot),
          state.now + state.times.rebuildHours(slot, failures[slot] - 1, inUse[slot]));
    } else {
      wholeAgain(slot, copy);
    }
  }

  private void wholeAgain(int slot, int copy) {
    if (plan.readErrors[copy] > 0 && state.down[copy] == plan.survives[copy]) {
      boolean all = state.times.rebuild(copy).reads() == Rebuild.Reads.ALL;
      double held = all ? state.heldBytes(copy) : inUse[slot]; // nothing to lose in empty space
      state.clips.readByRebuild(copy, held, slot, failures[slot] - 1);
    }
    state.down[copy]--;
    state.lives.renew(slot);
    state.lives.strainChanged(copy);
    state.say(Happening.Kind.DRIVE_READY, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
  }

  void drop(int slot) {
    state.agenda.cancel(plan.timer.repair(slot));
  }
}
