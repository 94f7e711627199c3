package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * Shelves: rows of separate drives filled one after another. A failed drive takes its own positions
 * only; it is back, empty, after it was noticed and replaced, and is filled again.
 */
final class Shelves {

  private final HistoryState state;
  private final Plan plan;
  private final PositionSet part = new PositionSet();

  Shelves(HistoryState state) {
    this.state = state;
    plan = state.plan;
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
    Holdings holdings = state.holdings;
    state.tracker.leave();
    holdings.bringAllTo(state.now);
    state.rule.struck(plan.driveCauses);
    double bytes = within(slot, holdings.held[copy]).bytes();
    state.rule.removed(copy, part);
    holdings.held[copy].removeAll(part);
    state.feeds.cannotSend(copy, part);
    state.desk.cannotKeep(copy, from(slot), to(slot));
    holdings.barred[copy].add(from(slot), to(slot));
    state.feeds.cannotTake(copy, holdings.barred[copy]);
    state.lives.state(slot, Lives.State.DOWN);
    state.down[copy]++;
    int k = state.repairs.failed(slot);
    double back = state.times.replacedAt(slot, k, state.now);
    state.set(plan.timer.repair(slot), back);
    if (copy == 0) {
      state.outages.shelfInterrupted(fills(slot));
    }
    state.say(Happening.Kind.DRIVE_FAILED, copy, slot - plan.firstSlot[copy], bytes, back);
  }

  /** Whether new shoots would go to a slot now. */
  private boolean fills(int slot) {
    double shot = state.shoots.total(state.now);
    return shot >= from(slot) && shot < to(slot);
  }

  /** A failed drive of a shelf has been replaced; it is filled again. */
  void driveIsBack(int slot) {
    int copy = plan.copyOfSlot[slot];
    Holdings holdings = state.holdings;
    state.down[copy]--;
    state.lives.renew(slot);
    holdings.barred[copy].remove(from(slot), to(slot));
    state.feeds.comesBack(copy);
    state.say(Happening.Kind.DRIVE_READY, copy, slot - plan.firstSlot[copy], 0, Double.NaN);
    if (copy == 0) {
      state.offloads.again(within(slot, state.offloads.waiting()));
      state.cards.offloadAgain(from(slot), to(slot));
      if (fills(slot)) {
        state.outages.workGoesOn();
      }
      state.refill.start();
    } else {
      state.feeds.wake(copy, true);
    }
    state.feeds.wakeTargets(copy, true);
  }

  /** Whether any drive of a shelf is down. */
  boolean anyDown() {
    for (int c = 0; c < plan.copies; c++) {
      if (plan.shelf[c] && state.down[c] > 0) {
        return true;
      }
    }
    return false;
  }

  /** All drives of a shelf are gone with it: none is barred any more, since nothing is taken. */
  void gone(int copy) {
    if (plan.shelf[copy]) {
      state.holdings.barred[copy].clear();
    }
  }
}
