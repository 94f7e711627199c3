package lastcopy.history;

/** How bare the footage stands while time passes: told to the ledger where time is wanted. */
final class Exposure {

  private final HistoryState state;
  private final Plan plan;
  private double bareSoFar;

  Exposure(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  void clear() {
    bareSoFar = 0;
  }

  /** Hours so far in which some footage was in one copy only, without luck. */
  double bareSoFar() {
    return bareSoFar;
  }

  /** Time passes until an instant. */
  void pass(double until) {
    if (state.timed && until > state.now) {
      if (state.tracker.onCourse()) {
        undisturbedPassed(state.now, until, state.lostBytes);
      } else {
        disturbedPassed(until);
      }
    }
    state.now = until;
  }

  /** A stretch on the undisturbed course. */
  void undisturbedPassed(double from, double to, double lostSoFar) {
    UndisturbedCourse course = state.tracker.course();
    double bare = course.bareHours(to) - course.bareHours(from);
    double most = course.mostBare(from, to) - (state.tracker.allIsBare() ? lostSoFar : 0);
    boolean fragile = plan.shelf[0] || state.down[0] == plan.survives[0];
    state.ledger.passed(to - from, bare, fragile ? bare : 0, 0, 0, Math.max(0, most));
  }

  /** Bytes that stand in one copy only; 0 on the course, where it is not reckoned. */
  double bareBytes() {
    if (state.tracker.onCourse()) {
      return 0;
    }
    double sum = state.holdings.onlyOnCards();
    for (int c = 0; c < plan.copies; c++) {
      sum += state.holdings.onlyIn(c);
    }
    return sum;
  }

  /** What happened exactly at the horizon counts in the most, as it does on the course. */
  void atTheEnd() {
    if (state.timed && state.ledger != null && !state.tracker.onCourse()) {
      state.holdings.bringAllTo(state.now);
      state.ledger.passed(0, 0, 0, 0, 0, bareBytes());
    }
  }

  private void disturbedPassed(double until) {
    Holdings holdings = state.holdings;
    double from = state.now;
    while (from < until) {
      state.step(); // a source behind a flow may change by the second
      holdings.bringAllTo(from);
      double to = Math.min(until, from + Math.max(holdings.hoursOfOneKind(), 1e-6));
      onePassed(to - from);
      from = to;
      state.now = from;
      if (from < until) {
        state.tracker.recordInstant();
      }
    }
  }

  private void onePassed(double hours) {
    double bare = state.holdings.onlyOnCards();
    boolean fragile = false;
    for (int c = 0; c < plan.copies; c++) {
      double only = state.holdings.onlyIn(c);
      bare += only;
      fragile |= only > 0 && (plan.shelf[c] || state.down[c] == plan.survives[c]);
    }
    if (state.ledger == null) {
      bareSoFar += bare > 0 ? hours : 0;
      return;
    }
    boolean away = state.gone[0];
    state.ledger.passed(
        hours,
        bare > 0 ? hours : 0,
        fragile ? hours : 0,
        away ? hours : 0,
        away || state.holdings.flowing[0] ? hours : 0,
        bare);
  }
}
