package lastcopy.history;

import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;

/** Shoots: when they come, and what becomes of them where the working copy cannot take them. */
final class Offloads implements Mechanism {

  private final Stage stage;
  private final Plan plan;
  private final PositionSet waiting = new PositionSet();
  private final PositionSet shoot = new PositionSet();

  Offloads(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
  }

  void clear() {
    waiting.clear();
  }

  /** All bytes offloaded so far. */
  double total() {
    ShootTable shoots = stage.shoots;
    return stage.offloaded == 0 ? shoots.onHand() : shoots.end(stage.offloaded - 1);
  }

  /** What a deletion takes now. */
  double bytesOf(lastcopy.scenario.Desk.Amount amount) {
    return amount instanceof lastcopy.scenario.Desk.ShootCount count
        ? count.shoots() * ShootTable.sizeAt(plan.studio.footage(), stage.now)
        : ((lastcopy.scenario.Desk.Bytes) amount).bytes();
  }

  /** What a drive of the working shelf that is down keeps waiting on camera cards. */
  PositionSet waiting() {
    return waiting;
  }

  /** What waited goes to the working copy. */
  void again(PositionSet part) {
    stage.holdings.held[0].addAll(part);
    waiting.removeAll(part);
    stage.cards.waitNoMore(waiting);
  }

  /** Whether the working copy lacks anything that was ever offloaded and may be asked for. */
  boolean lacksSomething() {
    shoot.clear();
    shoot.add(stage.holdings.aged, total());
    shoot.removeAll(stage.holdings.held[0]);
    shoot.removeAll(stage.holdings.barred[0]);
    shoot.removeAll(stage.holdings.blocked);
    return !shoot.isEmpty();
  }

  /** A shoot is due, or several that waited for hardware. */
  @Override
  public void due(int index) {
    ShootTable shoots = stage.shoots;
    while (stage.offloaded < shoots.count() && shoots.time(stage.offloaded) <= stage.now) {
      int k = stage.offloaded++;
      shoot.clear();
      shoot.add(shoots.start(k), shoots.end(k));
      if (stage.spoils.is(0)) {
        stage.cards.offloaded(k);
        stage.rule.met(stage.spoils.causes(), Cause.Context.ALONE);
        stage.rule.removed(-1, shoot);
      } else {
        take(k);
      }
    }
    schedule();
    stage.feeds.wakeTargets(0, false);
  }

  private void take(int k) {
    Holdings holdings = stage.holdings;
    for (int i = 0; i < shoot.size(); i++) {
      holdings.held[0].add(shoot.from(i), shoot.to(i));
    }
    if (!holdings.barred[0].isEmpty()) {
      holdings.held[0].removeAll(holdings.barred[0]);
      shoot.removeAll(holdings.held[0]);
      waiting.addAll(shoot);
    }
    if (holdings.barred[0].isEmpty() || shoot.isEmpty()) {
      stage.cards.offloaded(k);
    } else {
      stage.cards.waits(k);
    }
  }

  void schedule() {
    if (stage.offloaded < stage.shoots.count()) {
      stage.set(plan.timer.offload(), Math.max(stage.now, stage.shoots.time(stage.offloaded)));
    }
  }

  /** The working copy takes shoots again. */
  void hardwareIsBack() {
    if (!stage.spoils.is(0)) {
      stage.holdings.held[0].addAll(waiting);
      waiting.clear();
      stage.cards.waitNoMore(waiting);
    }
    schedule();
  }
}
