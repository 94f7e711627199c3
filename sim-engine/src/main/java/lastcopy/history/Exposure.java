package lastcopy.history;

/** How bare the footage stands while time passes: told to the ledger where time is wanted. */
final class Exposure {

  private final Stage stage;
  private final Plan plan;
  private double bareSoFar;

  Exposure(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
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
    if (stage.timed && until > stage.now) {
      if (stage.calm.is()) {
        calmPassed(stage.now, until, stage.lostBytes);
      } else {
        disturbedPassed(until);
      }
    }
    stage.now = until;
  }

  /** A stretch on the undisturbed course. */
  void calmPassed(double from, double to, double lostSoFar) {
    Course course = stage.calm.course();
    double bare = course.bareHours(to) - course.bareHours(from);
    double most = course.mostBare(from, to) - (stage.calm.allIsBare() ? lostSoFar : 0);
    boolean fragile = plan.shelf[0] || stage.down[0] == plan.survives[0];
    stage.ledger.passed(to - from, bare, fragile ? bare : 0, 0, 0, Math.max(0, most));
  }

  /** Bytes that stand in one copy only; 0 on the course, where it is not reckoned. */
  double bareBytes() {
    if (stage.calm.is()) {
      return 0;
    }
    double sum = stage.holdings.onlyOnCards();
    for (int c = 0; c < plan.copies; c++) {
      sum += stage.holdings.onlyIn(c);
    }
    return sum;
  }

  /** What happened exactly at the horizon counts in the most, as it does on the course. */
  void atTheEnd() {
    if (stage.timed && stage.ledger != null && !stage.calm.is()) {
      stage.holdings.bringAllTo(stage.now);
      stage.ledger.passed(0, 0, 0, 0, 0, bareBytes());
    }
  }

  private void disturbedPassed(double until) {
    Holdings holdings = stage.holdings;
    double from = stage.now;
    while (from < until) {
      stage.step(); // a source behind a flow may change by the second
      holdings.bringAllTo(from);
      double to = Math.min(until, from + Math.max(holdings.hoursOfOneKind(), 1e-6));
      onePassed(to - from);
      from = to;
      stage.now = from;
      if (from < until) {
        stage.calm.recordInstant();
      }
    }
  }

  private void onePassed(double hours) {
    double bare = stage.holdings.onlyOnCards();
    boolean fragile = false;
    for (int c = 0; c < plan.copies; c++) {
      double only = stage.holdings.onlyIn(c);
      bare += only;
      fragile |= only > 0 && (plan.shelf[c] || stage.down[c] == plan.survives[c]);
    }
    if (stage.ledger == null) {
      bareSoFar += bare > 0 ? hours : 0;
      return;
    }
    boolean away = stage.gone[0];
    stage.ledger.passed(
        hours,
        bare > 0 ? hours : 0,
        fragile ? hours : 0,
        away ? hours : 0,
        away || stage.holdings.flowing[0] ? hours : 0,
        bare);
  }
}
