package lastcopy.history.event.desk;

import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.history.event.Common;
import lastcopy.history.event.Disturbance;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/**
 * What disappeared at the desk by {@link DeskStrikes}: it travels with the feeds, is kept by copies
 * for a while, and is put back if it is noticed in time ({@link DeskNotices}).
 */
public final class DeskDamage implements Mechanism, Feeds.Passenger, Disturbance, Resettable {

  private final Common common;
  private final HistoryState state;
  private final UnnoticedDamage unnoticed;
  private final Feeds feeds;
  private final Flows flows;
  private final PositionSet scratch = new PositionSet();

  /** Damage at the desk of a state. */
  public DeskDamage(Common common, UnnoticedDamage unnoticed, Feeds feeds, Flows flows) {
    this.common = common;
    state = common.state();
    this.unnoticed = unnoticed;
    this.feeds = feeds;
    this.flows = flows;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public void clear() {
    unnoticed.clear();
  }

  @Override
  public boolean mayDisturb() {
    return state.plan().hasAny(ShockProcess.Kind.DELETION)
        || state.plan().hasAny(ShockProcess.Kind.MALWARE);
  }

  @Override
  public boolean disturbs() {
    return unnoticed.count() > 0;
  }

  /** A deletion has reached a copy, which goes on holding the block for a while. */
  private void reach(Damage deletion, CopyState copy) {
    Damage.Spread here = deletion.in(copy);
    if (here.reached) {
      return;
    }
    take(deletion, copy);
    double bytes = here.kept.bytes();
    common
        .narrator()
        .say(Happening.Kind.DELETION_ARRIVED, copy, bytes, here.dropAt, deletion.words);
    spread(deletion, copy);
  }

  /** The block disappears from a copy, which may keep it aside. */
  void take(Damage deletion, CopyState copy) {
    Damage.Spread here = deletion.in(copy);
    here.reached = true;
    here.onItsWay = false;
    copy.bringTo(state.now()); // or what has crossed of the block by now would stay
    here.unusable = copy.isSpoilt();
    here.kept.copyFrom(copy.believed());
    here.kept.retainAll(deletion.block);
    copy.loses(deletion.block);
    flows.cannotSend(copy, deletion.block);
    flows.cannotTake(copy, deletion.block); // a continuous run drops what is deleted
    double keeps = copy.plan().keepsDeleted();
    here.dropAt = state.now() + keeps;
    if (keeps == 0) {
      dropsAll(copy, here);
    }
  }

  /** Continuous feeds pass a deletion on at once, others with their next run. */
  void spread(Damage deletion, CopyState source) {
    for (CopyState copy : state.copies()) {
      if (copy.plan().isFedFrom(source.index())
          && copy.plan().way().continuous()
          && state.mayFeed(copy)) {
        reach(deletion, copy);
      }
    }
    feeds.wakeTargets(source, true);
  }

  /** A run starts: what has reached its source is on its way with it. */
  @Override
  public void runStarts(CopyState copy) {
    for (Damage deletion : unnoticed.all()) {
      if (deletion.in(state.sourceOf(copy)).reached && !deletion.in(copy).reached) {
        deletion.in(copy).onItsWay = true;
      }
    }
    if (copy.plan().way().continuous()) {
      runEnded(copy); // a continuous feed passes it on at once
    }
  }

  /** A run has ended, or was cut: what was on its way with it has arrived. */
  @Override
  public void runEnded(CopyState copy) {
    boolean arrived = false;
    for (Damage deletion : unnoticed.all()) {
      if (deletion.in(copy).onItsWay) {
        common.rule().met(deletion.causes, Cause.Context.LATE);
        reach(deletion, copy);
        arrived = true;
      }
    }
    if (arrived) {
      unnoticed.settle();
    }
  }

  private void dropsAll(CopyState copy, Damage.Spread here) {
    if (!here.unusable) {
      common.rule().removed(copy, here.kept);
    }
    here.kept.clear();
  }

  /** A copy is gone with what it kept; what comes back has not been reached. */
  public void gone(CopyState copy) {
    for (Damage deletion : unnoticed.all()) {
      Damage.Spread here = deletion.in(copy);
      dropsAll(copy, here);
      here.onItsWay = false;
      here.reached &= copy.index() == 0;
    }
    if (unnoticed.count() > 0) {
      unnoticed.settle();
    }
  }

  /** A drive of a shelf is gone with what it kept. */
  public void cannotKeep(CopyState copy, double from, double to) {
    for (Damage deletion : unnoticed.all()) {
      Damage.Spread here = deletion.in(copy);
      scratch.copyFrom(here.kept);
      scratch.remove(0, from);
      scratch.remove(to, Double.POSITIVE_INFINITY);
      if (!here.unusable) {
        common.rule().removed(copy, scratch);
      }
      here.kept.remove(from, to);
    }
    if (unnoticed.count() > 0) {
      unnoticed.settle();
    }
  }
}
