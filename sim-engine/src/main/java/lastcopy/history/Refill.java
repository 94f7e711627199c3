package lastcopy.history;

/** The refill of the working copy: from the copy that can do it fastest, then from the next. */
final class Refill {

  private final Stage stage;
  private final Plan plan;

  Refill(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
  }

  /** Copies may have gone or lost something that a refill was waiting for or reading. */
  void afterFailures() {
    if (!stage.calm.is() && stage.recovering[0] && !stage.holdings.flowing[0]) {
      start();
    }
  }

  /**
   * Starts, or goes on with the next source; unusable copies are found out when they are needed.
   */
  void start() {
    if (stage.spoils.is(0)) {
      return; // people believe that it is whole
    }
    int best = best();
    for (int spoilt = needed(best); spoilt > 0; spoilt = needed(best)) {
      stage.spoils.tried(spoilt);
    }
    if (best > 0 && stage.feeds.mustWait(best)) {
      stage.set(plan.timer.runEnd(0), stage.feeds.nextQuarter());
    } else if (best > 0) {
      stage.outages.comesBack();
      double hours = stage.holdings.start(0, best, plan.refillPerHour[0][best], stage.now);
      if (hours == 0) {
        start();
        return;
      }
      stage.say(
          Happening.Kind.REFILL_STARTED,
          0,
          -1,
          stage.holdings.flow[0].bytes(),
          stage.now + hours,
          plan.names[best]);
      stage.feeds.begun(0, hours, true);
    } else {
      if (stage.recovering[0]) {
        stage.recovering[0] = false;
        stage.outages.whole();
        stage.say(Happening.Kind.REFILLED, 0, -1, 0, Double.NaN);
      }
    }
  }

  private int best() {
    int best = -1;
    for (int c = 1; c < plan.copies; c++) {
      boolean faster = best < 0 || plan.refillPerHour[0][c] > plan.refillPerHour[0][best];
      if (!stage.gone[c] && faster && stage.holdings.hasMore(0, c, stage.now)) {
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
              ? stage.recovering[0] && stage.offloads.lacksSomething()
              : plan.refillPerHour[0][c] > plan.refillPerHour[0][best];
      if (stage.spoils.is(c) && first) {
        return c;
      }
    }
    return -1;
  }
}
