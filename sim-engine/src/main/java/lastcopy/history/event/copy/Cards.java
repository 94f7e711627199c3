package lastcopy.history.event.copy;

import java.util.Map;
import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;
import lastcopy.history.event.Common;
import lastcopy.history.event.Disturbance;
import lastcopy.history.event.Interruptions;
import lastcopy.history.event.LossRule;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.Resettable;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Happening;
import lastcopy.history.state.HistoryState;
import lastcopy.history.state.Holdings;

/**
 * Camera cards, or a copy of them: they hold each shoot for a while after its offload, at the
 * working copy's place, out of reach of drive failures and malware.
 */
public final class Cards implements Mechanism, TimerHandler, OffCourse, Disturbance, Resettable {

  private static final double EXPIRED = Double.NEGATIVE_INFINITY;

  private final HistoryState state;
  private final LossRule rule;
  private final Narrator narrator;
  private final Interruptions interruptions;
  private final double keepHours;
  private final PositionSet part = new PositionSet();
  private int first;
  private double[] offloadedAt = new double[0];

  /** The cards of a state's shoots. */
  public Cards(Common common, Interruptions interruptions) {
    state = common.state();
    rule = common.rule();
    narrator = common.narrator();
    this.interruptions = interruptions;
    keepHours = state.plan().cardHours();
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  @Override
  public void clear() {
    first = 0;
  }

  @Override
  public boolean isUsed() {
    return keepHours > 0;
  }

  @Override
  public boolean mayDisturb() {
    return isUsed();
  }

  private void room() {
    if (offloadedAt.length < state.shoots().count()) {
      offloadedAt = new double[state.shoots().count()];
    }
  }

  /** A shoot is offloaded; its cards are kept from now on. */
  void offloaded(int shoot) {
    if (!isUsed()) {
      return;
    }
    offloadedAt[shoot] = state.now();
    state.holdings().cards().add(state.shoots().start(shoot), state.shoots().end(shoot));
    if (!state.clock().isSet(state.timers().cardsExpired())) {
      schedule();
    }
  }

  private void schedule() {
    double next = Double.POSITIVE_INFINITY;
    for (int k = first; k < state.offloaded(); k++) {
      if (offloadedAt[k] != EXPIRED) {
        next = Math.min(next, offloadedAt[k] + keepHours);
      }
    }
    state.clock().set(state.timers().cardsExpired(), next);
  }

  /** The oldest cards are formatted. */
  @Override
  public void due(int index) {
    Holdings holdings = state.holdings();
    for (int k = first; k < state.offloaded(); k++) {
      if (offloadedAt[k] != EXPIRED && offloadedAt[k] + keepHours <= state.now()) {
        within(state.shoots().start(k), state.shoots().end(k));
        holdings.cards().removeAll(part);
        Map<Cause.Context, Cause> struck = rule.lastOfWorking(); // it held them once
        rule.met(struck == null ? state.plan().driveCauses() : struck, Cause.Context.CARDS);
        rule.removed(part);
        offloadedAt[k] = EXPIRED;
        tell();
      }
    }
    while (first < state.offloaded() && offloadedAt[first] == EXPIRED) {
      first++;
    }
    schedule();
  }

  private void tell() {
    if (narrator.isHeard()) {
      state.holdings().removeHeld(part);
      if (!part.isEmpty()) {
        narrator.say(Happening.Kind.CARDS_EXPIRED, part.bytes(), Double.NaN, "");
      }
    }
  }

  private void within(double from, double to) {
    part.copyFrom(state.holdings().cards());
    part.remove(0, from);
    part.remove(to, Double.POSITIVE_INFINITY);
  }

  /** A mishap of the place took them. */
  void destroyed() {
    rule.removed(state.holdings().cards());
    state.holdings().cards().clear();
  }

  /** What cards hold of some positions is offloaded again, in no time. */
  void offloadAgain(double from, double to) {
    if (isUsed()) {
      Holdings holdings = state.holdings();
      within(from, to);
      part.removeAll(holdings.blocked());
      part.removeAll(state.working().barred());
      part.remove(0, holdings.aged());
      state.working().gains(part);
      if (!part.isEmpty()) {
        interruptions.comesBack();
      }
    }
  }

  @Override
  public void takeUp() {
    if (isUsed()) {
      room();
      ShootTable shoots = state.shoots();
      first = shoots.shotAgo(keepHours, state.now());
      if (first > 0 && shoots.time(first - 1) + keepHours == state.now()) {
        first--; // it expires at this instant, after what strikes
      }
      for (int k = first; k < state.offloaded(); k++) {
        offloadedAt[k] = shoots.time(k);
        state.holdings().cards().add(shoots.start(k), shoots.end(k));
      }
      schedule();
    }
  }

  @Override
  public boolean disturbs() {
    return !areByTheClock();
  }

  private boolean areByTheClock() {
    PositionSet cards = state.holdings().cards();
    ShootTable shoots = state.shoots();
    if (!isUsed() || state.offloaded() == 0) {
      return cards.isEmpty();
    }
    int from = shoots.shotAgo(keepHours, state.now());
    return from >= state.offloaded()
        ? cards.isEmpty()
        : cards.size() == 1
            && cards.from(0) == shoots.start(from)
            && cards.to(0) == shoots.end(state.offloaded() - 1)
            && noneWaited(from);
  }

  /** A shoot that waited for its offload keeps its cards for longer. */
  private boolean noneWaited(int from) {
    for (int k = from; k < state.offloaded(); k++) {
      if (offloadedAt[k] != state.shoots().time(k)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void rest() {
    state.clock().cancel(state.timers().cardsExpired());
    state.holdings().cards().clear();
  }
}
