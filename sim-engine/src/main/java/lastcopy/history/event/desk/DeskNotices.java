package lastcopy.history.event.desk;

import java.util.List;
import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.history.event.Common;
import lastcopy.history.event.Flows;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.feed.Feeds;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;

/** Damage of the desk is noticed and put back, or dropped by the copies that still kept it. */
public final class DeskNotices implements Mechanism {

  private final HistoryState state;
  private final LossRule rule;
  private final Narrator narrator;
  private final UnnoticedDamage unnoticed;
  private final Feeds feeds;
  private final Flows flows;
  private final Interruptions interruptions;

  /** What becomes of damage that nobody has noticed yet. */
  public DeskNotices(
      Common common,
      UnnoticedDamage unnoticed,
      Feeds feeds,
      Flows flows,
      Interruptions interruptions) {
    state = common.state();
    rule = common.rule();
    narrator = common.narrator();
    this.unnoticed = unnoticed;
    this.feeds = feeds;
    this.flows = flows;
    this.interruptions = interruptions;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  /** Somebody notices. */
  public void noticed(int index) {
    for (Damage damage : List.copyOf(unnoticed.all())) {
      if (damage.noticedAt <= state.now()) {
        unnoticed.remove(damage);
        unnoticed.settle();
        putBack(damage);
      }
    }
    unnoticed.settle();
  }

  private void putBack(Damage damage) {
    PositionSet found = found(damage);
    CopyState working = state.working();
    if (!working.isGone()) {
      found.removeAll(working.barred());
      found.removeAll(state.holdings().blocked());
      found.remove(0, state.holdings().aged());
      working.gains(found);
      flows.cannotTake(working, found); // a refill that was bringing it is the shorter
    }
    for (CopyState copy : state.copies()) {
      feeds.wakeTargets(copy, true); // each has again what it kept
    }
    double bytes = found.bytes();
    if (bytes > 0 && working.isUsable()) {
      interruptions.putBack(damage.causes, damage.at);
    }
    narrator.say(Happening.Kind.NOTICED, bytes, Double.NaN, damage.words);
  }

  /** What is left of it anywhere, once copies hold again what they kept of it. */
  private PositionSet found(Damage damage) {
    state.holdings().bringAllTo(state.now());
    PositionSet found = new PositionSet();
    for (CopyState copy : state.copies()) {
      copy.gains(damage.in(copy).kept);
      found.addAll(copy.held());
    }
    found.addAll(state.holdings().cards());
    found.retainAll(damage.block);
    return found;
  }

  /** A copy drops what it kept of a deletion. */
  public void dropped(int index) {
    for (Damage damage : unnoticed.all()) {
      for (CopyState copy : state.copies()) {
        Damage.Spread here = damage.in(copy);
        if (here.dropAt <= state.now() && !here.kept.isEmpty()) {
          drops(damage, copy);
        }
      }
    }
    unnoticed.settle();
  }

  private void drops(Damage damage, CopyState copy) {
    Damage.Spread here = damage.in(copy);
    if (!here.unusable) {
      rule.met(damage.causes, Cause.Context.LATE);
      rule.removed(here.kept);
      narrator.say(Happening.Kind.DROPPED, copy, here.kept.bytes(), Double.NaN, damage.words);
    }
    here.kept.clear();
  }
}
