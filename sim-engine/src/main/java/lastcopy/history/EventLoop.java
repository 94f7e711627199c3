package lastcopy.history;

import java.util.function.BooleanSupplier;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.event.copy.ExposureMeter;
import lastcopy.history.event.feed.CourseRecorder;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.Audience;
import lastcopy.history.report.GivenUpException;
import lastcopy.history.report.Happening;
import lastcopy.history.state.HistoryState;
import lastcopy.kernel.Agenda;
import lastcopy.kernel.SimulationClock;

/** Plays a history event by event, from one timer that is due to the next, up to the horizon. */
final class EventLoop {

  /** Steps between two looks whether to go on, a power of 2 less 1: some milliseconds at most. */
  private static final int LOOK_MASK = 0xFFF;

  private final Plan plan;
  private final SimulationClock clock;
  private final HistoryState state;
  private final Audience audience = new Audience();
  private final Mechanisms mechanisms;
  private final ExposureMeter exposure;

  /** Writes the undisturbed course down; null but for the one history that becomes it. */
  private CourseRecorder recorder;

  private BooleanSupplier givesUp = () -> Thread.currentThread().isInterrupted();
  private int steps;

  EventLoop(Plan plan, Draws draws) {
    this.plan = plan;
    clock = new SimulationClock(plan.timers().priorities(), plan.horizon());
    state = new HistoryState(plan, clock);
    mechanisms = new Mechanisms(state, draws, audience);
    exposure =
        new ExposureMeter(
            state,
            mechanisms.tracker,
            audience,
            mechanisms.spending,
            this::step,
            this::instantEnds);
  }

  HistoryState state() {
    return state;
  }

  Audience audience() {
    return audience;
  }

  Mechanisms mechanisms() {
    return mechanisms;
  }

  ExposureMeter exposure() {
    return exposure;
  }

  void givesUpWhen(BooleanSupplier asked) {
    givesUp = asked;
  }

  /** A history without luck, in which the working copy starts full, as a course. */
  RecordedCourse recordCourse() {
    clear(plan.shoots());
    mechanisms.tracker.start();
    state.working().takes(0, plan.shoots().onHand());
    recorder = new CourseRecorder(state);
    audience.counts(recorder);
    play();
    RecordedCourse course = recorder.finished();
    mechanisms.spending.courseIsKnown(course);
    recorder = null;
    return course;
  }

  private void clear(ShootTable shoots) {
    state.clear(shoots);
    mechanisms.clear();
  }

  /**
   * A history with these shoots.
   *
   * @param course its undisturbed course; null to simulate it event by event
   */
  void run(ShootTable shoots, UndisturbedCourse course) {
    state.course(course);
    clear(shoots);
    mechanisms.drives.start();
    mechanisms.shocks.start();
    mechanisms.tracker.start();
    if (!state.onCourse() && !plan.copy(0).startsFull()) {
      state.working().isToBeFilled();
      mechanisms.refill.start();
    }
    mechanisms.narrator.say(Happening.Kind.START, 0, plan.horizon(), "");
    mechanisms.rule.declare();
    play();
    mechanisms.interruptions.whole();
    mechanisms.spending.ends();
    mechanisms.clocks.weight(); // settles what was run up until the horizon
    mechanisms.narrator.say(Happening.Kind.END, 0, Double.NaN, "");
  }

  /** Takes what is due, in the order at one instant, up to and at the horizon. */
  private void play() {
    mechanisms.rule.instantEnds();
    instantEnds();
    for (int timer = next(); clock.isDue(timer, plan.horizon()); timer = next()) {
      double at = clock.of(timer);
      step();
      exposure.pass(at);
      if (clock.rank(timer) == 0) {
        failuresAt(at);
      } else {
        mechanisms.rule.newInstant();
        take(timer);
        mechanisms.rule.declare();
      }
      if (!clock.isDue(next(), at)) {
        mechanisms.rule.instantEnds();
        mechanisms.links.instantEnds();
        instantEnds();
        mechanisms.tracker.enterIfOnCourse(); // which unsets timers
      }
      tellBias();
    }
    exposure.pass(plan.horizon());
    exposure.atTheEnd();
  }

  private void instantEnds() {
    if (recorder != null) {
      recorder.instantHasPassed();
    }
  }

  private void tellBias() {
    if (mechanisms.clocks.likelihood().biasing()) {
      int wrong = mechanisms.unnoticed.count() + mechanisms.stops.count() + state.wrongCopies();
      boolean bare = plan.copies() > 1 && state.bareBytes() > 0; // 0 on the course
      mechanisms.clocks.levelIs(wrong, state.onCourse(), bare); // which moves them
    }
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
    int timer = clock.peek();
    while (timer != Agenda.NONE && mechanisms.clocks.isEarliest(timer)) {
      mechanisms.clocks.search(timer);
      timer = clock.peek();
    }
    return timer;
  }

  /** All failures and mishaps of one instant strike before what is lost by them is told. */
  private void failuresAt(double at) {
    mechanisms.rule.newInstant();
    int timer = next();
    while (timer != Agenda.NONE && clock.of(timer) == at && clock.rank(timer) == 0) {
      take(timer);
      timer = next();
    }
    mechanisms.rule.declare();
    mechanisms.refill.afterFailures();
    mechanisms.rule.declare();
  }

  private void take(int timer) {
    clock.cancel(timer);
    mechanisms.due(timer);
  }
}
