package lastcopy.history.event.feed;

import java.util.Set;
import lastcopy.footage.PositionSet;
import lastcopy.footage.Positions;
import lastcopy.history.event.Common;
import lastcopy.history.event.Disturbance;
import lastcopy.history.event.Mechanism;
import lastcopy.history.event.Narrator;
import lastcopy.history.event.OffCourse;
import lastcopy.history.event.Spending;
import lastcopy.history.event.TimerHandler;
import lastcopy.history.event.drive.Clips;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Timers;
import lastcopy.history.plan.Way;
import lastcopy.history.report.Happening;
import lastcopy.history.state.CopyState;
import lastcopy.history.state.Flow;
import lastcopy.history.state.HistoryState;
import lastcopy.kernel.SimulationClock;
import lastcopy.scenario.Periodic;

/**
 * Feeds: runs that are due by the clock or whenever there is something to copy, cut by failures and
 * by the end of a visit. Runs that bring back a copy that was gone pay for unreadable spots as a
 * refill does.
 */
public final class Feeds implements Mechanism, TimerHandler, OffCourse, Disturbance {

  /** What goes with the runs of a feed. */
  public interface Passenger {

    /** A run starts. */
    void runStarts(CopyState copy);

    /** A run has ended, or was cut. */
    void runEnded(CopyState copy);
  }

  /**
   * A continuous feed, or a refill, behind a copy that is itself being fed starts what takes less
   * than a quarter of an hour at quarters by the clock: without a step it would start infinitely
   * often.
   */
  private static final Periodic QUARTERS = new Periodic(0, 0.25);

  private final HistoryState state;
  private final SimulationClock clock;
  private final Timers timers;
  private final Narrator narrator;
  private final Clips clips;
  private final Rotations rotations;
  private final Links links;
  private final Spending spending;
  private final PositionSet scratch = new PositionSet();
  private Passenger passenger;
  private Runnable refill;

  /** The feeds of a state's copies. */
  public Feeds(Common common, Clips clips, Rotations rotations, Links links, Spending spending) {
    state = common.state();
    clock = state.clock();
    timers = state.timers();
    narrator = common.narrator();
    this.clips = clips;
    this.rotations = rotations;
    this.links = links;
    this.spending = spending;
  }

  /**
   * Tells what follows its runs; the only two that are made after it and that it needs.
   *
   * @param with what goes with each run
   * @param ofWorking starts, or goes on with, the refill of the working copy
   */
  public void tells(Passenger with, Runnable ofWorking) {
    passenger = with;
    refill = ofWorking;
  }

  @Override
  public Set<Effect> effects(CopyPlan copy) {
    return Mechanism.none();
  }

  /** Every feed may have work. */
  @Override
  public void takeUp() {
    for (CopyState copy : state.copies()) {
      if (copy.plan().rotates()) {
        rotations.takeUp(copy);
      } else if (copy.index() > 0) {
        wake(copy, true);
      }
    }
  }

  @Override
  public void rest() {
    for (CopyState copy : state.copies()) {
      clock.cancel(timers.runStart(copy.index()));
      clock.cancel(timers.runEnd(copy.index()));
      clock.cancel(timers.visitEnd(copy.index()));
    }
  }

  @Override
  public boolean mayDisturb() {
    return rotations.areUsed();
  }

  @Override
  public boolean disturbs() {
    return !rotations.areByTheClock();
  }

  /** The copies that are fed from one may have work. */
  public void wakeTargets(CopyState source, boolean inclusive) {
    for (CopyState copy : state.copies()) {
      if (copy.plan().isFedFrom(source.index())) {
        wake(copy, inclusive);
      }
    }
  }

  /** Arms the next run of a feed that stands idle; whether it has work is seen when it starts. */
  public void wake(CopyState copy, boolean inclusive) {
    Way way = copy.plan().way();
    int timer = timers.runStart(copy.index());
    boolean idle =
        !copy.plan().rotates()
            && !copy.flow().isGoing()
            && (way.continuous() || !clock.isSet(timer));
    if (idle && state.mayFeed(copy)) {
      clock.set(timer, inclusive ? way.dueFrom(state.now()) : way.dueAfter(state.now()));
    }
  }

  /** A run is due. */
  @Override
  public void due(int index) {
    CopyState copy = state.copy(index);
    if (copy.plan().rotates() && !rotations.comes(copy)) {
      return;
    }
    if (!state.mayFeed(copy)) {
      return;
    }
    CopyState source = state.sourceOf(copy);
    boolean behind = copy.plan().way().continuous() && source.flow().isGoing();
    if (behind && mustWait(copy, source, copy.plan().way().bytesPerHour())) {
      clock.set(timers.runStart(index), nextQuarter());
      return;
    }
    passenger.runStarts(copy);
    double hours =
        state.holdings().start(copy, source, copy.plan().way().bytesPerHour(), state.now());
    if (copy.isRefilling()) {
      copy.feed().isToBring(copy.flow().positions());
    }
    if (hours > 0) {
      begun(copy, hours, copy.isRefilling());
      wakeTargets(copy, true);
    } else {
      hadNothingToDo(copy, source, behind);
    }
  }

  private void hadNothingToDo(CopyState copy, CopyState source, boolean behind) {
    passenger.runEnded(copy);
    copy.feed().firstFill(false);
    filledAgain(copy);
    if (behind) {
      clock.set(timers.runStart(copy.index()), nextQuarter());
    } else if (source.flow().isGoing() && !copy.plan().rotates()) {
      clock.set(timers.runStart(copy.index()), copy.plan().way().dueAfter(state.now()));
    }
  }

  /** A run has ended; whether the copy has what the first after its return was to bring. */
  private void filledAgain(CopyState copy) {
    if (copy.isRefilling() && copy.feed().knowsWhatIsMissing() && !lacks(copy)) {
      copy.isFilled();
      narrator.say(Happening.Kind.REFILLED, copy, 0, Double.NaN);
    }
  }

  /** What nobody holds any more is not waited for, nor what is deleted and not noticed. */
  private boolean lacks(CopyState copy) {
    PositionSet left = copy.feed().missing();
    left.removeAll(copy.believed());
    left.remove(0, state.holdings().aged());
    scratch.copyFrom(left);
    state.holdings().removeHeld(scratch);
    left.removeAll(scratch);
    scratch.copyFrom(left);
    scratch.removeAll(state.holdings().blocked());
    return !scratch.isEmpty();
  }

  /** Whether a flow that follows a copy which is itself being fed would be too short to start. */
  public boolean mustWait(CopyState target, CopyState source, double bytesPerHour) {
    return QUARTERS.from(state.now()) > state.now() && trickles(target, source, bytesPerHour);
  }

  private boolean trickles(CopyState target, CopyState source, double bytesPerHour) {
    return source.flow().isGoing()
        && trickles(source, state.holdings().hours(target, source, bytesPerHour, state.now()));
  }

  /** Whether a copy that has so many hours' worth is itself being fed, and that is little. */
  public boolean trickles(CopyState source, double hours) {
    return source.flow().isGoing() && hours < QUARTERS.every();
  }

  /** When a flow that was too short to start is looked at again, in hours. */
  public double nextQuarter() {
    return QUARTERS.after(state.now());
  }

  /** A flow has begun; as a refill it meets what its source hides. */
  public void begun(CopyState copy, double hours, boolean asRefill) {
    clock.set(timers.runEnd(copy.index()), state.now() + hours);
    copy.feed().begins(asRefill);
    links.begun(copy, hours);
    if (asRefill) {
      copy.feed().reads(copy.flow().positions(), copy.index() != 0);
      CopyState source = state.copy(copy.flow().source());
      if (source.isReadBare()) {
        clips.defectsMetByRefill(source);
      }
    }
  }

  /** What a refill has read so far is paid for. */
  private void pay(CopyState copy) {
    CopyState source = state.copy(copy.flow().source());
    boolean paid = source.plan().set().readErrors() > 0 && source.isReadBare();
    boolean charged = spending.chargesFor(source);
    if (copy.feed().isRefill() && (paid || charged)) {
      Positions read = copy.feed().hasRead(copy.flow().positions());
      if (charged) {
        spending.isBroughtBack(source, read.bytes());
      }
      if (paid) {
        clips.readByRefill(source, copy, read, copy.feed().countReading());
      }
    }
    copy.feed().begins(false);
  }

  /** A run, or a refill of the working copy, has carried all. */
  public void end(int index) {
    CopyState copy = state.copy(index);
    copy.arrives();
    links.ended(copy);
    copy.feed().firstFill(false);
    pay(copy);
    if (index == 0) {
      refill.run();
    } else {
      passenger.runEnded(copy);
      filledAgain(copy);
      setNext(copy);
      CopyState working = state.working();
      if (!working.isGone() && !working.flow().isGoing() && copy.plan().way().source() != 0) {
        refill.run();
      }
    }
    wakeTargets(copy, true);
  }

  private void setNext(CopyState copy) {
    Way way = copy.plan().way();
    if (!copy.plan().rotates()) {
      double due = way.continuous() ? state.now() : way.dueAfter(copy.flow().start());
      clock.set(timers.runStart(copy.index()), Math.max(state.now(), due));
    }
  }

  /** A flow is cut; what has crossed stays. */
  public void cut(CopyState copy) {
    copy.bringTo(state.now());
    pay(copy);
    copy.cuts();
    clock.cancel(timers.runEnd(copy.index()));
    links.ended(copy);
    if (copy.index() != 0) {
      passenger.runEnded(copy);
      filledAgain(copy);
    }
    wakeTargets(copy, true);
  }

  /** A copy goes: flows to and from it are cut, and no run starts. */
  public void cutBy(CopyState goes) {
    for (CopyState copy : state.copies()) {
      Flow flow = copy.flow();
      if (flow.isGoing() && (copy == goes || flow.isFrom(goes.index()))) {
        cut(copy);
      }
      boolean waits = copy == goes || copy.plan().isFedFrom(goes.index());
      if (waits && !copy.plan().rotates()) {
        clock.cancel(timers.runStart(copy.index()));
      }
    }
    if (goes.plan().rotates()) {
      rotations.goes(goes);
    }
    if (goes.index() == 0) {
      clock.cancel(timers.offload());
    }
  }

  /** A visit is over: a run still going is cut and goes on at the next turn. */
  public void visitEnds(int index) {
    CopyState copy = state.copy(index);
    copy.feed().visiting(false);
    if (copy.flow().isGoing()) {
      cut(copy);
    }
  }
}
