package lastcopy.history;

import java.util.Arrays;
import java.util.OptionalDouble;
import lastcopy.footage.PositionSet;
import lastcopy.scenario.Periodic;

/**
 * Feeds: runs that are due by the clock or whenever there is something to copy, cut by failures,
 * stopped unseen, and the visits of rotated drives. Runs that bring back a copy that was gone pay
 * for unreadable spots as a refill does.
 */
final class Feeds implements Mechanism {

  /**
   * A continuous feed, or a refill, behind a copy that is itself being fed starts at quarters of an
   * hour by the clock: without a step it would start infinitely often.
   */
  private static final Periodic QUARTERS = new Periodic(0, 0.25);

  private final Stage stage;
  private final Plan plan;
  private final boolean[] stopped;
  private final boolean[] visiting;
  private final boolean[] refills;
  private final int[] timesRead;
  private final PositionSet[] began;

  /** What the first run after a return was to bring, once that run has begun. */
  private final PositionSet[] missing;

  private final boolean[] missingIsKnown;
  private final PositionSet scratch = new PositionSet();
  private int stoppedCount;

  Feeds(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    stopped = new boolean[plan.copies];
    visiting = new boolean[plan.copies];
    refills = new boolean[plan.copies];
    timesRead = new int[plan.copies];
    began = new PositionSet[plan.copies];
    missing = new PositionSet[plan.copies];
    missingIsKnown = new boolean[plan.copies];
    for (int c = 0; c < plan.copies; c++) {
      began[c] = new PositionSet();
      missing[c] = new PositionSet();
    }
  }

  void clear() {
    Arrays.fill(stopped, false);
    Arrays.fill(visiting, false);
    Arrays.fill(refills, false);
    Arrays.fill(timesRead, 0);
    stoppedCount = 0;
  }

  /** How many feeds have stopped and nobody has seen it. */
  int stopped() {
    return stoppedCount;
  }

  /** Whether a feed can run now. */
  boolean runs(int copy) {
    return !stopped[copy]
        && !stage.gone[copy]
        && !stage.spoils.is(copy)
        && !stage.gone[plan.ways[copy].source()];
  }

  /** Whether a rotated drive stands at its source's place. */
  boolean visiting(int copy) {
    return stage.calm.is() ? plan.visits[copy].goingOn(stage.now) : visiting[copy];
  }

  /** Where a copy stands now. */
  String placeOf(int copy) {
    boolean away = plan.visits[copy] != null && visiting(copy);
    return plan.copy[away ? plan.ways[copy].source() : copy].place().id();
  }

  /** Every feed may have work, from the start or from the course on. */
  void wakeAll() {
    for (int c = 1; c < plan.copies; c++) {
      if (plan.visits[c] != null) {
        takeUpVisits(c);
      } else {
        wake(c, true);
      }
    }
  }

  private void takeUpVisits(int copy) {
    Visits visits = plan.visits[copy];
    visiting[copy] = visits.goingOn(stage.now);
    if (visiting[copy]) {
      stage.set(plan.timer.visitEnd(copy), visits.lastBefore(stage.now) + visits.hours());
    }
    stage.set(plan.timer.runStart(copy), plan.ways[copy].dueFrom(stage.now));
  }

  void wakeTargets(int source, boolean inclusive) {
    for (int c = 1; c < plan.copies; c++) {
      if (plan.ways[c].source() == source) {
        wake(c, inclusive);
      }
    }
  }

  /** Arms the next run of a feed that stands idle; whether it has work is seen when it starts. */
  void wake(int copy, boolean inclusive) {
    boolean idle =
        plan.visits[copy] == null
            && !stage.holdings.flowing[copy]
            && (plan.ways[copy].continuous() || !stage.agenda.isSet(plan.timer.runStart(copy)));
    if (idle && runs(copy)) {
      Plan.Way way = plan.ways[copy];
      double next = inclusive ? way.dueFrom(stage.now) : way.dueAfter(stage.now);
      stage.set(plan.timer.runStart(copy), next);
    }
  }

  /** A run is due. */
  @Override
  public void due(int copy) {
    Plan.Way way = plan.ways[copy];
    if (plan.visits[copy] != null && !visit(copy, way)) {
      return;
    }
    if (!runs(copy)) {
      return;
    }
    boolean behind = way.continuous() && stage.holdings.flowing[way.source()];
    if (behind && mustWait(way.source())) {
      stage.set(plan.timer.runStart(copy), nextQuarter());
      return;
    }
    stage.desk.runStarts(copy);
    double hours = stage.holdings.start(copy, way.source(), way.bytesPerHour(), stage.now);
    if (stage.recovering[copy] && !missingIsKnown[copy]) {
      missingIsKnown[copy] = true;
      missing[copy].copyFrom(stage.holdings.flow[copy]);
    }
    if (hours > 0) {
      begun(copy, hours, stage.recovering[copy]);
      wakeTargets(copy, true);
      return;
    }
    stage.desk.runEnded(copy);
    filledAgain(copy);
    if (behind) {
      stage.set(plan.timer.runStart(copy), nextQuarter());
    } else if (stage.holdings.flowing[way.source()] && plan.visits[copy] == null) {
      stage.set(plan.timer.runStart(copy), way.dueAfter(stage.now));
    }
  }

  /** A copy that was gone has hardware again, all or some; the runs from now on bring it back. */
  void comesBack(int copy) {
    stage.recovering[copy] = true;
    missingIsKnown[copy] = false;
  }

  /** A run has ended; whether the copy has what the first after its return was to bring. */
  private void filledAgain(int copy) {
    if (stage.recovering[copy] && missingIsKnown[copy] && !lacks(copy)) {
      stage.recovering[copy] = false;
      stage.say(Happening.Kind.REFILLED, copy, -1, 0, Double.NaN);
    }
  }

  /** What nobody holds any more is not waited for, nor what is deleted and not noticed. */
  private boolean lacks(int copy) {
    Holdings holdings = stage.holdings;
    PositionSet left = missing[copy];
    left.removeAll(holdings.held[copy]);
    left.removeAll(stage.lost);
    left.remove(0, holdings.aged);
    scratch.copyFrom(left);
    scratch.removeAll(holdings.blocked);
    return !scratch.isEmpty();
  }

  /** Whether nothing starts now that follows a copy which is itself being fed. */
  boolean mustWait(int source) {
    return stage.holdings.flowing[source] && QUARTERS.from(stage.now) > stage.now;
  }

  double nextQuarter() {
    return QUARTERS.after(stage.now);
  }

  /** A turn of a rotation is due; whether the drive is brought. */
  private boolean visit(int copy, Plan.Way way) {
    stage.set(plan.timer.runStart(copy), way.dueAfter(stage.now));
    if (stage.gone[copy] || stage.gone[way.source()]) {
      if (plan.wornByAbsence) {
        stage.clocks.skipVisit(copy);
      }
      return false;
    }
    visiting[copy] = true;
    stage.set(plan.timer.visitEnd(copy), stage.now + plan.visits[copy].hours());
    return true;
  }

  /** A flow has begun; as a refill it meets what its source hides. */
  void begun(int copy, double hours, boolean asRefill) {
    stage.set(plan.timer.runEnd(copy), stage.now + hours);
    refills[copy] = asRefill;
    if (asRefill) {
      Holdings holdings = stage.holdings;
      began[copy].copyFrom(holdings.flow[copy]);
      if (copy != 0) { // what has been shot since the return began is brought as ever
        scratch.copyFrom(began[copy]);
        scratch.removeAll(missing[copy]);
        began[copy].removeAll(scratch);
      }
      if (bare(holdings.flowSource[copy])) {
        stage.clips.defectsMetByRefill(holdings.flowSource[copy], began[copy]);
      }
    }
  }

  private boolean bare(int copy) {
    return stage.down[copy] >= plan.survives[copy] && !plan.service[copy];
  }

  /** What a refill has read so far is paid for. */
  private void pay(int copy) {
    int source = stage.holdings.flowSource[copy];
    if (refills[copy] && plan.readErrors[source] > 0 && bare(source)) {
      began[copy].removeAll(stage.holdings.flow[copy]);
      int k = timesRead[copy]++;
      stage.clips.readByRefill(source, copy, began[copy], k);
    }
    refills[copy] = false;
  }

  /** A run, or a refill of the working copy, has carried all. */
  void end(int copy) {
    stage.holdings.arrive(copy);
    pay(copy);
    if (copy == 0) {
      stage.refill.start();
    } else {
      stage.desk.runEnded(copy);
      filledAgain(copy);
      Plan.Way way = plan.ways[copy];
      if (plan.visits[copy] == null) {
        double due = way.continuous() ? stage.now : way.dueAfter(stage.holdings.runStart[copy]);
        stage.set(plan.timer.runStart(copy), Math.max(stage.now, due));
      }
      if (!stage.gone[0] && !stage.holdings.flowing[0] && way.source() != 0) {
        stage.refill.start();
      }
    }
    wakeTargets(copy, true);
  }

  /** A flow is cut; what has crossed stays. */
  void cut(int copy) {
    stage.holdings.bringTo(copy, stage.now);
    pay(copy);
    stage.holdings.stop(copy);
    stage.agenda.cancel(plan.timer.runEnd(copy));
    if (copy != 0) {
      stage.desk.runEnded(copy);
      filledAgain(copy);
    }
    wakeTargets(copy, true);
  }

  /** A copy goes: flows to and from it are cut, and no run starts. */
  void cutBy(int copy) {
    Holdings holdings = stage.holdings;
    for (int c = 0; c < plan.copies; c++) {
      if (holdings.flowing[c] && (c == copy || holdings.flowSource[c] == copy)) {
        cut(c);
      }
      boolean fedBy = plan.ways[c] != null && plan.ways[c].source() == copy;
      if ((c == copy || fedBy) && plan.visits[c] == null) {
        stage.agenda.cancel(plan.timer.runStart(c));
      }
    }
    if (plan.visits[copy] != null) {
      visiting[copy] = false;
      stage.agenda.cancel(plan.timer.visitEnd(copy));
    }
    if (copy == 0) {
      stage.agenda.cancel(plan.timer.offload());
    }
  }

  /** A copy has lost some positions: what is on its way from it is the less. */
  void cannotSend(int source, PositionSet positions) {
    Holdings holdings = stage.holdings;
    for (int c = 0; c < plan.copies; c++) {
      if (holdings.flowing[c] && holdings.flowSource[c] == source) {
        holdings.bringTo(c, stage.now);
        holdings.flow[c].removeAll(positions);
        again(c);
      }
    }
  }

  /** What is lost does not arrive, though a run had it on its way. */
  void neverArrives(PositionSet positions) {
    for (int c = 0; c < plan.copies; c++) {
      if (stage.holdings.flowing[c]) {
        stage.holdings.bringTo(c, stage.now);
        stage.holdings.flow[c].removeAll(positions);
        again(c);
      }
    }
  }

  /** What a copy cannot take, or should not, leaves what is on its way to it. */
  void cannotTake(int copy, PositionSet positions) {
    if (stage.holdings.flowing[copy]) {
      stage.holdings.bringTo(copy, stage.now);
      stage.holdings.flow[copy].removeAll(positions);
      again(copy);
    }
  }

  /** A flow has become shorter. */
  void again(int copy) {
    stage.set(plan.timer.runEnd(copy), stage.now + stage.holdings.hoursLeft(copy));
  }

  /** A visit is over: a run still going is cut and goes on at the next turn. */
  void visitEnds(int copy) {
    visiting[copy] = false;
    if (stage.holdings.flowing[copy]) {
      cut(copy);
    }
  }

  /** A feed stops and nobody sees it. */
  void stops(int copy) {
    if (stopped[copy]) {
      return;
    }
    stage.calm.leave();
    stopped[copy] = true;
    stoppedCount++;
    if (stage.holdings.flowing[copy]) {
      cut(copy);
    }
    if (plan.visits[copy] == null) {
      stage.agenda.cancel(plan.timer.runStart(copy));
    }
    OptionalDouble checked = plan.copy[copy].feed().orElseThrow().checkedEveryHours();
    double look =
        checked.isPresent()
            ? stage.now + stage.untilLook(checked.getAsDouble())
            : Double.POSITIVE_INFINITY;
    stage.set(plan.timer.looked(copy), look);
    stage.say(Happening.Kind.FEED_STOPPED, copy, -1, 0, look);
  }

  /** Somebody looks whether a feed runs; one that had stopped goes on. */
  void looked(int copy) {
    stopped[copy] = false;
    stoppedCount--;
    stage.say(Happening.Kind.FEED_SEEN, copy, -1, 0, Double.NaN);
    wake(copy, true);
  }

  /** Whether visits are as the clock says, just after now. */
  boolean visitsByTheClock() {
    for (int c = 0; c < plan.copies; c++) {
      Visits visits = plan.visits[c];
      if (visits != null && visiting[c] != visits.goingOn(visits.nextChange(stage.now))) {
        return false;
      }
    }
    return true;
  }

  /** On the course nothing of a feed needs to be simulated. */
  void rest(int copy) {
    stage.agenda.cancel(plan.timer.runStart(copy));
    stage.agenda.cancel(plan.timer.runEnd(copy));
    stage.agenda.cancel(plan.timer.visitEnd(copy));
  }
}
