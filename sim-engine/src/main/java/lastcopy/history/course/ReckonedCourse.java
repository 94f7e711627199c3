package lastcopy.history.course;

import java.util.Arrays;
import lastcopy.footage.ShootTable;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;

/**
 * The course of one history whose shoots come at random, reckoned from them instead of recorded: a
 * {@link FeedQueue} for each copy that is fed from the working copy by the clock or continuously.
 *
 * <p>Entry 0 of what is kept by shoots is the footage on hand, shot at 0; entry k is the k-th
 * shoot.
 */
public final class ReckonedCourse implements UndisturbedCourse {

  private final Plan plan;
  private final Draws draws;
  private final RandomShoots random;

  /** By copy; null for the working copy and for what is not reckoned. */
  private final FeedQueue[] queue;

  private final boolean allReckoned;
  private long begun;

  /** Whether all shoots of the history have been drawn. */
  private boolean whole;

  private ShootTable shoots;
  private int shot;
  private boolean bareIsReckoned;
  private double[] bareUntil = new double[0];
  private double[] bareHours = new double[0];
  private double[] bareBytes = new double[0];
  private double[] most = new double[0];

  /** Courses of histories of a layout under the luck of some draws. */
  public ReckonedCourse(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
    random = new RandomShoots(plan, draws);
    queue = new FeedQueue[plan.copies()];
    boolean all = true;
    for (int c = 1; c < queue.length; c++) {
      CopyPlan copy = plan.copy(c);
      boolean direct = copy.isFedFrom(0) && !copy.rotates() && copy.way().link() == null;
      queue[c] = direct ? new FeedQueue(copy, plan.horizon()) : null;
      all &= direct;
    }
    allReckoned = all;
  }

  @Override
  public void begin() {
    if (!whole || begun != draws.current()) {
      begun = draws.current();
      begin(random.ofHistory());
    }
  }

  @Override
  public void beginUpTo(double time) {
    if (!whole || begun != draws.current()) {
      begin(random.until(time));
      whole = false;
    }
  }

  @Override
  public boolean holdsAll(int copy, double below, double at) {
    return (queue[copy] != null && queue[copy].surelyHasAll(at))
        || UndisturbedCourse.super.holdsAll(copy, below, at);
  }

  /** From now on it is that of a history with these shoots. */
  public void begin(ShootTable ofHistory) {
    shoots = ofHistory;
    whole = true;
    bareIsReckoned = false;
    for (FeedQueue each : queue) {
      if (each != null) {
        each.begin(shoots);
      }
    }
  }

  /** The shoots of the history. */
  public ShootTable shoots() {
    return shoots;
  }

  /**
   * Whether all is reckoned: each copy, footage that ages out only when it is across, and, where
   * time is wanted, cards that are kept until what they hold is across. What storage costs is not.
   */
  public boolean isWhole(boolean withTime) {
    boolean cards = withTime && plan.cardHours() > 0;
    return allReckoned
        && !(withTime && plan.prices().stores().length > 0)
        && (plan.keepHours() == Double.POSITIVE_INFINITY || longestLag() < plan.keepHours())
        && (!cards || (anyOtherStartsFull() && shortestLag() < plan.cardHours()));
  }

  private double longestLag() {
    double longest = plan.copies() == 1 ? Double.POSITIVE_INFINITY : 0;
    for (int c = 1; c < queue.length; c++) {
      longest = Math.max(longest, queue[c].longestLag());
    }
    return longest;
  }

  /** Of the copy that is least behind, how long it is at most. */
  private double shortestLag() {
    double least = Double.POSITIVE_INFINITY;
    for (int c = 1; c < queue.length; c++) {
      least = Math.min(least, queue[c].longestLag());
    }
    return least;
  }

  private boolean anyOtherStartsFull() {
    boolean any = shoots.onHand() == 0;
    for (int c = 1; c < queue.length; c++) {
      any |= plan.copy(c).startsFull();
    }
    return any;
  }

  @Override
  public void moveTo(double instant, boolean inclusive) {
    shot = inclusive ? shoots.shotBy(instant) : shoots.shotBefore(instant);
    for (FeedQueue each : queue) {
      if (each != null) {
        each.moveTo(instant, inclusive);
      }
    }
  }

  @Override
  public double base(int copy) {
    if (copy == 0) {
      return total(shot);
    }
    return queue[copy] == null ? Double.NaN : queue[copy].base();
  }

  private double total(int entry) {
    return entry == 0 ? shoots.onHand() : shoots.end(entry - 1);
  }

  @Override
  public double flowTo(int copy) {
    return copy == 0 ? 0 : queue[copy].flowTo();
  }

  @Override
  public double runStart(int copy) {
    return copy == 0 ? 0 : queue[copy].runStart();
  }

  @Override
  public double lowestBare() {
    double lowest = plan.cardHours() > 0 ? Double.POSITIVE_INFINITY : 0;
    for (int c = 1; c < queue.length; c++) {
      lowest = Math.max(lowest, queue[c].base());
    }
    return lowest;
  }

  @Override
  public double bareHours(double time) {
    reckonBare();
    int e = shoots.shotBy(time);
    return bareHours[e] + bareOf(e, time);
  }

  /** Hours bare from an entry up to a time before the next. */
  private double bareOf(int entry, double time) {
    return Math.max(0, Math.min(bareUntil[entry], time) - timeOf(entry));
  }

  private double timeOf(int entry) {
    return entry == 0 ? 0 : shoots.time(entry - 1);
  }

  @Override
  public double mostBare(double from, double to) {
    reckonBare();
    int last = shoots.shotBy(to);
    if (from == 0) {
      return most[last];
    }
    int first = shoots.shotBy(from);
    double largest = bareUntil[first] > from ? bareNow(from, first) : 0;
    for (int e = first + 1; e <= last; e++) {
      largest = Math.max(largest, bareBytes[e]);
    }
    return largest;
  }

  private double bareNow(double time, int entry) {
    moveTo(time, true);
    double front = 0;
    for (int c = 1; c < queue.length; c++) {
      front = Math.max(front, queue[c].carried(time));
    }
    return total(entry) - front;
  }

  private void reckonBare() {
    if (bareIsReckoned) {
      return;
    }
    bareIsReckoned = true;
    int n = shoots.count() + 1;
    if (bareUntil.length < n) {
      bareUntil = new double[2 * n];
      bareHours = new double[2 * n];
      bareBytes = new double[2 * n];
      most = new double[2 * n];
    }
    findEnds(n);
    findBytes(n);
    sum(n);
  }

  private void sum(int n) {
    double sum = 0;
    double largest = 0;
    for (int e = 0; e < n; e++) {
      bareHours[e] = sum;
      sum += bareOf(e, e + 1 < n ? timeOf(e + 1) : plan.horizon());
      bareBytes[e] = bareUntil[e] > timeOf(e) ? bareBytes[e] : 0;
      largest = Math.max(largest, bareBytes[e]);
      most[e] = largest;
    }
  }

  /** By entry, until when what was then shot is in one copy only, unless more is shot before. */
  private void findEnds(int n) {
    boolean never = plan.cardHours() > 0 && queue.length > 1;
    Arrays.fill(bareUntil, 0, n, never ? 0 : Double.POSITIVE_INFINITY);
    if (anyOtherStartsFull()) {
      bareUntil[0] = 0;
    }
    for (int c = 1; c < queue.length; c++) {
      queue[c].reckonTo(plan.horizon());
      for (int i = 0; i < queue[c].runs(); i++) {
        int e = queue[c].shot(i);
        bareUntil[e] = Math.min(bareUntil[e], queue[c].end(i));
      }
    }
  }

  /** By entry, what is then in the working copy only, unless it has come across before. */
  private void findBytes(int n) {
    for (int e = 0; e < n; e++) {
      bareBytes[e] = total(e);
    }
    for (int c = 1; c < queue.length; c++) {
      int run = -1;
      for (int e = 0; e < n; e++) {
        double time = timeOf(e);
        while (run + 1 < queue[c].runs() && queue[c].start(run + 1) <= time) {
          run++;
        }
        bareBytes[e] = Math.min(bareBytes[e], total(e) - queue[c].carried(run, time));
      }
    }
  }
}
