package lastcopy.history.event.feed;

import java.util.OptionalDouble;
import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.CourseTracker;
import lastcopy.history.event.Disturbance;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.Shocks;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Delay;

/** Feeds that stop and nobody sees it, until somebody looks. */
public final class FeedStops
    implements Mechanism, TimerHandler, Shocks.Strike, Disturbance, Resettable {

  private final HistoryState state;
  private final CourseTracker tracker;
  private final Narrator narrator;
  private final Feeds feeds;
  private int stopped;

  /** Stops of a state's feeds. */
  public FeedStops(Common common, Feeds feeds) {
    state = common.state();
    tracker = common.tracker();
    narrator = common.narrator();
    this.feeds = feeds;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public void clear() {
    stopped = 0;
  }

  /** How many feeds have stopped and nobody has seen it. */
  public int count() {
    return stopped;
  }

  @Override
  public boolean mayDisturb() {
    return state.plan().hasAny(ShockProcess.Kind.STOP);
  }

  @Override
  public boolean disturbs() {
    return stopped > 0;
  }

  /** A feed stops and nobody sees it. */
  @Override
  public void strikes(ShockProcess shock, int k) {
    CopyState copy = state.copy(shock.copies()[0]);
    if (copy.feed().isStopped()) {
      return;
    }
    tracker.leave();
    copy.feed().stopped(true);
    stopped++;
    if (copy.flow().isGoing() && !copy.flow().isByHand()) {
      feeds.cut(copy);
    }
    if (!copy.plan().rotates()) {
      state.clock().cancel(state.timers().runStart(copy.index()));
    }
    double look = nextLook(copy);
    state.clock().set(state.timers().looked(copy.index()), look);
    narrator.say(Happening.Kind.FEED_STOPPED, copy, 0, look);
  }

  private double nextLook(CopyState copy) {
    OptionalDouble every = copy.plan().stated().feed().orElseThrow().checkedEveryHours();
    return every.isPresent()
        ? state.now() + new Delay.Looks(every.getAsDouble()).hoursUntilNext(state.now())
        : Double.POSITIVE_INFINITY;
  }

  /** Somebody looks whether a feed runs; one that had stopped goes on. */
  @Override
  public void due(int index) {
    CopyState copy = state.copy(index);
    copy.feed().stopped(false);
    stopped--;
    narrator.say(Happening.Kind.FEED_SEEN, copy, 0, Double.NaN);
    feeds.wake(copy, true);
  }
}
