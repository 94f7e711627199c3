package lastcopy.history;

import java.util.Arrays;
import java.util.Map;
import lastcopy.footage.PositionSet;

/** Copies that go, and come back with hardware; interruptions of work at the working copy. */
final class Outages implements Mechanism {

  private final Stage stage;
  private final Plan plan;
  private final int[] timesGone;
  private Cause interruptedBy;
  private double interruptedAt;
  private double workAt;
  private boolean somethingCameBack;

  Outages(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    timesGone = new int[plan.copies];
  }

  void clear() {
    Arrays.fill(timesGone, 0);
    interruptedBy = null;
  }

  /** A copy is gone: its holdings are empty, its repairs dropped, its feeds cut. */
  void goes(int copy) {
    stage.calm.leave();
    Holdings holdings = stage.holdings;
    holdings.bringAllTo(stage.now);
    stage.feeds.cutBy(copy);
    PositionSet held = holdings.held[copy];
    double bytes = held.bytes();
    stage.rule.removed(copy, held);
    held.clear();
    stage.desk.gone(copy);
    stage.spoils.gone(copy);
    stage.shelves.gone(copy);
    stage.gone[copy] = true;
    stage.recovering[copy] = false;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      stage.repairs.drop(s);
      if (stage.lives.state(s) != Lives.State.UP) {
        stage.lives.state(s, Lives.State.FAILED);
      }
    }
    stage.lives.strainChanged(copy);
    double back = stage.times.backAt(copy, timesGone[copy]++, stage.now);
    stage.set(plan.timer.comeBack(copy), back);
    if (copy == 0) {
      interrupted(stage.rule.plainCause());
      workAt = Double.POSITIVE_INFINITY;
    }
    stage.say(Happening.Kind.COPY_GONE, copy, -1, bytes, back);
  }

  /** A copy that was gone has hardware again, empty. */
  @Override
  public void due(int copy) {
    stage.gone[copy] = false;
    stage.feeds.comesBack(copy);
    stage.down[copy] = 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (stage.lives.state(s) == Lives.State.FAILED) {
        stage.lives.renew(s);
      } else {
        stage.defects.again(s);
      }
    }
    stage.say(Happening.Kind.COPY_BACK, copy, -1, 0, Double.NaN);
    if (copy == 0) {
      workGoesOn();
      stage.offloads.hardwareIsBack();
      stage.cards.offloadAgain(0, Double.POSITIVE_INFINITY);
      stage.refill.start();
    } else {
      stage.feeds.wake(copy, true);
    }
    stage.feeds.wakeTargets(copy, true);
  }

  /** Every drive of a copy is destroyed, but those of a shelf that are not yet bought. */
  void destroyDrives(int copy) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (stage.lives.inService(s)) {
        stage.lives.destroy(s);
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
      workAt = stage.now;
    }
  }

  private void interrupted(Cause cause) {
    if (interruptedBy == null) {
      interruptedBy = cause;
      interruptedAt = stage.now;
      somethingCameBack = false;
    }
  }

  /** Work can go on. */
  void workGoesOn() {
    workAt = Math.min(workAt, stage.now);
  }

  /** Some footage that was saved elsewhere is brought back to the working copy. */
  void comesBack() {
    somethingCameBack = true;
  }

  /** Everything that was saved is back on the working copy, or the horizon ends the wait. */
  void whole() {
    if (interruptedBy != null) {
      tell(stage.now);
    }
  }

  private void tell(double now) {
    if (stage.timed && stage.ledger != null) {
      double work = Math.min(workAt, now) - interruptedAt;
      double whole = somethingCameBack ? now - interruptedAt : Double.NaN;
      stage.ledger.recovered(interruptedBy, work, whole);
    }
    interruptedBy = null;
  }

  /** A deletion or malware was noticed and what was kept of it is back. */
  void putBack(Map<Cause.Context, Cause> causes, double since) {
    if (stage.timed && stage.ledger != null) {
      stage.ledger.recovered(causes.get(Cause.Context.ALONE), 0, stage.now - since);
    }
  }
}
