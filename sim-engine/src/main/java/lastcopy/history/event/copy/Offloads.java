package lastcopy.history.event.copy;

import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.footage.ShootTable;
import lastcopy.history.event.Common;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.report.Cause;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** Shoots: when they come, and what becomes of them where the working copy cannot take them. */
public final class Offloads implements Mechanism, TimerHandler, OffCourse, Resettable {

  private final HistoryState state;
  private final LossRule rule;
  private final Feeds feeds;
  private final Cards cards;
  private final PositionSet waiting = new PositionSet();
  private final PositionSet shoot = new PositionSet();

  /** Offloads to a state's working copy. */
  public Offloads(Common common, Feeds feeds, Cards cards) {
    state = common.state();
    rule = common.rule();
    this.feeds = feeds;
    this.cards = cards;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public void clear() {
    waiting.clear();
  }

  @Override
  public void takeUp() {
    schedule();
  }

  @Override
  public void rest() {
    state.clock().cancel(state.timers().offload());
  }

  /** What a drive of the working shelf that is down keeps waiting on camera cards. */
  Positions waiting() {
    return waiting;
  }

  /** What waited goes to the working copy. */
  void again(Positions part) {
    state.working().gains(part);
    waiting.removeAll(part);
    cards.waitNoMore(waiting);
  }

  /** Whether people believe that a copy holds some of what the working copy lacks. */
  boolean mayGive(CopyState copy) {
    double all = lacks();
    shoot.removeAll(copy.believed());
    return shoot.bytes() < all;
  }

  /** How many bytes it lacks of what was ever offloaded and may be asked for. */
  double lacks() {
    shoot.clear();
    shoot.add(state.holdings().aged(), state.offloadedBytes());
    shoot.removeAll(state.working().held());
    shoot.removeAll(state.working().barred());
    shoot.removeAll(state.holdings().blocked());
    return shoot.bytes();
  }

  /** A shoot is due, or several that waited for hardware. */
  @Override
  public void due(int index) {
    ShootTable shoots = state.shoots();
    while (state.offloaded() < shoots.count() && shoots.time(state.offloaded()) <= state.now()) {
      int k = state.offloaded();
      state.offloaded(k + 1);
      shoot.clear();
      shoot.add(shoots.start(k), shoots.end(k));
      if (state.working().isSpoilt()) {
        cards.offloaded(k);
        rule.met(state.plan().spoilCauses(0), Cause.Context.ALONE);
        rule.removed(shoot);
      } else {
        take(k, state.working());
      }
    }
    schedule();
    feeds.wakeTargets(state.working(), false);
  }

  private void take(int k, CopyState working) {
    for (int i = 0; i < shoot.size(); i++) {
      working.takes(shoot.from(i), shoot.to(i));
    }
    if (!working.barred().isEmpty()) {
      shoot.removeAll(working.held());
      waiting.addAll(shoot);
    }
    if (working.barred().isEmpty() || shoot.isEmpty()) {
      cards.offloaded(k);
    } else {
      cards.waits(k);
    }
  }

  private void schedule() {
    if (state.offloaded() < state.shoots().count()) {
      double due = state.shoots().time(state.offloaded());
      state.clock().set(state.timers().offload(), Math.max(state.now(), due));
    }
  }

  /** The working copy takes shoots again. */
  void hardwareIsBack() {
    if (!state.working().isSpoilt()) {
      state.working().gains(waiting);
      waiting.clear();
      cards.waitNoMore(waiting);
    }
    schedule();
  }
}
