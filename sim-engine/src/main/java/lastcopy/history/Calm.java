package lastcopy.history;

import lastcopy.footage.PositionSet;

/**
 * Calm: while every copy holds what the undisturbed course says, no offload, run, visit or card
 * needs to be simulated. A history leaves the course when something disturbs it, with the holdings
 * of that instant, and returns once all is as if nothing had happened but for what is lost.
 */
final class Calm {

  private final Stage stage;
  private final Plan plan;
  private Course course;
  private Course recording;
  private boolean calm;

  Calm(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
  }

  void clear() {
    calm = false;
  }

  /** Whether the history is on the undisturbed course. */
  boolean is() {
    return calm;
  }

  /** The undisturbed course, or null if histories are simulated event by event. */
  Course course() {
    return course;
  }

  /** The first history that is played event by event without luck becomes the course. */
  void record() {
    recording = new Course(plan.copies);
    stage.ledger = null;
    stage.timed = true;
    stage.clear();
    start();
    stage.play();
    recording.finish();
    course = recording;
    recording = null;
  }

  /** Starts at time 0, on the course if there is one. */
  void start() {
    if (course != null) {
      calm = true;
      return;
    }
    for (int c = 0; c < plan.copies; c++) {
      if (plan.copy[c].startsFull()) {
        stage.holdings.held[c].add(0, stage.shoots.onHand());
      }
    }
    stage.ageing.takeUp();
    stage.offloads.schedule();
    stage.feeds.wakeAll();
    if (!plan.copy[0].startsFull()) {
      stage.recovering[0] = true;
      stage.refill.start();
    }
  }

  /** Something disturbs the course: from now on every event is simulated. */
  void leave() {
    if (!calm) {
      return;
    }
    calm = false;
    Holdings holdings = stage.holdings;
    double now = stage.now;
    int e = course.entry(now, false);
    for (int c = 0; c < plan.copies; c++) {
      double base = e < 0 ? startBytes(c) : course.base(e, c);
      holdings.held[c].clear();
      holdings.stop(c);
      holdings.held[c].add(0, base);
      holdings.held[c].removeAll(stage.lost);
      double to = e < 0 ? 0 : course.flowTo(e, c);
      if (to > base) {
        resumeRun(c, base, to, course.runStart(e, c));
      }
    }
    stage.offloaded = stage.shoots.shotBefore(now);
    stage.ageing.takeUp();
    stage.cards.takeUp();
    stage.offloads.schedule();
    stage.feeds.wakeAll();
  }

  private double startBytes(int copy) {
    return plan.copy[copy].startsFull() ? stage.shoots.onHand() : 0;
  }

  private void resumeRun(int copy, double base, double to, double start) {
    Plan.Way way = plan.ways[copy];
    Holdings holdings = stage.holdings;
    holdings.flow[copy].add(base, to);
    double hours = holdings.begin(copy, way.source(), way.bytesPerHour(), start);
    stage.set(plan.timer.runEnd(copy), start + hours);
    holdings.bringTo(copy, stage.now);
  }

  /** Back on the course, if all is as if nothing had happened. */
  void enterIfOnCourse() {
    if (calm || course == null || !onCourse()) {
      return;
    }
    calm = true;
    stage.agenda.cancel(plan.timer.offload());
    stage.cards.rest();
    stage.ageing.rest();
    for (int c = 0; c < plan.copies; c++) {
      stage.feeds.rest(c);
    }
  }

  private boolean onCourse() {
    if (stage.holdings.flowing[0] || stage.gone[0] || standsEmpty() || mechanismsAreBusy()) {
      return false;
    }
    int e = course.entry(stage.now, true);
    if (e < 0 || lostWouldCount(e)) {
      return false;
    }
    Holdings holdings = stage.holdings;
    for (int c = 0; c < plan.copies; c++) {
      double base = course.base(e, c);
      double to = Math.max(base, course.flowTo(e, c));
      boolean flows = to > base;
      if (stage.gone[c]
          || stage.recovering[c]
          || flows != holdings.flowing[c]
          || (flows
              && (holdings.runStart[c] != course.runStart(e, c) || holdings.flowBase[c] != base))
          || !holdings.isPrefix(c, stage.lost, to)) {
        return false;
      }
    }
    return true;
  }

  private boolean mechanismsAreBusy() {
    return stage.desk.pending() > 0
        || stage.feeds.stopped() > 0
        || stage.spoils.any()
        || stage.shelves.anyDown()
        || !stage.feeds.visitsByTheClock()
        || !stage.cards.onCourse();
  }

  /** Whether the course would carry something, or call it bare, now or later, that is lost. */
  private boolean lostWouldCount(int entry) {
    PositionSet lost = stage.lost;
    if (lost.isEmpty()) {
      return false;
    }
    double last = lost.to(lost.size() - 1);
    for (int c = 0; c < plan.copies; c++) {
      if (last > course.base(entry, c)) {
        return true; // a run to come, or going on, would carry it
      }
    }
    return stage.timed && !allIsBare() && last > course.lowestBare(entry);
  }

  /** Whether all that counts stands in one copy only, always. */
  boolean allIsBare() {
    return plan.copies == 1 && plan.cardHours == 0 && plan.keepHours == Double.POSITIVE_INFINITY;
  }

  /** After a total loss, until the next shoot: the course would call that footage in one copy. */
  private boolean standsEmpty() {
    return !stage.lost.isEmpty() && stage.holdings.held[0].isEmpty();
  }

  void recordInstant() {
    if (recording == null) {
      return;
    }
    Holdings holdings = stage.holdings;
    holdings.bringAllTo(stage.now);
    int e =
        recording.append(
            stage.now,
            stage.exposure.bareSoFar(),
            stage.exposure.bareBytes(),
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
    double now = stage.now;
    int e = course.entry(now, false);
    double carried = e < 0 ? startBytes(copy) : course.base(e, copy);
    if (e >= 0 && course.flowTo(e, copy) > carried) {
      carried =
          Math.min(
              course.flowTo(e, copy),
              carried + plan.ways[copy].bytesPerHour() * (now - course.runStart(e, copy)));
    }
    double aged = plan.shelf[copy] ? 0 : stage.ageing.agedBy(now);
    double lost = 0;
    for (int i = 0; i < stage.lost.size(); i++) {
      lost += Math.max(0, Math.min(stage.lost.to(i), carried) - Math.max(stage.lost.from(i), aged));
    }
    return Math.max(0, carried - aged - lost);
  }
}
