package lastcopy.history.event;

import java.util.List;
import lastcopy.footage.PositionSet;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Audience;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.Flow;
import lastcopy.history.state.HistoryState;

/**
 * While every copy holds what the undisturbed course says, no offload, run, visit or card needs to
 * be simulated. A history leaves the course when something disturbs it, with the holdings of that
 * instant, and returns once all is as if nothing had happened but for what is lost.
 */
public final class CourseTracker {

  private final HistoryState state;
  private final Audience audience;
  private final Plan plan;
  private OffCourse[] mechanisms = {};
  private Disturbance[] disturbances = {};

  /** Nobody is told yet. */
  public CourseTracker(HistoryState state, Audience audience) {
    this.state = state;
    this.audience = audience;
    plan = state.plan();
  }

  /**
   * Tells those mechanisms that the layout has, in their order, to take up what they do, or to
   * rest, and asks those that may disturb it.
   */
  public void tells(List<Mechanism> all) {
    mechanisms =
        all.stream()
            .filter(OffCourse.class::isInstance)
            .map(OffCourse.class::cast)
            .filter(OffCourse::isUsed)
            .toArray(OffCourse[]::new);
    disturbances =
        all.stream()
            .filter(Disturbance.class::isInstance)
            .map(Disturbance.class::cast)
            .filter(Disturbance::mayDisturb)
            .toArray(Disturbance[]::new);
  }

  /** Starts at time 0, on the course if there is one and the working copy is not to be filled. */
  public void start() {
    if (state.course() != null && plan.copy(0).startsFull()) {
      state.onCourse(true);
      return;
    }
    for (CopyState copy : state.copies()) {
      copy.holds(state.startBytes(copy), state.lost());
    }
    takeUp();
  }

  private void takeUp() {
    for (OffCourse each : mechanisms) {
      each.takeUp();
    }
  }

  /** Something disturbs the course: from now on every event is simulated. */
  public void leave() {
    if (!state.onCourse()) {
      return;
    }
    state.onCourse(false);
    UndisturbedCourse course = state.course();
    course.moveTo(state.now(), false);
    for (CopyState copy : state.copies()) {
      double base = course.base(copy.index());
      copy.holds(base, state.lost());
      double to = course.flowTo(copy.index());
      if (to > base) {
        resumeRun(copy, base, to);
      }
      if (course.isLinked()) {
        copy.feed().firstFill(course.firstFilled(copy.index()) >= state.now());
      }
    }
    state.offloaded(state.shoots().shotBefore(state.now()));
    takeUp();
  }

  private void resumeRun(CopyState copy, double base, double to) {
    UndisturbedCourse course = state.course();
    double start = course.runStart(copy.index());
    if (course.isLinked()) {
      resumeLinked(copy, base, to);
    } else {
      double perHour = copy.plan().way().bytesPerHour();
      double hours = copy.receives(base, to, copy.plan().way().source(), perHour, start);
      state.clock().set(state.timers().runEnd(copy.index()), start + hours);
    }
    copy.bringTo(state.now());
  }

  /** What flows at changing rates, or is carried by hand. */
  private void resumeLinked(CopyState copy, double base, double to) {
    UndisturbedCourse course = state.course();
    int c = copy.index();
    double perHour = course.perHour(c);
    copy.receives(base, to, copy.plan().way().source(), perHour, course.since(c));
    copy.hasReceivedSince(course.runStart(c));
    double end = course.runEnd(c);
    if (perHour == 0 && end < Double.POSITIVE_INFINITY) {
      copy.receivesByHand(end); // what waits for an opening has no end yet
    }
    state.clock().set(state.timers().runEnd(c), end);
  }

  /** Back on the course, if all is as if nothing had happened. */
  public void enterIfOnCourse() {
    if (state.onCourse() || state.course() == null || !isAsIfUndisturbed()) {
      return;
    }
    state.onCourse(true);
    for (OffCourse each : mechanisms) {
      each.rest();
    }
  }

  private boolean isAsIfUndisturbed() {
    CopyState working = state.working();
    if (working.flow().isGoing() || working.isGone() || standsEmpty() || somethingIsWrong()) {
      return false;
    }
    state.course().moveTo(state.now(), true);
    if (lostWouldCount()) {
      return false;
    }
    for (CopyState copy : state.copies()) {
      if (!isOnCourse(copy)) {
        return false;
      }
    }
    return true;
  }

  private boolean isOnCourse(CopyState copy) {
    UndisturbedCourse course = state.course();
    Flow flow = copy.flow();
    int c = copy.index();
    double base = course.base(c);
    double to = Math.max(base, course.flowTo(c));
    boolean flows = to > base;
    boolean asItFlows =
        flows == flow.isGoing()
            && (!flows || (flow.start() == course.runStart(c) && flow.base() == base))
            && (!course.isLinked() || isLinkedAsOn(course, copy, flows));
    return asItFlows && state.holdings().isPrefix(copy, state.lost(), to);
  }

  private boolean isLinkedAsOn(UndisturbedCourse course, CopyState copy, boolean flows) {
    int c = copy.index();
    Flow flow = copy.flow();
    boolean sameRate =
        !flows
            || (flow.since() == course.since(c)
                && flow.perHour() == course.perHour(c)
                && (!flow.isByHand() || flow.arrives() == course.runEnd(c)));
    return sameRate && copy.feed().isFirstFill() == course.firstFilled(c) > state.now();
  }

  private boolean somethingIsWrong() {
    for (CopyState copy : state.copies()) {
      if (!copy.isUndisturbed()) {
        return true;
      }
    }
    for (Disturbance each : disturbances) {
      if (each.disturbs()) {
        return true;
      }
    }
    return false;
  }

  /** Whether the course would carry something, or call it bare, now or later, that is lost. */
  private boolean lostWouldCount() {
    PositionSet lost = state.lost();
    if (lost.isEmpty()) {
      return false;
    }
    double last = lost.to(lost.size() - 1);
    for (int c = 0; c < plan.copies(); c++) {
      if (last > state.course().base(c)) {
        return true; // a run to come, or going on, would carry it
      }
    }
    return audience.wantsTime() && !allIsBare() && last > state.course().lowestBare();
  }

  /** Whether all that counts stands in one copy only, always. */
  public boolean allIsBare() {
    return plan.copies() == 1
        && plan.cardHours() == 0
        && plan.keepHours() == Double.POSITIVE_INFINITY;
  }

  /** After a total loss, until the next shoot: the course would call that footage in one copy. */
  private boolean standsEmpty() {
    return !state.lost().isEmpty() && state.working().held().isEmpty();
  }
}
