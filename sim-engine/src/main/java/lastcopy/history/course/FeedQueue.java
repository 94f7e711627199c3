package lastcopy.history.course;

import java.util.Arrays;
import lastcopy.footage.Rising;
import lastcopy.footage.ShootTable;
import lastcopy.history.plan.CopyPlan;
import lastcopy.scenario.Periodic;

/**
 * What a feed from the working copy carries in one history as long as nothing fails: a fluid queue
 * with gates, reckoned run by run with the sums of the engine, and only as far as it is asked for.
 */
final class FeedQueue {

  /** Hours by which sums that are taken in another order may differ, and more. */
  private static final double ROUNDING = 1e-6;

  /** When runs are due; null for a continuous feed. */
  private final Periodic due;

  private final double perHour;
  private final double horizon;
  private final boolean startsFull;

  private ShootTable shoots;
  private double[] start = new double[64];
  private double[] end = new double[64];
  private double[] from = new double[64];
  private double[] to = new double[64];
  private int[] shot = new int[64];
  private int size;

  /** When the next run starts; infinite if none does up to the horizon. */
  private double next;

  /** Shoots that the next run finds, and all before. */
  private int found;

  private double across;
  private double longestLag;

  // Where it was moved to.
  private int run;
  private boolean going;

  FeedQueue(CopyPlan copy, double horizon) {
    due = copy.way().due().orElse(null);
    perHour = copy.way().bytesPerHour();
    this.horizon = horizon;
    startsFull = copy.startsFull();
  }

  /** Nothing has run yet in a history with these shoots. */
  void begin(ShootTable ofHistory) {
    shoots = ofHistory;
    size = 0;
    found = 0;
    longestLag = 0;
    across = startsFull ? shoots.onHand() : 0;
    next = due == null ? 0 : due.from(0);
    finds(false);
  }

  /** What a run finds that starts next: shoots before it, and at it if they set it off. */
  private void finds(boolean setOff) {
    while (found < shoots.count()
        && (shoots.time(found) < next || (setOff && shoots.time(found) == next))) {
      found++;
    }
    if (!(next <= horizon)) {
      next = Double.POSITIVE_INFINITY;
    }
  }

  /** Reckons all runs that start up to a time. */
  void reckonTo(double time) {
    while (next <= time) {
      double held = found == 0 ? shoots.onHand() : shoots.end(found - 1);
      double ends = next;
      if (held > across) {
        ends = next + (held - across) / perHour;
        longestLag = Math.max(longestLag, ends - firstShot());
        add(ends, held);
        across = held;
      }
      setNext(ends);
    }
  }

  /** When the first was shot of what the next run brings; on hand counts as shot at 0. */
  private double firstShot() {
    int before = size == 0 ? 0 : shot[size - 1];
    return across < shoots.onHand() ? 0 : shoots.time(before);
  }

  private void add(double ends, double held) {
    if (size == start.length) {
      start = Arrays.copyOf(start, 2 * size);
      end = Arrays.copyOf(end, 2 * size);
      from = Arrays.copyOf(from, 2 * size);
      to = Arrays.copyOf(to, 2 * size);
      shot = Arrays.copyOf(shot, 2 * size);
    }
    start[size] = next;
    end[size] = ends;
    from[size] = across;
    shot[size] = found;
    to[size++] = held;
  }

  /**
   * However many runs were due while one was going, one starts when it ends, if anything came
   * meanwhile; else the next shoot is waited for.
   */
  private void setNext(double ends) {
    double shot = found < shoots.count() ? shoots.time(found) : Double.POSITIVE_INFINITY;
    if (shot < ends) {
      next = Math.max(ends, dueAfter(next));
      finds(false);
    } else if (shot <= horizon) {
      next = dueAfter(shot);
      finds(due == null);
    } else {
      next = Double.POSITIVE_INFINITY;
    }
  }

  private double dueAfter(double time) {
    return due == null ? time : due.after(time);
  }

  /**
   * Whether, as a bound shows without a look at single runs, all that was shot before an instant is
   * across: what was shot at s waits for at most one run that is due, and is across no later than
   * all since then would be after that (Reich's formula for what waits in a queue).
   */
  boolean surelyHasAll(double at) {
    int k = shoots.shotBefore(at) - 1;
    double all = k < 0 ? shoots.onHand() : shoots.end(k);
    double within = at - ROUNDING;
    boolean isLast = true;
    while (k >= 0 && latest(shoots.time(k)) + all / perHour >= within) {
      double run = isLast ? dueAfter(shoots.time(k)) : latest(shoots.time(k));
      if (!(run + (all - shoots.start(k)) / perHour < within)) {
        return false;
      }
      isLast = false;
      k--;
    }
    return k >= 0 || startsFull || latest(0) + all / perHour < within;
  }

  /** When the run that is due next after a time is due at the latest. */
  private double latest(double time) {
    return due == null ? time : Math.max(due.at(), time + due.every());
  }

  /** Moves to an instant; whether what starts and ends at it has done so. */
  void moveTo(double at, boolean inclusive) {
    reckonTo(at);
    int i = Rising.below(start, size, at);
    run = inclusive && i < size && start[i] == at ? i : i - 1;
    going = run >= 0 && (inclusive ? end[run] > at : end[run] >= at);
  }

  double base() {
    if (run < 0) {
      return startsFull ? shoots.onHand() : 0;
    }
    return going ? from[run] : to[run];
  }

  double flowTo() {
    return going ? to[run] : 0;
  }

  double runStart() {
    return going ? start[run] : 0;
  }

  /** What has crossed by a time, from the start of run i on up to that of the next. */
  double carried(int i, double time) {
    if (i < 0) {
      return startsFull ? shoots.onHand() : 0;
    }
    boolean over = end[i] <= time;
    return over ? to[i] : Math.min(to[i], from[i] + perHour * (time - start[i]));
  }

  /** What has crossed at the instant that it was moved to. */
  double carried(double at) {
    return carried(run, at);
  }

  /** The longest, in hours, that anything takes to be across from when it was shot. */
  double longestLag() {
    reckonTo(horizon);
    boolean allFound = size > 0 ? shot[size - 1] == shoots.count() : shoots.count() == 0;
    return allFound ? longestLag : Math.max(longestLag, horizon - firstShot());
  }

  /** How many runs were reckoned. */
  int runs() {
    return size;
  }

  double start(int i) {
    return start[i];
  }

  double end(int i) {
    return end[i];
  }

  /** How many shoots are across when run i has ended. */
  int shot(int i) {
    return shot[i];
  }
}
