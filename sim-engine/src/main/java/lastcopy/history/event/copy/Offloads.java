package lastcopy.history.event.copy;

import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.history.event.Common;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.report.Cause;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/**
 * Shoots: when they come, and what becomes of them where the working copy cannot take them. One
 * that meets a drive of a shelf that is down waits on its cards as a whole, and all that come after
 * it.
 */
public final class Offloads implements Mechanism, TimerHandler, OffCourse {

  private final HistoryState state;
  private final LossRule rule;
  private final Feeds feeds;
  private final Cards cards;
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
  public void takeUp() {
    schedule();
  }

  @Override
  public void rest() {
    state.clock().cancel(state.timers().offload());
  }

  /** Whether the working copy has the drives that the next shoot goes to. */
  boolean takesNext() {
    int next = state.offloaded();
    double from = state.offloadedBytes();
    double to = next < state.shoots().count() ? state.shoots().end(next) : from;
    return state.working().canTake(from, Math.max(to, Math.nextUp(from)));
  }

  /** Whether people believe that a copy holds some of what the working copy lacks. */
  boolean mayGive(CopyState copy) {
    double all = lacks();
    shoot.removeAll(copy.believed());
    return shoot.bytes() < all;
  }

  /** How many bytes people know that it lacks of what was ever offloaded and may be asked for. */
  double lacks() {
    shoot.clear();
    shoot.add(state.holdings().aged(), state.offloadedBytes());
    shoot.removeAll(state.working().believed());
    shoot.removeAll(state.working().barred());
    shoot.removeAll(state.holdings().blocked());
    return shoot.bytes();
  }

  /** A shoot is due, or several that waited for hardware. */
  @Override
  public void due(int index) {
    while (isNextDue() && takesNext()) {
      int k = state.offloaded();
      state.offloaded(k + 1);
      cards.offloaded(k);
      if (state.working().isSpoilt()) {
        shoot.clear();
        shoot.add(state.shoots().start(k), state.shoots().end(k));
        rule.met(state.plan().spoilCauses(0), Cause.Context.ALONE);
        rule.removed(shoot);
      }
      state.working().takes(state.shoots().start(k), state.shoots().end(k));
    }
    schedule();
    feeds.wakeTargets(state.working(), false);
  }

  private boolean isNextDue() {
    int next = state.offloaded();
    return next < state.shoots().count() && state.shoots().time(next) <= state.now();
  }

  private void schedule() {
    if (state.offloaded() < state.shoots().count() && (!isNextDue() || takesNext())) {
      double due = state.shoots().time(state.offloaded());
      state.clock().set(state.timers().offload(), Math.max(state.now(), due));
    }
  }

  /** The working copy takes shoots again. */
  void hardwareIsBack() {
    schedule();
  }
}
