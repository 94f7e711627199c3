package lastcopy.history;

/** The refill of the working copy: from the copy that can do it fastest, then from the next. */
final class Refill {

  private final HistoryState state;
  private final Plan plan;

  Refill(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  /** Copies may have gone or lost something that a refill was waiting for or reading. */
  void afterFailures() {
    if (!state.tracker.onCourse() && state.recovering[0] && !state.holdings.flowing[0]) {
      start();
    }
  }

  /**
   * Starts, or goes on with the next source; unusable copies are found out when they are needed.
   */
  void start() {
    if (state.spoils.is(0)) {
      return; // people believe that it is whole
    }
    int best = best();
    for (int spoilt = needed(best); spoilt > 0; spoilt = needed(best)) {
      state.spoils.tried(spoilt);
    }
    if (best > 0 && state.feeds.mustWait(0, best, plan.refillPerHour[0][best])) {
      state.set(plan.timer.runEnd(0), state.feeds.nextQuarter());
    } else if (best > 0) {
      state.outages.comesBack();
      double hours = state.holdings.start(0, best, plan.refillPerHour[0][best], state.now);
      if (hours == 0) {
        start();
        return;
      }
      state.say(
          Happening.Kind.REFILL_STARTED,
          0,
          -1,
          state.holdings.flow[0].bytes(),
          state.now + hours,
          plan.names[best]);
      state.feeds.begun(0, hours, true);
    } else {
      if (state.recovering[0]) {
        state.recovering[0] = false;
        state.outages.whole();
        state.say(Happening.Kind.REFILLED, 0, -1, 0, Double.NaN);
      }
    }
  }

  /** The fastest; what trickles into one that is itself being fed waits until no other has more. */
  private int best() {
    int ready = best(false);
    return ready > 0 ? ready : best(true);
  }

  private int best(boolean trickles) {
    int best = -1;
    for (int c = 1; c < plan.copies; c++) {
      double rate = plan.refillPerHour[0][c];
      boolean faster = best < 0 || rate > plan.refillPerHour[0][best];
      if (!state.gone[c]
          && faster
          && state.holdings.hasMore(0, c, state.now)
          && (trickles || !state.feeds.trickles(0, c, rate))) {
        best = c;
      }
    }
    return best;
  }

  /** An unusable copy that people would turn to before the best one, or −1. */
  private int needed(int best) {
    for (int c = 1; c < plan.copies; c++) {
      boolean first =
          best < 0
              ? state.recovering[0] && state.offloads.lacksSomething()
              : plan.refillPerHour[0][c] > plan.refillPerHour[0][best];
      if (state.spoils.is(c) && first) {
        return c;
      }
    }
    return -1;
  }
}
