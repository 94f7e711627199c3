package lastcopy.history;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;
import lastcopy.kernel.Agenda;
import lastcopy.law.Law;
import lastcopy.scenario.Delay;

/**
 * The state of one history, which its mechanisms share, and the mechanisms themselves. Each event
 * changes what copies hold or which hardware stands; {@link LossRule} alone decides what is lost.
 */
final class HistoryState {

  /** Steps between two looks at the clock, a power of 2 less 1: some milliseconds at most. */
  private static final int LOOK_MASK = 0xFFF;

  final Plan plan;
  final Draws draws;
  final Agenda agenda;
  final Holdings holdings;
  final boolean[] gone;
  final boolean[] recovering;
  final int[] down;
  final PositionSet lost = new PositionSet();
  double lostBytes;
  ShootTable shoots;
  int offloaded;
  double now;
  boolean timed;
  Ledger ledger;
  HistoryListener listener;

  /** Asked every so many events whether to give up; an interrupted thread does by itself. */
  BooleanSupplier givesUp = () -> Thread.currentThread().isInterrupted();

  final RepairTimes times;
  final Clocks clocks;
  final Lives lives;
  final Frailty frailty;
  final Repairs repairs;
  final Defects defects;
  final Clips clips;
  final Shelves shelves;
  final Outages outages;
  final Shocks shocks;
  final DeskDamage desk;
  final Spoils spoils;
  final Feeds feeds;
  final Refill refill;
  final Offloads offloads;
  final Cards cards;
  final Ageing ageing;
  final LossRule rule;
  final CourseTracker tracker;
  final Exposure exposure;
  private final Mechanism[] mechanisms;
  private final int[] firstTimer;
  private int steps;

  HistoryState(Plan plan, long seed) {
    this.plan = plan;
    draws = new Draws(seed);
    agenda = new Agenda(plan.timer.priorities());
    holdings = new Holdings(plan.copies);
    gone = new boolean[plan.copies];
    recovering = new boolean[plan.copies];
    down = new int[plan.copies];
    times = new RepairTimes(plan, draws);
    clocks = new Clocks(this);
    lives = new Lives(this);
    frailty = new Frailty(plan, draws);
    repairs = new Repairs(this);
    defects = new Defects(this);
    clips = new Clips(this);
    shelves = new Shelves(this);
    outages = new Outages(this);
    desk = new DeskDamage(this);
    spoils = new Spoils(this);
    feeds = new Feeds(this);
    refill = new Refill(this);
    offloads = new Offloads(this);
    cards = new Cards(this);
    ageing = new Ageing(this);
    rule = new LossRule(this);
    tracker = new CourseTracker(this);
    exposure = new Exposure(this);
    shocks = new Shocks(this);
    mechanisms = new Mechanism[plan.timer.count()];
    firstTimer = new int[plan.timer.count()];
    connect();
  }

  private void connect() {
    Timers timer = plan.timer;
    connect(timer.failure(0), plan.slots, lives);
    connect(timer.strike(0), plan.shocks.length, shocks);
    connect(timer.repair(0), plan.slots, repairs);
    connect(timer.comeBack(0), plan.copies, outages);
    connect(timer.runEnd(0), plan.copies, feeds::end);
    connect(timer.swap(0), plan.slots, lives::swap);
    connect(timer.enter(0), plan.slots, lives::enter);
    connect(timer.tried(0), plan.copies, spoils::tried);
    connect(timer.looked(0), plan.copies, feeds::looked);
    connect(timer.visitEnd(0), plan.copies, feeds::visitEnds);
    connect(timer.noticed(), 1, desk::noticed);
    connect(timer.dropped(), 1, desk::dropped);
    connect(timer.cardsExpired(), 1, cards);
    connect(timer.aged(), 1, ageing);
    connect(timer.runStart(0), plan.copies, feeds);
    connect(timer.offload(), 1, offloads);
  }

  private void connect(int first, int count, Mechanism mechanism) {
    Arrays.fill(mechanisms, first, first + count, mechanism);
    Arrays.fill(firstTimer, first, first + count, first);
  }

  /** Back to the start of a history. */
  void clear() {
    agenda.clear();
    holdings.clear();
    lost.clear();
    lostBytes = 0;
    offloaded = 0;
    now = 0;
    shoots = plan.shoots;
    Arrays.fill(gone, false);
    Arrays.fill(recovering, false);
    Arrays.fill(down, 0);
    clocks.clear();
    lives.clear();
    frailty.clear();
    repairs.clear();
    defects.clear();
    outages.clear();
    shocks.clear();
    desk.clear();
    spoils.clear();
    feeds.clear();
    offloads.clear();
    cards.clear();
    rule.clear();
    tracker.clear();
    exposure.clear();
  }

  /** The clock: takes what is due, in the order at one instant, up to and at the horizon. */
  void play() {
    tracker.recordInstant();
    for (int timer = next(); isDue(timer, plan.horizon); timer = next()) {
      double at = agenda.time(timer);
      step();
      exposure.pass(at);
      if (agenda.rank(timer) == 0) {
        failuresAt(at);
      } else {
        rule.newInstant();
        take(timer);
        rule.declare();
      }
      if (!isDue(next(), now)) {
        tracker.recordInstant();
        tracker.enterIfOnCourse(); // which unsets timers
      }
      if (clocks.likelihood().biasing()) {
        boolean bare = plan.copies > 1 && exposure.bareBytes() > 0; // 0 on the course
        clocks.levelIs(wrong(), tracker.onCourse(), bare); // which moves them
      }
    }
    exposure.pass(plan.horizon);
    exposure.atTheEnd();
  }

  /**
   * One step of what may be long; seldom looks whether to go on.
   *
   * @throws GivenUpException if not
   */
  void step() {
    if ((++steps & LOOK_MASK) == 0 && givesUp.getAsBoolean()) {
      throw new GivenUpException();
    }
  }

  /** The timer that goes next. */
  private int next() {
    int timer = agenda.peek();
    while (timer != Agenda.NONE && clocks.isEarliest(timer)) {
      clocks.search(timer);
      timer = agenda.peek();
    }
    return timer;
  }

  private boolean isDue(int timer, double by) {
    return timer != Agenda.NONE && agenda.time(timer) <= by;
  }

  /** All failures and mishaps of one instant strike before what is lost by them is told. */
  private void failuresAt(double at) {
    rule.newInstant();
    int timer = next();
    while (timer != Agenda.NONE && agenda.time(timer) == at && agenda.rank(timer) == 0) {
      take(timer);
      timer = next();
    }
    rule.declare();
    refill.afterFailures();
    rule.declare();
  }

  private void take(int timer) {
    agenda.cancel(timer);
    mechanisms[timer].due(timer - firstTimer[timer]);
  }

  /** What falls behind the horizon is never looked at. */
  void set(int timer, double at) {
    if (at <= plan.horizon) {
      agenda.set(timer, at);
    }
  }

  /**
   * How many things are wrong: drives down, and as many as a loss takes for a copy that is gone.
   */
  private int wrong() {
    int sum = desk.pending() + feeds.stopped();
    for (int c = 0; c < plan.copies; c++) {
      sum += gone[c] || recovering[c] || spoils.is(c) ? plan.survives[c] + 1 : down[c];
    }
    return Math.min(sum, plan.levels.depths() - 1);
  }

  /** An unlikely draw is about to be made under a bias. */
  void risk(int channel, double chance) {
    if (clocks.likelihood().biasing()) {
      clocks.settleAll();
      ledger.risked(channel, chance);
    }
  }

  /** An unlikely draw has come out badly. */
  void cameOutBadly(int channel) {
    if (clocks.likelihood().biasing()) {
      ledger.cameOutBadly(channel);
    }
  }

  /** A delay from now, in hours. */
  double delay(Delay delay, long key) {
    return times.delay(delay, now, key);
  }

  double delay(Law law, long key) {
    return draws.remaining(law, 0, key);
  }

  /** Hours until the next look by the clock, 0 at the very instant of one. */
  double untilLook(double period) {
    return new Delay.Looks(period).hoursUntilNext(now);
  }

  /** What a copy holds now, whether on course or not. */
  double heldBytes(int copy) {
    if (tracker.onCourse()) {
      return tracker.heldBytes(copy);
    }
    holdings.bringTo(copy, now);
    return holdings.held[copy].bytes();
  }

  void say(Happening.Kind kind, int copy, int drive, double bytes, double until) {
    say(kind, copy, drive, bytes, until, "");
  }

  void say(Happening.Kind kind, int copy, int drive, double bytes, double until, String subject) {
    if (listener == null) {
      return;
    }
    double[] held = new double[plan.copies];
    for (int c = 0; c < plan.copies; c++) {
      held[c] = gone[c] ? 0 : heldBytes(c);
    }
    listener.saw(
        new Happening(kind, now, copy, drive, bytes, until, subject),
        new Snapshot(
            shoots.total(now),
            lostBytes,
            held,
            gone.clone(),
            down.clone(),
            exposure.bareBytes(),
            clocks.weight()));
  }
}
