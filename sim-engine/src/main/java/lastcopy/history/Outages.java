package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import lastcopy.footage.PositionSet;

/** Copies that go, and come back with hardware; interruptions of work at the working copy. */
final class Outages implements Mechanism {

  private final HistoryState state;
  private final Plan plan;
  private final int[] timesGone;
  private Cause interruptedBy;
  private double interruptedAt;
  private double workAt;
  private boolean somethingCameBack;

  Outages(HistoryState state) {
    this.state = state;
    plan = state.plan;
    timesGone = new int[plan.copies];
  }

  void clear() {
    Arrays.fill(timesGone, 0);
    interruptedBy = null;
  }

  /** A copy is gone: its holdings are empty, its repairs dropped, its feeds cut. */
  void goes(int copy) {
    state.tracker.leave();
    Holdings holdings = state.holdings;
    holdings.bringAllTo(state.now);
    state.feeds.cutBy(copy);
    PositionSet held = holdings.held[copy];
    double bytes = held.bytes();
    state.rule.removed(copy, held);
    held.clear();
    state.desk.gone(copy);
    state.spoils.gone(copy);
    state.shelves.gone(copy);
    state.gone[copy] = true;
    state.recovering[copy] = false;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      state.repairs.drop(s);
      if (state.lives.state(s) != Lives.State.UP) {
        state.lives.state(s, Lives.State.FAILED);
      }
    }
    state.lives.strainChanged(copy);
    double back = state.times.backAt(copy, timesGone[copy]++, state.now);
    state.set(plan.timer.comeBack(copy), back);
    if (copy == 0) {
      interrupted(state.rule.plainCause());
      workAt = Double.POSITIVE_INFINITY;
    }
    state.say(Happening.Kind.COPY_GONE, copy, -1, bytes, back);
  }

  /** A copy that was gone has hardware again, empty. */
  @Override
  public void due(int copy) {
    state.gone[copy] = false;
    state.feeds.comesBack(copy);
    state.down[copy] = 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (state.lives.state(s) == Lives.State.FAILED) {
        state.lives.renew(s);
      } else {
        state.defects.again(s);
      }
    }
    state.say(Happening.Kind.COPY_BACK, copy, -1, 0, Double.NaN);
    if (copy == 0) {
      workGoesOn();
      state.offloads.hardwareIsBack();
      state.cards.offloadAgain(0, Double.POSITIVE_INFINITY);
      state.refill.start();
    } else {
      state.feeds.wake(copy, true);
    }
    state.feeds.wakeTargets(copy, true);
  }

  /** Every drive of a copy is destroyed, but those of a shelf that are not yet bought. */
  void destroyDrives(int copy) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (state.lives.inService(s)) {
        state.lives.destroy(s);
      }
    }
  }

  /** A drive of the working shelf failed. */
  void shelfInterrupted(boolean theOneBeingFilled) {
    boolean began = interruptedBy == null;
    interrupted(plan.driveCauses.get(Cause.Context.ALONE));
    if (theOneBeingFilled) {
      workAt = Double.POSITIVE_INFINITY;
    } else if (began) {
      workAt = state.now;
    }
  }

  private void interrupted(Cause cause) {
    if (interruptedBy == null) {
      interruptedBy = cause;
      interruptedAt = state.now;
      somethingCameBack = false;
    }
  }

  /** Work can go on. */
  void workGoesOn() {
    workAt = Math.min(workAt, state.now);
  }

  /** Some footage that was saved elsewhere is brought back to the working copy. */
  void comesBack() {
    somethingCameBack = true;
  }

  /** Everything that was saved is back on the working copy, or the horizon ends the wait. */
  void whole() {
    if (interruptedBy != null) {
      tell(state.now);
    }
  }

  private void tell(double now) {
    if (state.timed && state.ledger != null) {
      double work = Math.min(workAt, now) - interruptedAt;
      double whole = somethingCameBack ? now - interruptedAt : Double.NaN;
      state.ledger.recovered(interruptedBy, work, whole);
    }
    interruptedBy = null;
  }

  /** A deletion or malware was noticed and what was kept of it is back. */
  void putBack(Map<Cause.Context, Cause> causes, double since) {
    if (state.timed && state.ledger != null) {
      state.ledger.recovered(causes.get(Cause.Context.ALONE), 0, state.now - since);
    }
  }
}
