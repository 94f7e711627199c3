package lastcopy.history.event.copy;

import java.util.OptionalDouble;
import java.util.Set;
import lastcopy.history.event.Common;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Shocks;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.desk.DeskDamage;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.scenario.Delay;

/**
 * Copies that hold nothing usable and nobody knows, until a restore is tried or needed. What people
 * believe that such a copy holds decides what its feed sends, takes its time on the link and is
 * paid for; a working copy that is unusable is not refilled until that is found.
 */
public final class Spoiling implements Mechanism, TimerHandler, Shocks.Strike {

  private final Common common;
  private final HistoryState state;
  private final Feeds feeds;
  private final Flows flows;
  private final DeskDamage desk;
  private final Outages outages;

  /** Copies of a state that spoil. */
  public Spoiling(Common common, Feeds feeds, Flows flows, DeskDamage desk, Outages outages) {
    this.common = common;
    state = common.state();
    this.feeds = feeds;
    this.flows = flows;
    this.desk = desk;
    this.outages = outages;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  /** A copy becomes unusable. */
  @Override
  public void strikes(ShockProcess shock, int k) {
    CopyState copy = state.copy(shock.copies()[0]);
    if (!copy.isUsable()) {
      return;
    }
    common.tracker().leave();
    state.holdings().bringAllTo(state.now());
    cutFrom(copy);
    common.rule().struck(shock.causes());
    double bytes = copy.held().bytes();
    common.rule().removed(copy, copy.held());
    copy.spoils();
    desk.gone(copy);
    OptionalDouble tried = copy.plan().stated().spoils().orElseThrow().triedEveryHours();
    if (tried.isPresent()) {
      double wait = new Delay.Looks(tried.getAsDouble()).hoursUntilNext(state.now());
      state.clock().set(state.timers().tried(copy.index()), state.now() + wait);
    }
    common.narrator().say(Happening.Kind.SPOILT, copy, bytes, Double.NaN);
  }

  /** Nothing more is read from it; what is on its way to it goes on, as nobody knows. */
  private void cutFrom(CopyState copy) {
    if (state.working().flow().isFrom(copy.index())) {
      feeds.cut(state.working());
    }
    flows.cannotSend(copy, copy.held());
  }

  /** A restore is tried. */
  @Override
  public void due(int index) {
    CopyState copy = state.copy(index);
    found(copy);
    common.spending().isTried(copy);
  }

  /** An unusable copy is found, and counts as gone from now on. */
  void found(CopyState copy) {
    if (copy.isSpoilt()) {
      common.narrator().say(Happening.Kind.SPOIL_FOUND, copy, 0, Double.NaN);
      common.rule().met(state.plan().spoilCauses(copy.index()), Cause.Context.ALONE);
      outages.goes(copy);
    }
  }
}
