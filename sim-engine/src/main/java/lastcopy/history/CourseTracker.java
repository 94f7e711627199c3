package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * While every copy holds what the undisturbed course says, no offload, run, visit or card needs to
 * be simulated. A history leaves the course when something disturbs it, with the holdings of that
 * instant, and returns once all is as if nothing had happened but for what is lost.
 */
final class CourseTracker {

  private final HistoryState state;
  private final Plan plan;
  private UndisturbedCourse course;
  private UndisturbedCourse recording;
  private boolean onCourse;

  CourseTracker(HistoryState state) {
    this.state = state;
    plan = state.plan;
  }

  void clear() {
    onCourse = false;
  }

  /** Whether the history is on the undisturbed course. */
  boolean onCourse() {
    return onCourse;
  }

  /** The undisturbed course, or null if histories are simulated event by event. */
  UndisturbedCourse course() {
    return course;
  }

  /** The first history that is played event by event without luck becomes the course. */
  void record() {
    recording = new UndisturbedCourse(plan.copies);
    state.ledger = null;
    state.timed = true;
    state.clear();
    start();
    state.play();
    recording.finish();
    course = recording;
    recording = null;
  }

  /** Starts at time 0, on the course if there is one. */
  void start() {
    if (course != null) {
      onCourse = true;
      return;
    }
    for (int c = 0; c < plan.copies; c++) {
      if (plan.copy[c].startsFull()) {
        state.holdings.held[c].add(0, state.shoots.onHand());
      }
    }
    state.ageing.takeUp();
    state.offloads.schedule();
    state.feeds.wakeAll();
    if (!plan.copy[0].startsFull()) {
      state.recovering[0] = true;
      state.refill.start();
    }
  }

  /** Something disturbs the course: from now on every event is simulated. */
  void leave() {
    if (!onCourse) {
      return;
    }
    onCourse = false;
    Holdings holdings = state.holdings;
    double now = state.now;
    int e = course.entry(now, false);
    for (int c = 0; c < plan.copies; c++) {
      double base = e < 0 ? startBytes(c) : course.base(e, c);
      holdings.held[c].clear();
      holdings.stop(c);
      holdings.held[c].add(0, base);
      holdings.held[c].removeAll(state.lost);
      double to = e < 0 ? 0 : course.flowTo(e, c);
      if (to > base) {
        resumeRun(c, base, to, course.runStart(e, c));
      }
    }
    state.offloaded = state.shoots.shotBefore(now);
    state.ageing.takeUp();
    state.cards.takeUp();
    state.offloads.schedule();
    state.feeds.wakeAll();
  }

  private double startBytes(int copy) {
    return plan.copy[copy].startsFull() ? state.shoots.onHand() : 0;
  }

  private void resumeRun(int copy, double base, double to, double start) {
    Plan.Way way = plan.ways[copy];
    Holdings holdings = state.holdings;
    holdings.flow[copy].add(base, to);
    double hours = holdings.begin(copy, way.source(), way.bytesPerHour(), start);
    state.set(plan.timer.runEnd(copy), start + hours);
    holdings.bringTo(copy, state.now);
  }

  /** Back on the course, if all is as if nothing had happened. */
  void enterIfOnCourse() {
    if (onCourse || course == null || !isAsIfUndisturbed()) {
      return;
    }
    onCourse = true;
    state.agenda.cancel(plan.timer.offload());
    state.cards.rest();
    state.ageing.rest();
    for (int c = 0; c < plan.copies; c++) {
      state.feeds.rest(c);
    }
  }

  private boolean isAsIfUndisturbed() {
    if (state.holdings.flowing[0] || state.gone[0] || standsEmpty() || mechanismsAreBusy()) {
      return false;
    }
    int e = course.entry(state.now, true);
    if (e < 0 || lostWouldCount(e)) {
      return false;
    }
    Holdings holdings = state.holdings;
    for (int c = 0; c < plan.copies; c++) {
      double base = course.base(e, c);
      double to = Math.max(base, course.flowTo(e, c));
      boolean flows = to > base;
      if (state.gone[c]
          || state.recovering[c]
          || flows != holdings.flowing[c]
          || (flows
              && (holdings.runStart[c] != course.runStart(e, c) || holdings.flowBase[c] != base))
          || !holdings.isPrefix(c, state.lost, to)) {
        return false;
      }
    }
    return true;
  }

  private boolean mechanismsAreBusy() {
    return state.desk.pending() > 0
        || state.feeds.stopped() > 0
        || state.spoils.any()
        || state.shelves.anyDown()
        || !state.feeds.visitsByTheClock()
        || !state.cards.onCourse();
  }

  /** Whether the course would carry something, or call it bare, now or later, that is lost. */
  private boolean lostWouldCount(int entry) {
    PositionSet lost = state.lost;
    if (lost.isEmpty()) {
      return false;
    }
    double last = lost.to(lost.size() - 1);
    for (int c = 0; c < plan.copies; c++) {
      if (last > course.base(entry, c)) {
        return true; // a run to come, or going on, would carry it
      }
    }
    return state.timed && !allIsBare() && last > course.lowestBare(entry);
  }

  /** Whether all that counts stands in one copy only, always. */
  boolean allIsBare() {
    return plan.copies == 1 && plan.cardHours == 0 && plan.keepHours == Double.POSITIVE_INFINITY;
  }

  /** After a total loss, until the next shoot: the course would call that footage in one copy. */
  private boolean standsEmpty() {
    return !state.lost.isEmpty() && state.holdings.held[0].isEmpty();
  }

  void recordInstant() {
    if (recording == null) {
      return;
    }
    Holdings holdings = state.holdings;
    holdings.bringAllTo(state.now);
    int e =
        recording.append(
            state.now,
            state.exposure.bareSoFar(),
            state.exposure.bareBytes(),
            holdings.lowestBare());
    for (int c = 0; c < plan.copies; c++) {
      PositionSet held = holdings.held[c];
      double carried = Math.max(holdings.aged, held.isEmpty() ? 0 : held.to(0));
      if (holdings.flowing[c]) {
        PositionSet flow = holdings.flow[c];
        recording.set(
            e,
            c,
            holdings.flowBase[c],
            flow.isEmpty() ? carried : flow.to(flow.size() - 1),
            holdings.runStart[c]);
      } else {
        recording.set(e, c, carried, 0, 0);
      }
    }
  }

  /** What a copy holds now, on the course. */
  double heldBytes(int copy) {
    double now = state.now;
    int e = course.entry(now, false);
    double carried = e < 0 ? startBytes(copy) : course.base(e, copy);
    if (e >= 0 && course.flowTo(e, copy) > carried) {
      carried =
          Math.min(
              course.flowTo(e, copy),
              carried + plan.ways[copy].bytesPerHour() * (now - course.runStart(e, copy)));
    }
    double aged = plan.shelf[copy] ? 0 : state.ageing.agedBy(now);
    double lost = 0;
    for (int i = 0; i < state.lost.size(); i++) {
      lost += Math.max(0, Math.min(state.lost.to(i), carried) - Math.max(state.lost.from(i), aged));
    }
    return Math.max(0, carried - aged - lost);
  }
}
