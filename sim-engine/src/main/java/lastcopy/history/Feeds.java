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
   * A continuous feed, or a refill, behind a copy that is itself being fed starts what takes less
   * than a quarter of an hour at quarters by the clock: without a step it would start infinitely
   * often.
   */
  private static final Periodic QUARTERS = new Periodic(0, 0.25);

  private final HistoryState state;
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

  Feeds(HistoryState state) {
    this.state = state;
    plan = state.plan;
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
        && !state.gone[copy]
        && !state.spoils.is(copy)
        && !state.gone[plan.ways[copy].source()];
  }

  /** Whether a rotated drive stands at its source's place. */
  boolean visiting(int copy) {
    return state.tracker.onCourse() ? plan.visits[copy].goingOn(state.now) : visiting[copy];
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
    visiting[copy] = visits.goingOn(state.now);
    if (visiting[copy]) {
      state.set(plan.timer.visitEnd(copy), visits.lastBefore(state.now) + visits.hours());
    }
    state.set(plan.timer.runStart(copy), plan.ways[copy].dueFrom(state.now));
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
            && !state.holdings.flowing[copy]
            && (plan.ways[copy].continuous() || !state.agenda.isSet(plan.timer.runStart(copy)));
    if (idle && runs(copy)) {
      Plan.Way way = plan.ways[copy];
      double next = inclusive ? way.dueFrom(state.now) : way.dueAfter(state.now);
      state.set(plan.timer.runStart(copy), next);
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
    boolean behind = way.continuous() && state.holdings.flowing[way.source()];
    if (behind && mustWait(copy, way.source(), way.bytesPerHour())) {
      state.set(plan.timer.runStart(copy), nextQuarter());
      return;
    }
    state.desk.runStarts(copy);
    double hours = state.holdings.start(copy, way.source(), way.bytesPerHour(), state.now);
    if (state.recovering[copy] && !missingIsKnown[copy]) {
      missingIsKnown[copy] = true;
      missing[copy].copyFrom(state.holdings.flow[copy]);
    }
    if (hours > 0) {
      begun(copy, hours, state.recovering[copy]);
      wakeTargets(copy, true);
      return;
    }
    state.desk.runEnded(copy);
    filledAgain(copy);
    if (behind) {
      state.set(plan.timer.runStart(copy), nextQuarter());
    } else if (state.holdings.flowing[way.source()] && plan.visits[copy] == null) {
      state.set(plan.timer.runStart(copy), way.dueAfter(state.now));
    }
  }

  /** A copy that was gone has hardware again, all or some; the runs from now on bring it back. */
  void comesBack(int copy) {
    state.recovering[copy] = true;
    missingIsKnown[copy] = false;
  }

  /** A run has ended; whether the copy has what the first after its return was to bring. */
  private void filledAgain(int copy) {
    if (state.recovering[copy] && missingIsKnown[copy] && !lacks(copy)) {
      state.recovering[copy] = false;
      state.say(Happening.Kind.REFILLED, copy, -1, 0, Double.NaN);
    }
  }

  /** What nobody holds any more is not waited for, nor what is deleted and not noticed. */
  private boolean lacks(int copy) {
    Holdings holdings = state.holdings;
    PositionSet left = missing[copy];
    left.removeAll(holdings.held[copy]);
    left.removeAll(state.lost);
    left.remove(0, holdings.aged);
    scratch.copyFrom(left);
    scratch.removeAll(holdings.blocked);
    return !scratch.isEmpty();
  }

  /** Whether a flow that follows a copy which is itself being fed would be too short to start. */
  boolean mustWait(int target, int source, double bytesPerHour) {
    return QUARTERS.from(state.now) > state.now && trickles(target, source, bytesPerHour);
  }

  /** Whether a copy that is itself being fed has less than a quarter of an hour's worth. */
  boolean trickles(int target, int source, double bytesPerHour) {
    return state.holdings.flowing[source]
        && state.holdings.hours(target, source, bytesPerHour, state.now) < QUARTERS.every();
  }

  double nextQuarter() {
    return QUARTERS.after(state.now);
  }

  /** A turn of a rotation is due; whether the drive is brought. */
  private boolean visit(int copy, Plan.Way way) {
    state.set(plan.timer.runStart(copy), way.dueAfter(state.now));
    if (state.gone[copy] || state.gone[way.source()]) {
      if (plan.wornByAbsence) {
        state.clocks.skipVisit(copy);
      }
      return false;
    }
    visiting[copy] = true;
    state.set(plan.timer.visitEnd(copy), state.now + plan.visits[copy].hours());
    return true;
  }

  /** A flow has begun; as a refill it meets what its source hides. */
  void begun(int copy, double hours, boolean asRefill) {
    state.set(plan.timer.runEnd(copy), state.now + hours);
    refills[copy] = asRefill;
    if (asRefill) {
      Holdings holdings = state.holdings;
      began[copy].copyFrom(holdings.flow[copy]);
      if (copy != 0) { // what has been shot since the return began is brought as ever
        scratch.copyFrom(began[copy]);
        scratch.removeAll(missing[copy]);
        began[copy].removeAll(scratch);
      }
      if (bare(holdings.flowSource[copy])) {
        state.clips.defectsMetByRefill(holdings.flowSource[copy], began[copy]);
      }
    }
  }

  private boolean bare(int copy) {
    return state.down[copy] >= plan.survives[copy] && !plan.service[copy];
  }

  /** What a refill has read so far is paid for. */
  private void pay(int copy) {
    int source = state.holdings.flowSource[copy];
    if (refills[copy] && plan.readErrors[source] > 0 && bare(source)) {
      began[copy].removeAll(state.holdings.flow[copy]);
      int k = timesRead[copy]++;
      state.clips.readByRefill(source, copy, began[copy], k);
    }
    refills[copy] = false;
  }

  /** A run, or a refill of the working copy, has carried all. */
  void end(int copy) {
    state.holdings.arrive(copy);
    pay(copy);
    if (copy == 0) {
      state.refill.start();
    } else {
      state.desk.runEnded(copy);
      filledAgain(copy);
      Plan.Way way = plan.ways[copy];
      if (plan.visits[copy] == null) {
        double due = way.continuous() ? state.now : way.dueAfter(state.holdings.runStart[copy]);
        state.set(plan.timer.runStart(copy), Math.max(state.now, due));
      }
      if (!state.gone[0] && !state.holdings.flowing[0] && way.source() != 0) {
        state.refill.start();
      }
    }
    wakeTargets(copy, true);
  }

  /** A flow is cut; what has crossed stays. */
  void cut(int copy) {
    state.holdings.bringTo(copy, state.now);
    pay(copy);
    state.holdings.stop(copy);
    state.agenda.cancel(plan.timer.runEnd(copy));
    if (copy != 0) {
      state.desk.runEnded(copy);
      filledAgain(copy);
    }
    wakeTargets(copy, true);
  }

  /** A copy goes: flows to and from it are cut, and no run starts. */
  void cutBy(int copy) {
    Holdings holdings = state.holdings;
    for (int c = 0; c < plan.copies; c++) {
      if (holdings.flowing[c] && (c == copy || holdings.flowSource[c] == copy)) {
        cut(c);
      }
      boolean fedBy = plan.ways[c] != null && plan.ways[c].source() == copy;
      if ((c == copy || fedBy) && plan.visits[c] == null) {
        state.agenda.cancel(plan.timer.runStart(c));
      }
    }
    if (plan.visits[copy] != null) {
      visiting[copy] = false;
      state.agenda.cancel(plan.timer.visitEnd(copy));
    }
    if (copy == 0) {
      state.agenda.cancel(plan.timer.offload());
    }
  }

  /** A copy has lost some positions: what is on its way from it is the less. */
  void cannotSend(int source, PositionSet positions) {
    Holdings holdings = state.holdings;
    for (int c = 0; c < plan.copies; c++) {
      if (holdings.flowing[c] && holdings.flowSource[c] == source) {
        holdings.bringTo(c, state.now);
        holdings.flow[c].removeAll(positions);
        again(c);
      }
    }
  }

  /** What is lost does not arrive, though a run had it on its way. */
  void neverArrives(PositionSet positions) {
    for (int c = 0; c < plan.copies; c++) {
      if (state.holdings.flowing[c]) {
        state.holdings.bringTo(c, state.now);
        state.holdings.flow[c].removeAll(positions);
        again(c);
      }
    }
  }

  /** What a copy cannot take, or should not, leaves what is on its way to it. */
  void cannotTake(int copy, PositionSet positions) {
    if (state.holdings.flowing[copy]) {
      state.holdings.bringTo(copy, state.now);
      state.holdings.flow[copy].removeAll(positions);
      again(copy);
    }
  }

  /** A flow has become shorter. */
  void again(int copy) {
    state.set(plan.timer.runEnd(copy), state.now + state.holdings.hoursLeft(copy));
  }

  /** A visit is over: a run still going is cut and goes on at the next turn. */
  void visitEnds(int copy) {
    visiting[copy] = false;
    if (state.holdings.flowing[copy]) {
      cut(copy);
    }
  }

  /** A feed stops and nobody sees it. */
  void stops(int copy) {
    if (stopped[copy]) {
      return;
    }
    state.tracker.leave();
    stopped[copy] = true;
    stoppedCount++;
    if (state.holdings.flowing[copy]) {
      cut(copy);
    }
    if (plan.visits[copy] == null) {
      state.agenda.cancel(plan.timer.runStart(copy));
    }
    OptionalDouble checked = plan.copy[copy].feed().orElseThrow().checkedEveryHours();
    double look =
        checked.isPresent()
            ? state.now + state.untilLook(checked.getAsDouble())
            : Double.POSITIVE_INFINITY;
    state.set(plan.timer.looked(copy), look);
    state.say(Happening.Kind.FEED_STOPPED, copy, -1, 0, look);
  }

  /** Somebody looks whether a feed runs; one that had stopped goes on. */
  void looked(int copy) {
    stopped[copy] = false;
    stoppedCount--;
    state.say(Happening.Kind.FEED_SEEN, copy, -1, 0, Double.NaN);
    wake(copy, true);
  }

  /** Whether visits are as the clock says, just after now. */
  boolean visitsByTheClock() {
    for (int c = 0; c < plan.copies; c++) {
      Visits visits = plan.visits[c];
      if (visits != null && visiting[c] != visits.goingOn(visits.nextChange(state.now))) {
        return false;
      }
    }
    return true;
  }

  /** On the course nothing of a feed needs to be simulated. */
  void rest(int copy) {
    state.agenda.cancel(plan.timer.runStart(copy));
    state.agenda.cancel(plan.timer.runEnd(copy));
    state.agenda.cancel(plan.timer.visitEnd(copy));
  }
}
