package lastcopy.history.event.copy;

import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.event.CourseTracker;
import lastcopy.history.event.Spending;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Audience;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.HistoryState;
import lastcopy.history.state.Holdings;

/** How bare the footage stands while time passes: told to the ledger where time is wanted. */
public final class ExposureMeter {

  private static final double LEAST_STEP = 1e-6;

  private final HistoryState state;
  private final CourseTracker tracker;
  private final Audience audience;
  private final Spending spending;
  private final Runnable step;
  private final Runnable instant;

  /**
   * Tells an audience of the time that passes in a state.
   *
   * @param spending told what passes too
   * @param step run for each step of what may be long
   * @param instant run after each instant at which what stands in one copy changes in kind
   */
  public ExposureMeter(
      HistoryState state,
      CourseTracker tracker,
      Audience audience,
      Spending spending,
      Runnable step,
      Runnable instant) {
    this.state = state;
    this.tracker = tracker;
    this.audience = audience;
    this.spending = spending;
    this.step = step;
    this.instant = instant;
  }

  /** Time passes until an instant. */
  public void pass(double until) {
    if (audience.wantsTime() && until > state.now()) {
      if (state.onCourse()) {
        boolean fragile = state.working().isFragile();
        undisturbedPassed(state.now(), until, state.lostBytes(), fragile);
        spending.passed(state.now(), until);
      } else {
        disturbedPassed(until);
      }
    }
    state.clock().passTo(until);
  }

  /** A whole history in which nothing happens, of a course. */
  public void nothingHappens(UndisturbedCourse course) {
    Plan plan = state.plan();
    state.course(course);
    undisturbedPassed(0, plan.horizon(), 0, plan.copy(0).breaksIt() == 1);
  }

  /** A stretch on the undisturbed course. */
  private void undisturbedPassed(double from, double to, double lostSoFar, boolean fragile) {
    UndisturbedCourse course = state.course();
    double bare = course.bareHours(to) - course.bareHours(from);
    double most = course.mostBare(from, to) - (tracker.allIsBare() ? lostSoFar : 0);
    audience.ledger().passed(to - from, bare, fragile ? bare : 0, 0, 0, Math.max(0, most));
  }

  /** What happened exactly at the horizon counts in the most, as it does on the course. */
  public void atTheEnd() {
    if (audience.wantsTime() && !state.onCourse()) {
      state.holdings().bringAllTo(state.now());
      audience.ledger().passed(0, 0, 0, 0, 0, state.bareBytes());
    }
  }

  private void disturbedPassed(double until) {
    Holdings holdings = state.holdings();
    double from = state.now();
    while (from < until) {
      step.run(); // a source behind a flow may change by the second
      holdings.bringAllTo(from);
      double to = Math.min(until, from + Math.max(holdings.hoursOfOneKind(), LEAST_STEP));
      onePassed(to - from);
      spending.passed(from, to);
      from = to;
      state.clock().passTo(from);
      if (from < until) {
        instant.run();
      }
    }
  }

  private void onePassed(double hours) {
    double bare = state.holdings().onlyOnCards();
    boolean fragile = false;
    for (CopyState copy : state.copies()) {
      double only = state.holdings().onlyIn(copy);
      bare += only;
      fragile |= only > 0 && copy.isFragile();
    }
    boolean away = state.working().isGone();
    boolean refills = state.working().flow().isGoing();
    audience
        .ledger()
        .passed(
            hours,
            bare > 0 ? hours : 0,
            fragile ? hours : 0,
            away ? hours : 0,
            away || refills ? hours : 0,
            bare);
  }
}
