package lastcopy.history;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;
import lastcopy.kernel.Agenda;
import lastcopy.law.Law;
import lastcopy.random.SourceKey;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Delay;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;

/**
 * One simulated history after another of one layout; the number of a history decides it.
 *
 * <p>Two paths. First failures and first mishaps are compared with limits computed once; if none
 * falls within the horizon the history is done. Otherwise what happens is simulated event by event.
 * While every copy holds what the undisturbed course says (it is <em>calm</em>), no offload and no
 * feed run is simulated; when a copy goes, holdings are taken from the course at that instant.
 *
 * <p>Choices where the model leaves room: a mishap of a place or box destroys the drives, so that
 * all are new at the return, while drives that had not failed when a set lost one too many stay in
 * use; the working copy starts full; a continuous feed behind a copy that is itself being fed
 * starts when that run ends; shoots that wait on cards do not count as standing in one copy, since
 * they are not offloaded. One object is used by one thread.
 */
public final class History {

  private static final int UP = 0;
  private static final int DOWN = 1;
  private static final int ORDERED = 2;
  private static final int FAILED = 3;

  private final Plan plan;
  private final Course course;
  private final Draws draws;
  private final Agenda agenda;
  private final Holdings holdings;
  private final int[] slotState;
  private final int[] generation;
  private final int[] failures;
  private final int[] down;
  private final boolean[] gone;
  private final boolean[] wentNow;
  private final boolean[] recovering;
  private final int[] timesGone;
  private final int[] strikeCount;
  private final PositionSet removed = new PositionSet();
  private final PositionSet lost = new PositionSet();
  private ShootTable shoots;
  private Ledger ledger;
  private boolean calm;
  private boolean timed;
  private double now;
  private int offloaded;
  private double lostBytes;
  private Map<Cause.Context, Cause> striking;
  private boolean setWasDegraded;
  private double bareSoFar;
  private Course recording;
  private Witness witness;

  /** Histories of a layout under a seed. */
  public History(Studio studio, Layout layout, long seed) {
    this(studio, layout, seed, true);
  }

  /**
   * Checks that a layout of a studio can be simulated.
   *
   * @throws UnsupportedOperationException if it uses a part of the model that is not built, with a
   *     sentence that says which
   */
  public static void check(Studio studio, Layout layout) {
    NotBuilt.refuse(studio, layout);
  }

  /** Without the course every history is simulated event by event, from the start. */
  History(Studio studio, Layout layout, long seed, boolean byCourse) {
    plan = Plan.of(studio, layout);
    draws = new Draws(seed);
    agenda = new Agenda(plan.timers);
    holdings = new Holdings(plan.copies);
    slotState = new int[plan.slots];
    generation = new int[plan.slots];
    failures = new int[plan.slots];
    down = new int[plan.copies];
    gone = new boolean[plan.copies];
    wentNow = new boolean[plan.copies];
    recovering = new boolean[plan.copies];
    timesGone = new int[plan.copies];
    strikeCount = new int[plan.strikes.length];
    course = byCourse && plan.evenShoots ? record() : null;
  }

  /**
   * Simulates one history.
   *
   * @param number its number, at least 0
   * @param to told what happens
   */
  public void simulate(long number, Ledger to) {
    draws.start(number);
    ledger = to;
    timed = to.wantsTime();
    if (!somethingMayHappen()) {
      if (!timed) {
        return;
      }
      if (course != null) {
        Arrays.fill(down, 0);
        calmPassed(0, plan.horizon, 0);
        return;
      }
    }
    simulateEvents();
  }

  /** The names of the copies, in the order that happenings and scenes count them. */
  public List<String> copyNames() {
    return plan.layout.copies().stream().map(Copy::id).toList();
  }

  /**
   * Tells one history from its start to the horizon: the very history that {@link #simulate} counts
   * under that number.
   *
   * @param number its number, at least 0
   * @param to told everything that happens
   */
  public void tell(long number, Witness to) {
    draws.start(number);
    witness = to;
    ledger = Silent.LEDGER;
    timed = false;
    simulateEvents();
    witness = null;
  }

  private void say(Happening.Kind kind, int copy, int drive, double bytes, double until) {
    say(kind, copy, drive, bytes, until, "");
  }

  private void say(
      Happening.Kind kind, int copy, int drive, double bytes, double until, String subject) {
    if (witness == null) {
      return;
    }
    double[] held = new double[plan.copies];
    for (int c = 0; c < plan.copies; c++) {
      held[c] = gone[c] ? 0 : heldBytes(c);
    }
    witness.saw(
        new Happening(kind, now, copy, drive, bytes, until, subject),
        new Scene(
            shoots.total(now),
            lostBytes,
            held,
            gone.clone(),
            down.clone(),
            calm ? 0 : bareBytes(),
            1));
  }

  private boolean somethingMayHappen() {
    for (int s = 0; s < plan.slots; s++) {
      if (draws.uniform(plan.firstLifeKey[s]) >= plan.lifeLimit[s]) {
        return true;
      }
    }
    for (int i = 0; i < plan.strikes.length; i++) {
      if (draws.uniform(plan.firstStrikeKey[i]) >= plan.strikeLimit[i]) {
        return true;
      }
    }
    return false;
  }

  private void simulateEvents() {
    reset();
    for (int s = 0; s < plan.slots; s++) {
      double age = draws.remaining(plan.age[s], 0, Draws.key(plan.slotSource[s], Draws.AGE, 0));
      scheduleFailure(s, 0, age);
    }
    for (int i = 0; i < plan.strikes.length; i++) {
      scheduleStrike(i, 0);
    }
    if (course != null) {
      calm = true;
    } else {
      shoots = plan.evenShoots ? plan.shoots : randomShoots();
      startFromZero();
    }
    say(Happening.Kind.START, -1, -1, 0, plan.horizon);
    play();
    say(Happening.Kind.END, -1, -1, 0, Double.NaN);
  }

  /** The undisturbed history, event by event, which becomes the course. */
  private Course record() {
    recording = new Course(plan.copies);
    ledger = null;
    timed = true;
    reset();
    startFromZero();
    play();
    Course recorded = recording;
    recording = null;
    return recorded;
  }

  private void reset() {
    agenda.clear();
    holdings.clear();
    lost.clear();
    Arrays.fill(slotState, UP);
    Arrays.fill(generation, 0);
    Arrays.fill(failures, 0);
    Arrays.fill(down, 0);
    Arrays.fill(gone, false);
    Arrays.fill(recovering, false);
    Arrays.fill(timesGone, 0);
    Arrays.fill(strikeCount, 0);
    shoots = plan.shoots;
    calm = false;
    now = 0;
    offloaded = 0;
    lostBytes = 0;
    bareSoFar = 0;
  }

  private ShootTable randomShoots() {
    double mean = plan.studio.footage().shoots().everyHours();
    long source = SourceKey.of("shoot");
    double[] times = new double[16];
    int n = 0;
    double at = draws.untilNext(1 / mean, SourceKey.with(source, 0));
    while (at <= plan.horizon) {
      if (n == times.length) {
        times = Arrays.copyOf(times, 2 * n);
      }
      times[n++] = at;
      at += draws.untilNext(1 / mean, SourceKey.with(source, n));
    }
    return ShootTable.at(plan.studio.footage(), Arrays.copyOf(times, n));
  }

  private void startFromZero() {
    for (int c = 0; c < plan.copies; c++) {
      if (c == 0 || plan.layout.copies().get(c).startsFull()) {
        holdings.held[c].add(0, shoots.onHand());
      }
    }
    scheduleOffload();
    for (int c = 1; c < plan.copies; c++) {
      wake(c, true);
    }
  }

  /** The clock: takes what is due, in the order at one instant, up to and at the horizon. */
  private void play() {
    recordInstant();
    int timer = agenda.peek();
    while (timer != Agenda.NONE && agenda.time(timer) <= plan.horizon) {
      double at = agenda.time(timer);
      pass(at);
      if (agenda.rank(timer) == 0) {
        failuresAt(at);
      } else {
        agenda.cancel(timer);
        handle(timer);
      }
      timer = agenda.peek();
      if (timer == Agenda.NONE || agenda.time(timer) > now) {
        recordInstant();
        calmIfOnCourse();
      }
    }
    pass(plan.horizon);
  }

  private void handle(int timer) {
    if (timer == plan.offloadTimer()) {
      offload();
    } else if (timer >= plan.runStartTimer(0)) {
      startRun(timer - plan.runStartTimer(0));
    } else if (timer >= plan.runEndTimer(0)) {
      endRun(timer - plan.runEndTimer(0));
    } else if (timer >= plan.returnTimer(0)) {
      comeBack(timer - plan.returnTimer(0));
    } else {
      repaired(timer - plan.repairTimer(0));
    }
  }

  // Failures and mishaps; footage is declared lost once all of one instant have struck.

  private void failuresAt(double at) {
    removed.clear();
    Arrays.fill(wentNow, false);
    striking = null;
    setWasDegraded = false;
    for (int timer = agenda.peek();
        timer != Agenda.NONE && agenda.time(timer) == at && agenda.rank(timer) == 0;
        timer = agenda.peek()) {
      agenda.cancel(timer);
      if (timer < plan.slots) {
        driveFails(timer);
      } else {
        strike(timer - plan.slots);
      }
    }
    declareLost();
    if (!calm && recovering[0] && !holdings.flowing[0]) {
      refill();
    }
  }

  private void driveFails(int slot) {
    int copy = plan.copyOfSlot[slot];
    if (gone[copy]) {
      slotState[slot] = FAILED;
      return;
    }
    slotState[slot] = DOWN;
    down[copy]++;
    if (down[copy] > plan.survives[copy]) {
      setWasDegraded = down[copy] > 1;
      slotState[slot] = FAILED;
      goes(copy, plan.service[copy] ? plan.serviceCauses : plan.driveCauses);
    } else {
      scheduleRepair(slot, copy);
      say(
          Happening.Kind.DRIVE_FAILED,
          copy,
          slot - plan.firstSlot[copy],
          0,
          agenda.time(plan.repairTimer(slot)));
    }
  }

  private void strike(int index) {
    Plan.Strike strike = plan.strikes[index];
    int k = strikeCount[index]++;
    for (int i = 0; i < strike.copies().length; i++) {
      int copy = strike.copies()[i];
      boolean hit =
          strike.takes() >= 1
              || draws.uniform(Draws.key(strike.takesKeys()[i], Draws.TAKES, k)) <= strike.takes();
      if (hit && !gone[copy]) {
        setWasDegraded = false;
        destroyDrives(copy);
        goes(copy, strike.causes());
      }
    }
    scheduleStrike(index, now);
  }

  private void destroyDrives(int copy) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      agenda.cancel(s);
      slotState[s] = FAILED;
    }
  }

  /** A copy is gone: its holdings are empty, its repairs dropped, its feeds cut. */
  private void goes(int copy, Map<Cause.Context, Cause> causes) {
    leaveCalm();
    holdings.bringAllTo(now);
    removed.addAll(holdings.held[copy]);
    holdings.held[copy].clear();
    wentNow[copy] = true;
    gone[copy] = true;
    recovering[copy] = false;
    striking = causes;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      agenda.cancel(plan.repairTimer(s));
      if (slotState[s] != UP) {
        slotState[s] = FAILED;
      }
    }
    cutWays(copy);
    int k = timesGone[copy]++;
    var repair = plan.layout.copies().get(copy).repair();
    double seen =
        delay(repair.goneNoticed(), Draws.key(plan.copySource[copy], Draws.GONE_NOTICED, k));
    double wait =
        draws.remaining(
            repair.arrival(), 0, Draws.key(plan.copySource[copy], Draws.GONE_ARRIVAL, k));
    set(plan.returnTimer(copy), now + seen + wait);
    say(Happening.Kind.COPY_GONE, copy, -1, removed.bytes(), now + seen + wait);
  }

  private void cutWays(int copy) {
    for (int c = 0; c < plan.copies; c++) {
      boolean fedBy = plan.ways[c] != null && plan.ways[c].source() == copy;
      boolean flowsFrom = holdings.flowing[c] && holdings.flowSource[c] == copy;
      if (c == copy || flowsFrom) {
        holdings.stop(c);
        agenda.cancel(plan.runEndTimer(c));
      }
      if (c == copy || fedBy) {
        agenda.cancel(plan.runStartTimer(c));
      }
    }
    if (copy == 0) {
      agenda.cancel(plan.offloadTimer());
    }
  }

  /** The loss rule: what was held and is now held by no copy is lost, at this instant. */
  private void declareLost() {
    if (removed.isEmpty()) {
      return;
    }
    holdings.removeHeld(removed);
    if (removed.isEmpty()) {
      return;
    }
    double bytes = removed.bytes();
    double count = 0;
    int hit = 0;
    int lastUnit = -1;
    for (int i = 0; i < removed.size(); i++) {
      count += shoots.inShoots(removed.to(i)) - shoots.inShoots(removed.from(i));
      int first = shoots.unitOf(removed.from(i));
      int last = shoots.unitOf(Math.nextDown(removed.to(i)));
      hit += last - Math.max(first, lastUnit + 1) + 1;
      lastUnit = last;
    }
    lost.addAll(removed);
    lostBytes += bytes;
    Cause cause = striking.get(context());
    ledger.lost(new Loss(now, bytes, count, hit, holdings.allEmpty(), cause, 1));
    say(Happening.Kind.LOST, -1, -1, bytes, Double.NaN, cause.sentence());
  }

  private Cause.Context context() {
    if (setWasDegraded) {
      return Cause.Context.REBUILD;
    }
    boolean othersStand = false;
    for (int c = 0; c < plan.copies; c++) {
      if (!wentNow[c] && (gone[c] || recovering[c])) {
        return Cause.Context.AWAY;
      }
      othersStand |= !wentNow[c];
    }
    if (!othersStand) {
      return Cause.Context.ALONE;
    }
    double oldest = removed.from(0);
    double shot = oldest < shoots.onHand() ? 0 : shoots.time(shoots.shootOf(oldest));
    return Cause.Context.behind(now - shot);
  }

  // Repair of a set that survives, and the return of a copy that is gone.

  private void scheduleRepair(int slot, int copy) {
    int k = failures[slot]++;
    long source = plan.slotSource[slot];
    var spec = plan.layout.copies().get(copy);
    double ready =
        now
            + delay(spec.repair().noticed(), Draws.key(source, Draws.NOTICED, k))
            + draws.remaining(spec.repair().arrival(), 0, Draws.key(source, Draws.ARRIVAL, k));
    Rebuild rebuild = ((Medium.DriveSet) spec.medium()).rebuild();
    if (rebuild.time() instanceof Rebuild.ByLaw byLaw) {
      Law law = byLaw.law();
      set(
          plan.repairTimer(slot),
          ready + draws.remaining(law, 0, Draws.key(source, Draws.REBUILD, k)));
    } else if (rebuild.reads() == Rebuild.Reads.ALL) {
      set(plan.repairTimer(slot), ready + plan.wholeRebuildHours(copy));
    } else {
      slotState[slot] = ORDERED;
      set(plan.repairTimer(slot), ready);
    }
  }

  private void repaired(int slot) {
    int copy = plan.copyOfSlot[slot];
    if (slotState[slot] == ORDERED) {
      slotState[slot] = DOWN;
      set(plan.repairTimer(slot), now + plan.rebuildHours(copy, heldBytes(copy)));
      return;
    }
    down[copy]--;
    renew(slot);
  }

  private double heldBytes(int copy) {
    if (!calm) {
      holdings.bringTo(copy, now);
      return holdings.held[copy].bytes();
    }
    int e = course.entry(now, false);
    double carried = e < 0 ? shoots.onHand() : course.base(e, copy);
    if (e >= 0 && course.flowTo(e, copy) > carried) {
      carried =
          Math.min(
              course.flowTo(e, copy),
              carried + plan.ways[copy].bytesPerHour() * (now - course.runStart(e, copy)));
    }
    return Math.max(0, carried - lostBytes);
  }

  private void renew(int slot) {
    slotState[slot] = UP;
    generation[slot]++;
    scheduleFailure(slot, now, plan.boughtAt[slot]);
  }

  /** A copy that was gone has hardware again, empty. */
  private void comeBack(int copy) {
    gone[copy] = false;
    recovering[copy] = true;
    down[copy] = 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (slotState[s] == FAILED) {
        renew(s);
      }
    }
    if (copy == 0) {
      scheduleOffload();
      refill();
    } else {
      wake(copy, true);
    }
    wakeTargets(copy, true);
    say(Happening.Kind.COPY_BACK, copy, -1, 0, Double.NaN);
  }

  /** Refills the working copy from the copy that can do it fastest, then from the next. */
  private void refill() {
    int best = -1;
    for (int c = 1; c < plan.copies; c++) {
      boolean faster = best < 0 || plan.refillPerHour[0][c] > plan.refillPerHour[0][best];
      if (!gone[c] && faster && hasMore(c)) {
        best = c;
      }
    }
    if (best > 0) {
      double hours = holdings.start(0, best, plan.refillPerHour[0][best], now);
      set(plan.runEndTimer(0), now + hours);
    } else {
      recovering[0] = false;
    }
  }

  private boolean hasMore(int source) {
    holdings.bringTo(source, now);
    holdings.flow[0].copyFrom(holdings.held[source]);
    holdings.flow[0].removeAll(holdings.held[0]);
    boolean more = !holdings.flow[0].isEmpty();
    holdings.flow[0].clear();
    return more;
  }

  // Feeds and offloads.

  private void offload() {
    while (offloaded < shoots.count() && shoots.time(offloaded) <= now) {
      holdings.held[0].add(shoots.start(offloaded), shoots.end(offloaded));
      offloaded++;
    }
    scheduleOffload();
    wakeTargets(0, false);
  }

  private void scheduleOffload() {
    if (offloaded < shoots.count()) {
      set(plan.offloadTimer(), Math.max(now, shoots.time(offloaded)));
    }
  }

  private void wakeTargets(int source, boolean inclusive) {
    for (int c = 1; c < plan.copies; c++) {
      if (plan.ways[c].source() == source) {
        wake(c, inclusive);
      }
    }
  }

  /** Arms the next run of a feed that stands idle; whether it has work is seen when it starts. */
  private void wake(int copy, boolean inclusive) {
    Plan.Way way = plan.ways[copy];
    boolean idle = !holdings.flowing[copy] && !agenda.isSet(plan.runStartTimer(copy));
    if (idle && !gone[copy] && !gone[way.source()]) {
      set(plan.runStartTimer(copy), nextDue(way, now, inclusive));
    }
  }

  private static double nextDue(Plan.Way way, double from, boolean inclusive) {
    if (way.continuous()) {
      return from;
    }
    double k = Math.max(0, Math.ceil((from - way.atHours()) / way.everyHours()));
    double due = way.atHours() + k * way.everyHours();
    return due < from || (due == from && !inclusive)
        ? way.atHours() + (k + 1) * way.everyHours()
        : due;
  }

  private void startRun(int copy) {
    Plan.Way way = plan.ways[copy];
    double hours = holdings.start(copy, way.source(), way.bytesPerHour(), now);
    if (hours > 0) {
      set(plan.runEndTimer(copy), now + hours);
      wakeTargets(copy, true);
    } else {
      recovering[copy] = false;
      if (holdings.flowing[way.source()] && !way.continuous()) {
        set(plan.runStartTimer(copy), nextDue(way, now, false));
      }
    }
  }

  private void endRun(int copy) {
    holdings.arrive(copy);
    if (copy == 0) {
      refill();
    } else {
      recovering[copy] = false;
      Plan.Way way = plan.ways[copy];
      double due = way.continuous() ? now : nextDue(way, holdings.runStart[copy], false);
      set(plan.runStartTimer(copy), Math.max(now, due));
      if (!gone[0] && !holdings.flowing[0] && way.source() != 0) {
        refill();
      }
    }
    wakeTargets(copy, true);
  }

  // Calm: on the undisturbed course, where no offload or run needs to be simulated.

  private void leaveCalm() {
    if (!calm) {
      return;
    }
    calm = false;
    int e = course.entry(now, false);
    for (int c = 0; c < plan.copies; c++) {
      double base = e < 0 ? startBytes(c) : course.base(e, c);
      holdings.held[c].clear();
      holdings.stop(c);
      holdings.held[c].add(0, base);
      holdings.held[c].removeAll(lost);
      double to = e < 0 ? 0 : course.flowTo(e, c);
      if (to > base) {
        resumeRun(c, base, to, course.runStart(e, c));
      }
    }
    offloaded = shoots.shotBefore(now);
    scheduleOffload();
    for (int c = 1; c < plan.copies; c++) {
      wake(c, true);
    }
  }

  private double startBytes(int copy) {
    return copy == 0 || plan.layout.copies().get(copy).startsFull() ? shoots.onHand() : 0;
  }

  private void resumeRun(int copy, double base, double to, double start) {
    Plan.Way way = plan.ways[copy];
    holdings.flow[copy].add(base, to);
    double hours = holdings.begin(copy, way.source(), way.bytesPerHour(), start);
    set(plan.runEndTimer(copy), start + hours);
    holdings.bringTo(copy, now);
  }

  private void calmIfOnCourse() {
    if (calm || course == null || holdings.flowing[0] || !onCourse() || standsEmpty()) {
      return;
    }
    calm = true;
    Arrays.fill(recovering, false);
    agenda.cancel(plan.offloadTimer());
    for (int c = 0; c < plan.copies; c++) {
      agenda.cancel(plan.runStartTimer(c));
      agenda.cancel(plan.runEndTimer(c));
    }
  }

  /** After a total loss, until the next shoot: the course would call that footage in one copy. */
  private boolean standsEmpty() {
    return !lost.isEmpty() && holdings.held[0].isEmpty();
  }

  private boolean onCourse() {
    int e = course.entry(now, true);
    if (e < 0) {
      return false;
    }
    for (int c = 0; c < plan.copies; c++) {
      double base = course.base(e, c);
      double to = Math.max(base, course.flowTo(e, c));
      boolean flows = to > base;
      if (gone[c]
          || flows != holdings.flowing[c]
          || (flows
              && (holdings.runStart[c] != course.runStart(e, c) || holdings.flowBase[c] != base))
          || !holdings.isPrefix(c, lost, to)) {
        return false;
      }
    }
    return true;
  }

  private void recordInstant() {
    if (recording == null) {
      return;
    }
    holdings.bringAllTo(now);
    int e = recording.append(now, bareSoFar, bareBytes());
    for (int c = 0; c < plan.copies; c++) {
      PositionSet held = holdings.held[c];
      double carried = held.isEmpty() ? 0 : held.to(0);
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

  // Time in one state.

  private void pass(double until) {
    if (timed && until > now) {
      if (calm) {
        calmPassed(now, until, lostBytes);
      } else {
        disturbedPassed(until);
      }
    }
    now = until;
  }

  private void calmPassed(double from, double to, double lostSoFar) {
    double bare = course.bareHours(to) - course.bareHours(from);
    double most = course.mostBare(from, to) - (plan.copies == 1 ? lostSoFar : 0);
    ledger.passed(to - from, bare, fragile(0) ? bare : 0, 0, 0, Math.max(0, most));
  }

  private boolean fragile(int copy) {
    return down[copy] == plan.survives[copy];
  }

  private double bareBytes() {
    double sum = 0;
    for (int c = 0; c < plan.copies; c++) {
      sum += holdings.onlyIn(c);
    }
    return sum;
  }

  private void disturbedPassed(double until) {
    holdings.bringAllTo(now);
    double hours = until - now;
    double bare = 0;
    boolean fragile = false;
    for (int c = 0; c < plan.copies; c++) {
      double only = holdings.onlyIn(c);
      bare += only;
      fragile |= only > 0 && fragile(c);
    }
    if (ledger == null) {
      bareSoFar += bare > 0 ? hours : 0;
      return;
    }
    ledger.passed(
        hours,
        bare > 0 ? hours : 0,
        fragile ? hours : 0,
        gone[0] ? hours : 0,
        gone[0] || holdings.flowing[0] ? hours : 0,
        bare);
  }

  // Scheduling of luck.

  private void scheduleFailure(int slot, double from, double age) {
    long key =
        generation[slot] == 0
            ? plan.firstLifeKey[slot]
            : Draws.key(plan.slotSource[slot], Draws.LIFE, generation[slot]);
    set(slot, from + draws.remaining(plan.life[slot], age, key));
  }

  private void scheduleStrike(int index, double from) {
    Plan.Strike strike = plan.strikes[index];
    long key = Draws.key(strike.source(), Draws.STRIKE, strikeCount[index]);
    set(plan.strikeTimer(index), from + draws.untilNext(strike.perHour(), key));
  }

  private double delay(Delay delay, long key) {
    if (delay instanceof Delay.Lawful lawful) {
      return draws.remaining(lawful.law(), 0, key);
    }
    double period = ((Delay.Looks) delay).periodHours();
    return Math.max(0, Math.ceil(now / period) * period - now);
  }

  /** What falls behind the horizon is never looked at. */
  private void set(int timer, double at) {
    if (at <= plan.horizon) {
      agenda.set(timer, at);
    }
  }
}
