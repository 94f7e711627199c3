package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * Shelves: rows of separate drives filled one after another. A failed drive takes its own positions
 * only; it is back, empty, after it was noticed and replaced, and is filled again.
 */
final class Shelves {

  private final Stage stage;
  private final Plan plan;
  private final PositionSet part = new PositionSet();

  Shelves(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
  }

  private double from(int slot) {
    int copy = plan.copyOfSlot[slot];
    return (slot - plan.firstSlot[copy]) * plan.driveSize[copy];
  }

  private double to(int slot) {
    return from(slot) + plan.driveSize[plan.copyOfSlot[slot]];
  }

  /** What a set has within the positions of a slot. */
  private PositionSet within(int slot, PositionSet set) {
    part.copyFrom(set);
    part.remove(0, from(slot));
    part.remove(to(slot), Double.POSITIVE_INFINITY);
    return part;
  }

  /** A drive of a shelf fails. */
  void driveFails(int slot) {
    int copy = plan.copyOfSlot[slot];
    Holdings holdings = stage.holdings;
    stage.calm.leave();
    holdings.bringAllTo(stage.now);
    stage.rule.struck(plan.driveCauses);
    double bytes = within(slot, holdings.held[copy]).bytes();
    stage.rule.removed(copy, part);
    holdings.held[copy].removeAll(part);
    stage.feeds.cannotSend(copy, part);
    stage.desk.cannotKeep(copy, from(slot), to(slot));
    holdings.barred[copy].add(from(slot), to(slot));
    stage.feeds.cannotTake(copy, holdings.barred[copy]);
    stage.lives.state(slot, Lives.State.DOWN);
    stage.down[copy]++;
    int k = stage.repairs.failed(slot);
    double back = stage.times.replacedAt(slot, k, stage.now);
    stage.set(plan.timer.repair(slot), back);
    if (copy == 0) {
      stage.outages.shelfInterrupted(fills(slot));
    }
    stage.say(Happening.Kind.DRIVE_FAILED, copy, slot - plan.firstSlot[copy], bytes, back);
  }

  /** Whether new shoots would go to a slot now. */
  private boolean fills(int slot) {
    double shot = stage.shoots.total(stage.now);
    return shot >= from(slot) && shot < to(slot);
  }

  /** A failed drive of a shelf has been replaced; it is filled again. */
  void driveIsBack(int slot) {
    int copy = plan.copyOfSlot[slot];
    Holdings holdings = stage.holdings;
    stage.down[copy]--;
    stage.lives.renew(slot);
    holdings.barred[copy].remove(from(slot), to(slot));
    stage.feeds.comesBack(copy);
    stage.say(Happening.Kind.DRIVE_READY, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
    if (copy == 0) {
      stage.offloads.again(within(slot, stage.offloads.waiting()));
      stage.cards.offloadAgain(from(slot), to(slot));
      if (fills(slot)) {
        stage.outages.workGoesOn();
      }
      stage.refill.start();
    } else {
      stage.feeds.wake(copy, true);
    }
    stage.feeds.wakeTargets(copy, true);
  }

  /** Whether any drive of a shelf is down. */
  boolean anyDown() {
    for (int c = 0; c < plan.copies; c++) {
      if (plan.shelf[c] && stage.down[c] > 0) {
        return true;
      }
    }
    return false;
  }

  /** All drives of a shelf are gone with it: none is barred any more, since nothing is taken. */
  void gone(int copy) {
    if (plan.shelf[copy]) {
      stage.holdings.barred[copy].clear();
    }
  }
}
