package lastcopy.history;

import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;

/** Shoots: when they come, and what becomes of them where the working copy cannot take them. */
final class Offloads implements Mechanism {

  private final HistoryState state;
  private final Plan plan;
  private final PositionSet waiting = new PositionSet();
  private final PositionSet shoot = new PositionSet();

  Offloads(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  void clear() {
    waiting.clear();
  }

  /** All bytes offloaded so far. */
  double total() {
    ShootTable shoots = state.shoots;
    return state.offloaded == 0 ? shoots.onHand() : shoots.end(state.offloaded - 1);
  }

  /** What a deletion takes now. */
  double bytesOf(lastcopy.scenario.Desk.Amount amount) {
    return amount instanceof lastcopy.scenario.Desk.ShootCount count
        ? count.shoots() * ShootTable.sizeAt(plan.studio.footage(), state.now)
        : ((lastcopy.scenario.Desk.Bytes) amount).bytes();
  }

  /** What a drive of the working shelf that is down keeps waiting on camera cards. */
  PositionSet waiting() {
    return waiting;
  }

  /** What waited goes to the working copy. */
  void again(PositionSet part) {
    state.holdings.held[0].addAll(part);
    waiting.removeAll(part);
    state.cards.waitNoMore(waiting);
  }

  /** Whether the working copy lacks anything that was ever offloaded and may be asked for. */
  boolean lacksSomething() {
    shoot.clear();
    shoot.add(state.holdings.aged, total());
    shoot.removeAll(state.holdings.held[0]);
    shoot.removeAll(state.holdings.barred[0]);
    shoot.removeAll(state.holdings.blocked);
    return !shoot.isEmpty();
  }

  /** A shoot is due, or several that waited for hardware. */
  @Override
  public void due(int index) {
    ShootTable shoots = state.shoots;
    while (state.offloaded < shoots.count() && shoots.time(state.offloaded) <= state.now) {
      int k = state.offloaded++;
      shoot.clear();
      shoot.add(shoots.start(k), shoots.end(k));
      if (state.spoils.is(0)) {
        state.cards.offloaded(k);
        state.rule.met(state.spoils.causes(), Cause.Context.ALONE);
        state.rule.removed(-1, shoot);
      } else {
        take(k);
      }
    }
    schedule();
    state.feeds.wakeTargets(0, false);
  }

  private void take(int k) {
    Holdings holdings = state.holdings;
    for (int i = 0; i < shoot.size(); i++) {
      holdings.held[0].add(shoot.from(i), shoot.to(i));
    }
    if (!holdings.barred[0].isEmpty()) {
      holdings.held[0].removeAll(holdings.barred[0]);
      shoot.removeAll(holdings.held[0]);
      waiting.addAll(shoot);
    }
    if (holdings.barred[0].isEmpty() || shoot.isEmpty()) {
      state.cards.offloaded(k);
    } else {
      state.cards.waits(k);
    }
  }

  void schedule() {
    if (state.offloaded < state.shoots.count()) {
      state.set(plan.timer.offload(), Math.max(state.now, state.shoots.time(state.offloaded)));
    }
  }

  /** The working copy takes shoots again. */
  void hardwareIsBack() {
    if (!state.spoils.is(0)) {
      state.holdings.held[0].addAll(waiting);
      waiting.clear();
      state.cards.waitNoMore(waiting);
    }
    schedule();
  }
}
