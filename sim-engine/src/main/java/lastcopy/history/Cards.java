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

  private final Stage stage;
  private final Plan plan;
  private final PositionSet part = new PositionSet();
  private int first;
  private double[] offloadedAt = new double[0];

  Cards(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
  }

  void clear() {
    first = 0;
  }

  private boolean used() {
    return plan.cardHours > 0;
  }

  private void room() {
    if (offloadedAt.length < stage.shoots.count()) {
      offloadedAt = new double[stage.shoots.count()];
    }
  }

  /** A shoot is offloaded; its cards are kept from now on. */
  void offloaded(int shoot) {
    if (!used()) {
      return;
    }
    room();
    offloadedAt[shoot] = stage.now;
    stage.holdings.cards.add(stage.shoots.start(shoot), stage.shoots.end(shoot));
    if (!stage.agenda.isSet(plan.timer.cardsExpired())) {
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
    for (int k = first; used() && k < stage.offloaded; k++) {
      if (offloadedAt[k] == Double.POSITIVE_INFINITY) {
        part.copyFrom(waiting);
        part.remove(0, stage.shoots.start(k));
        part.remove(stage.shoots.end(k), Double.POSITIVE_INFINITY);
        if (part.isEmpty()) {
          offloaded(k);
        }
      }
    }
  }

  private void schedule() {
    double next = Double.POSITIVE_INFINITY;
    for (int k = first; k < stage.offloaded; k++) {
      if (offloadedAt[k] != EXPIRED) {
        next = Math.min(next, offloadedAt[k] + plan.cardHours);
      }
    }
    stage.set(plan.timer.cardsExpired(), next);
  }

  /** The oldest cards are formatted. */
  @Override
  public void due(int index) {
    Holdings holdings = stage.holdings;
    for (int k = first; k < stage.offloaded; k++) {
      if (offloadedAt[k] != EXPIRED && offloadedAt[k] + plan.cardHours <= stage.now) {
        within(stage.shoots.start(k), stage.shoots.end(k));
        holdings.cards.removeAll(part);
        Map<Cause.Context, Cause> struck = stage.rule.lastOf(0); // it held them once
        stage.rule.met(struck == null ? plan.driveCauses : struck, Cause.Context.CARDS);
        stage.rule.removed(-1, part);
        offloadedAt[k] = EXPIRED;
        tell();
      }
    }
    while (first < stage.offloaded && offloadedAt[first] == EXPIRED) {
      first++;
    }
    schedule();
  }

  private void tell() {
    if (stage.witness != null) {
      stage.holdings.removeHeld(part);
      if (!part.isEmpty()) {
        stage.say(Happening.Kind.CARDS_EXPIRED, -1, -1, part.bytes(), Double.NaN);
      }
    }
  }

  private void within(double from, double to) {
    part.copyFrom(stage.holdings.cards);
    part.remove(0, from);
    part.remove(to, Double.POSITIVE_INFINITY);
  }

  /** A mishap of the place took them. */
  void destroyed() {
    stage.rule.removed(-1, stage.holdings.cards);
    stage.holdings.cards.clear();
  }

  /** What cards hold of some positions is offloaded again, in no time. */
  void offloadAgain(double from, double to) {
    if (used()) {
      Holdings holdings = stage.holdings;
      within(from, to);
      part.removeAll(holdings.blocked);
      part.removeAll(holdings.barred[0]);
      part.remove(0, holdings.aged);
      holdings.held[0].addAll(part);
      if (!part.isEmpty()) {
        stage.outages.comesBack();
      }
    }
  }

  /** From the undisturbed course on. */
  void takeUp() {
    if (used()) {
      room();
      ShootTable shoots = stage.shoots;
      first = shoots.shotAgo(plan.cardHours, stage.now);
      if (first > 0 && shoots.time(first - 1) + plan.cardHours == stage.now) {
        first--; // it expires at this instant, after what strikes
      }
      for (int k = first; k < stage.offloaded; k++) {
        offloadedAt[k] = shoots.time(k);
        stage.holdings.cards.add(shoots.start(k), shoots.end(k));
      }
      schedule();
    }
  }

  /** Whether cards hold what they would hold on the undisturbed course. */
  boolean onCourse() {
    PositionSet cards = stage.holdings.cards;
    ShootTable shoots = stage.shoots;
    if (!used() || stage.offloaded == 0) {
      return cards.isEmpty();
    }
    int from = shoots.shotAgo(plan.cardHours, stage.now);
    return from >= stage.offloaded
        ? cards.isEmpty()
        : cards.size() == 1
            && cards.from(0) == shoots.start(from)
            && cards.to(0) == shoots.end(stage.offloaded - 1)
            && noneWaited(from);
  }

  /** A shoot that waited for its offload keeps its cards for longer. */
  private boolean noneWaited(int from) {
    for (int k = from; k < stage.offloaded; k++) {
      if (offloadedAt[k] != stage.shoots.time(k)) {
        return false;
      }
    }
    return true;
  }

  /** On the course nothing of it needs to be simulated. */
  void rest() {
    stage.agenda.cancel(plan.timer.cardsExpired());
    stage.holdings.cards.clear();
  }
}
