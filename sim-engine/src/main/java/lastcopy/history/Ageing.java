package lastcopy.history;

import lastcopy.footage.ShootTable;

/** Footage that has been kept for long enough: it leaves every copy except a shelf. */
final class Ageing implements Mechanism {

  private final HistoryState state;
  private final Plan plan;

  Ageing(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  private boolean used() {
    return plan.keepHours < Double.POSITIVE_INFINITY;
  }

  /** Positions below it have aged out by now. */
  double agedBy(double time) {
    if (!used() || time < plan.keepHours) {
      return 0;
    }
    ShootTable shoots = state.shoots;
    int k = shoots.shotAgo(plan.keepHours, time);
    return k == 0 ? shoots.onHand() : shoots.end(k - 1);
  }

  /** From a start, or from the undisturbed course, on. */
  void takeUp() {
    if (used()) {
      age();
    }
  }

  /** Some footage has been kept for long enough. */
  @Override
  public void due(int index) {
    age();
  }

  private void age() {
    Holdings holdings = state.holdings;
    holdings.aged = agedBy(state.now);
    for (int c = 0; c < plan.copies; c++) {
      if (!plan.shelf[c]) {
        holdings.bringTo(c, state.now);
        holdings.held[c].remove(0, holdings.aged);
        holdings.kept[c].remove(0, holdings.aged);
      }
      if (holdings.flowing[c]) {
        holdings.flow[c].remove(0, holdings.aged);
        state.feeds.again(c);
      }
    }
    holdings.cards.remove(0, holdings.aged);
    ShootTable shoots = state.shoots;
    int next = state.now < plan.keepHours ? -1 : shoots.shotAgo(plan.keepHours, state.now);
    if (next < 0) {
      state.set(plan.timer.aged(), plan.keepHours);
    } else if (next < shoots.count()) {
      state.set(plan.timer.aged(), shoots.time(next) + plan.keepHours);
    }
  }

  /** On the course nothing of it needs to be simulated. */
  void rest() {
    state.agenda.cancel(plan.timer.aged());
  }
}
