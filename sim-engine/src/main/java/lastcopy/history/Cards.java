package lastcopy.history;

import java.util.Map;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;

/**
 * Camera cards, or a copy of them: they hold each shoot for a while after its offload, at the
 * working copy's place, out of reach of drive failures and malware.
 */
final class Cards implements Mechanism {

  private static final double EXPIRED = Double.NEGATIVE_INFINITY;

  private final HistoryState state;
  private final Plan plan;
  private final PositionSet part = new PositionSet();
  private int first;
  private double[] offloadedAt = new double[0];

  Cards(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  void clear() {
    first = 0;
  }

  private boolean used() {
    return plan.cardHours > 0;
  }

  private void room() {
    if (offloadedAt.length < state.shoots.count()) {
      offloadedAt = new double[state.shoots.count()];
    }
  }

  /** A shoot is offloaded; its cards are kept from now on. */
  void offloaded(int shoot) {
    if (!used()) {
      return;
    }
    room();
    offloadedAt[shoot] = state.now;
    state.holdings.cards.add(state.shoots.start(shoot), state.shoots.end(shoot));
    if (!state.agenda.isSet(plan.timer.cardsExpired())) {
      schedule();
    }
  }

  /** A shoot waits for a drive; its cards are safe and do not expire until it is offloaded. */
  void waits(int shoot) {
    if (used()) {
      room();
      offloadedAt[shoot] = Double.POSITIVE_INFINITY;
    }
  }

  /** Shoots of which nothing waits any more have been offloaded. */
  void waitNoMore(PositionSet waiting) {
    for (int k = first; used() && k < state.offloaded; k++) {
      if (offloadedAt[k] == Double.POSITIVE_INFINITY) {
        part.copyFrom(waiting);
        part.remove(0, state.shoots.start(k));
        part.remove(state.shoots.end(k), Double.POSITIVE_INFINITY);
        if (part.isEmpty()) {
          offloaded(k);
        }
      }
    }
  }

  private void schedule() {
    double next = Double.POSITIVE_INFINITY;
    for (int k = first; k < state.offloaded; k++) {
      if (offloadedAt[k] != EXPIRED) {
        next = Math.min(next, offloadedAt[k] + plan.cardHours);
      }
    }
    state.set(plan.timer.cardsExpired(), next);
  }

  /** The oldest cards are formatted. */
  @Override
  public void due(int index) {
    Holdings holdings = state.holdings;
    for (int k = first; k < state.offloaded; k++) {
      if (offloadedAt[k] != EXPIRED && offloadedAt[k] + plan.cardHours <= state.now) {
        within(state.shoots.start(k), state.shoots.end(k));
        holdings.cards.removeAll(part);
        Map<Cause.Context, Cause> struck = state.rule.lastOf(0); // it held them once
        state.rule.met(struck == null ? plan.driveCauses : struck, Cause.Context.CARDS);
        state.rule.removed(-1, part);
        offloadedAt[k] = EXPIRED;
        tell();
      }
    }
    while (first < state.offloaded && offloadedAt[first] == EXPIRED) {
      first++;
    }
    schedule();
  }

  private void tell() {
    if (state.listener != null) {
      state.holdings.removeHeld(part);
      if (!part.isEmpty()) {
        state.say(Happening.Kind.CARDS_EXPIRED, -1, -1, part.bytes(), Double.NaN);
      }
    }
  }

  private void within(double from, double to) {
    part.copyFrom(state.holdings.cards);
    part.remove(0, from);
    part.remove(to, Double.POSITIVE_INFINITY);
  }

  /** A mishap of the place took them. */
  void destroyed() {
    state.rule.removed(-1, state.holdings.cards);
    state.holdings.cards.clear();
  }

  /** What cards hold of some positions is offloaded again, in no time. */
  void offloadAgain(double from, double to) {
    if (used()) {
      Holdings holdings = state.holdings;
      within(from, to);
      part.removeAll(holdings.blocked);
      part.removeAll(holdings.barred[0]);
      part.remove(0, holdings.aged);
      holdings.held[0].addAll(part);
      if (!part.isEmpty()) {
        state.outages.comesBack();
      }
    }
  }

  /** From the undisturbed course on. */
  void takeUp() {
    if (used()) {
      room();
      ShootTable shoots = state.shoots;
      first = shoots.shotAgo(plan.cardHours, state.now);
      if (first > 0 && shoots.time(first - 1) + plan.cardHours == state.now) {
        first--; // it expires at this instant, after what strikes
      }
      for (int k = first; k < state.offloaded; k++) {
        offloadedAt[k] = shoots.time(k);
        state.holdings.cards.add(shoots.start(k), shoots.end(k));
      }
      schedule();
    }
  }

  /** Whether cards hold what they would hold on the undisturbed course. */
  boolean onCourse() {
    PositionSet cards = state.holdings.cards;
    ShootTable shoots = state.shoots;
    if (!used() || state.offloaded == 0) {
      return cards.isEmpty();
    }
    int from = shoots.shotAgo(plan.cardHours, state.now);
    return from >= state.offloaded
        ? cards.isEmpty()
        : cards.size() == 1
            && cards.from(0) == shoots.start(from)
            && cards.to(0) == shoots.end(state.offloaded - 1)
            && noneWaited(from);
  }

  /** A shoot that waited for its offload keeps its cards for longer. */
  private boolean noneWaited(int from) {
    for (int k = from; k < state.offloaded; k++) {
      if (offloadedAt[k] != state.shoots.time(k)) {
        return false;
      }
    }
    return true;
  }

  /** On the course nothing of it needs to be simulated. */
  void rest() {
    state.agenda.cancel(plan.timer.cardsExpired());
    state.holdings.cards.clear();
  }
}
