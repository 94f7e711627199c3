package lastcopy.kernel;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The event queue: a fixed number of timers, each set to one time or to none.
 *
 * <p>Of two timers at one instant the one of the earlier {@link Priority} goes first, then the one
 * of the lower number; the order of setting never decides.
 *
 * <p>A studio has a handful of timers, of which few are set at a time, and many that are set are
 * unset before they are due. So setting writes a time down, and only when what goes next is asked
 * for are those that are set searched, in the blocks touched since, and then the earliest of the
 * blocks taken. For up to some hundred timers that is faster than a heap.
 */
public final class Agenda {

  /** No timer is set. */
  public static final int NONE = -1;

  private static final double UNSET = Double.POSITIVE_INFINITY;
  private static final int BLOCK_BITS = 6;

  private final int[] rank;
  private final double[] time;

  // For each block of timers, which are set, the earliest and whether it has to be searched for.
  private final long[] areSet;
  private final int[] earliest;
  private final boolean[] touched;
  private int next;
  private boolean stale;

  /**
   * An agenda with one timer for each priority given; the number of a timer is its index.
   *
   * @param priorities at least one, none before an earlier one
   * @throws IllegalArgumentException if one is
   */
  @SuppressWarnings("EnumOrdinal") // the order of the constants is what they mean
  public Agenda(Priority[] priorities) {
    int n = priorities.length;
    rank = Arrays.stream(priorities).mapToInt(Priority::ordinal).toArray();
    for (int i = 1; i < n; i++) {
      if (rank[i] < rank[i - 1]) {
        throw new IllegalArgumentException("timers must be numbered by priority: " + i);
      }
    }
    time = new double[n];
    int blocks = ((n - 1) >> BLOCK_BITS) + 1;
    earliest = IntStream.range(0, blocks).map(b -> b << BLOCK_BITS).toArray();
    areSet = new long[blocks];
    touched = new boolean[blocks];
    clear();
  }

  /** Unsets every timer. */
  public void clear() {
    Arrays.fill(time, UNSET);
    Arrays.fill(areSet, 0);
    Arrays.fill(touched, true);
    next = 0;
    stale = false;
  }

  /** Sets a timer, or moves it. */
  public void set(int timer, double at) {
    stale = stale || (timer == next && at > time[timer]);
    time[timer] = at;
    areSet[timer >> BLOCK_BITS] |= 1L << timer;
    touched[timer >> BLOCK_BITS] = true;
    if (at < time[next] || (at == time[next] && timer < next)) { // of no use while stale
      next = timer;
    }
  }

  /** Unsets a timer; nothing if it is not set. */
  public void cancel(int timer) {
    if (isSet(timer)) {
      time[timer] = UNSET;
      areSet[timer >> BLOCK_BITS] &= ~(1L << timer);
      touched[timer >> BLOCK_BITS] = true;
      stale |= timer == next;
    }
  }

  /** Whether a timer is set. */
  public boolean isSet(int timer) {
    return time[timer] != UNSET;
  }

  /** The time that a set timer is set to. */
  public double time(int timer) {
    return time[timer];
  }

  /** The timer that goes next, or {@link #NONE}. */
  public int peek() {
    if (stale) {
      search();
    }
    return time[next] == UNSET ? NONE : next;
  }

  private void search() {
    int best = 0;
    double least = UNSET;
    for (int b = 0; b < earliest.length; b++) {
      if (touched[b]) {
        earliest[b] = searchBlock(b);
        touched[b] = false;
      }
      if (time[earliest[b]] < least) {
        best = earliest[b];
        least = time[best];
      }
    }
    next = best;
    stale = false;
  }

  private int searchBlock(int block) {
    int from = block << BLOCK_BITS;
    int best = from;
    double least = UNSET;
    for (long left = areSet[block]; left != 0; left &= left - 1) {
      int timer = from + Long.numberOfTrailingZeros(left);
      if (time[timer] < least) {
        least = time[timer];
        best = timer;
      }
    }
    return best;
  }

  /** The rank of the priority of a timer. */
  public int rank(int timer) {
    return rank[timer];
  }
}
