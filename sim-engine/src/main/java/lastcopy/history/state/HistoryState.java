package lastcopy.history.state;

import java.util.Arrays;
import lastcopy.footage.PositionSet;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.Timers;
import lastcopy.kernel.SimulationClock;

/**
 * How things stand in a history: its copies, drives and shoots, what is lost, and the simulation
 * clock. Mechanisms share it; it knows none of them.
 *
 * <p>On the undisturbed course copies are not kept up: each holds what the course says.
 */
public final class HistoryState {

  private final Plan plan;
  private final SimulationClock clock;
  private final DriveState[] drive;
  private final CopyState[] copy;
  private final Holdings holdings;
  private final PositionSet lost = new PositionSet();
  private double lostBytes;
  private ShootTable shoots;
  private int offloaded;
  private UndisturbedCourse course;
  private boolean onCourse;

  /** The state of histories of a layout. */
  public HistoryState(Plan plan, SimulationClock clock) {
    this.plan = plan;
    this.clock = clock;
    drive = new DriveState[plan.slots()];
    Arrays.setAll(drive, s -> new DriveState(plan.slot(s)));
    copy = new CopyState[plan.copies()];
    Arrays.setAll(copy, c -> new CopyState(plan.copy(c), drivesOf(plan.copy(c))));
    holdings = new Holdings(copy);
  }

  private DriveState[] drivesOf(CopyPlan of) {
    return Arrays.copyOfRange(drive, of.firstSlot(), of.endSlot());
  }

  /** Back to the start of a history, with its shoots. */
  public void clear(ShootTable ofHistory) {
    clock.clear();
    for (CopyState each : copy) {
      each.clear();
    }
    for (DriveState each : drive) {
      each.clear();
    }
    holdings.clear();
    lost.clear();
    lostBytes = 0;
    offloaded = 0;
    shoots = ofHistory;
    onCourse = false;
  }

  /** What does not change. */
  public Plan plan() {
    return plan;
  }

  /** The simulation clock and its timers. */
  public SimulationClock clock() {
    return clock;
  }

  /** The numbers of the timers. */
  public Timers timers() {
    return plan.timers();
  }

  /** The time it is, in hours. */
  public double now() {
    return clock.now();
  }

  /** All copies; the first is the working copy. An array since every event goes through it. */
  public CopyState[] copies() {
    return copy;
  }

  /** A copy by its number. */
  public CopyState copy(int index) {
    return copy[index];
  }

  /** The working copy. */
  public CopyState working() {
    return copy[0];
  }

  /** The copy that feeds one that is fed. */
  public CopyState sourceOf(CopyState fed) {
    return copy[fed.plan().way().source()];
  }

  /** Whether a run to a fed copy can start, or go on: also to a spoilt one, as nobody knows. */
  public boolean mayFeed(CopyState fed) {
    return !fed.feed().isStopped() && !fed.isGone() && !sourceOf(fed).isGone();
  }

  /** The drive of a slot. */
  public DriveState drive(int slot) {
    return drive[slot];
  }

  /** The copy of a drive. */
  public CopyState copyOf(DriveState of) {
    return copy[of.plan().copy()];
  }

  /** What copies and cards hold together. */
  public Holdings holdings() {
    return holdings;
  }

  /** The shoots of the history. */
  public ShootTable shoots() {
    return shoots;
  }

  /** How many shoots have been offloaded. */
  public int offloaded() {
    return offloaded;
  }

  /** So many shoots have been offloaded. */
  public void offloaded(int count) {
    offloaded = count;
  }

  /** All bytes offloaded so far. */
  public double offloadedBytes() {
    return offloaded == 0 ? shoots.onHand() : shoots.end(offloaded - 1);
  }

  /** Positions below it have aged out by a time. */
  public double agedBy(double time) {
    double keep = plan.keepHours();
    if (keep == Double.POSITIVE_INFINITY || time < keep) {
      return 0;
    }
    int k = shoots.shotAgo(keep, time);
    return k == 0 ? shoots.onHand() : shoots.end(k - 1);
  }

  /** What is lost for good. */
  public PositionSet lost() {
    return lost;
  }

  /** All that was ever lost, in bytes. */
  public double lostBytes() {
    return lostBytes;
  }

  /** Some more is lost for good. */
  public void loses(PositionSet positions, double bytes) {
    lost.addAll(positions);
    lostBytes += bytes;
  }

  /** How many copies and drives, and to what degree, are not as they should be. */
  public int wrongCopies() {
    int sum = 0;
    for (CopyState each : copy) {
      sum += each.wrong();
    }
    return sum;
  }

  /** The undisturbed course; null if the history is simulated event by event. */
  public UndisturbedCourse course() {
    return course;
  }

  /** The next history has this course, or none. */
  public void course(UndisturbedCourse ofHistory) {
    course = ofHistory;
  }

  /** Whether the history is on the undisturbed course. */
  public boolean onCourse() {
    return onCourse;
  }

  /** It leaves the course, or goes back on it. */
  public void onCourse(boolean is) {
    onCourse = is;
  }

  /** What a copy holds now, whether on course or not. */
  public double heldBytes(CopyState copy) {
    if (onCourse) {
      return heldOnCourse(copy);
    }
    copy.bringTo(now());
    return copy.held().bytes();
  }

  private double heldOnCourse(CopyState copy) {
    int c = copy.index();
    course.moveTo(now(), false);
    double carried = course.base(c);
    if (course.flowTo(c) > carried) {
      double rate = course.isLinked() ? course.perHour(c) : copy.plan().way().bytesPerHour();
      double since = course.isLinked() ? course.since(c) : course.runStart(c);
      carried = Math.min(course.flowTo(c), carried + rate * (now() - since));
    }
    double aged = copy.plan().set().shelf() ? 0 : agedBy(now());
    double gone = 0;
    for (int i = 0; i < lost.size(); i++) {
      gone += Math.max(0, Math.min(lost.to(i), carried) - Math.max(lost.from(i), aged));
    }
    return Math.max(0, carried - aged - gone);
  }

  /** What a copy holds at the start. */
  public double startBytes(CopyState copy) {
    return copy.plan().startsFull() ? shoots.onHand() : 0;
  }

  /** Bytes that stand in one copy only; 0 on the course, where it is not reckoned. */
  public double bareBytes() {
    return onCourse ? 0 : holdings.bareBytes();
  }
}
