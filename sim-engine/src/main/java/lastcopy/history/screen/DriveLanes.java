package lastcopy.history.screen;

import lastcopy.history.plan.Draws;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Delay;

/**
 * Drives of a set in {@link HistoryLanes}, each at a time of its own, which take the same steps
 * together. Loops are short and without a branch on what is drawn, so that a processor overlaps
 * what it does for one drive with what it does for the next.
 */
final class DriveLanes {

  private final HistoryLanes histories;
  private final long[] source;
  private final long[] key;
  private final int[] history;
  private final int[] drive;
  private final double[] time;
  private final double[] draw;
  private int size;

  /**
   * No drives yet.
   *
   * @param source of each drive of the set
   */
  DriveLanes(HistoryLanes histories, long[] source) {
    this.histories = histories;
    this.source = source;
    key = new long[source.length];
    int most = HistoryLanes.SIZE * source.length;
    history = new int[most];
    drive = new int[most];
    time = new double[most];
    draw = new double[most];
  }

  void clear() {
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  /** A drive in some histories, each at time 0. */
  void add(int ofSet, long who) {
    for (long left = who; left != 0; left &= left - 1) {
      history[size] = Long.numberOfTrailingZeros(left);
      drive[size] = ofSet;
      time[size++] = 0;
    }
  }

  /** Each draws for the n-th time for a use what is left of a law at an age, and waits for it. */
  void passes(Law law, double age, int use, int n) {
    if (law instanceof Fixed fixed) {
      passes(fixed.remaining(age, 0));
      return;
    }
    take(use, n);
    for (int j = 0; j < size; j++) {
      time[j] += law.remaining(age, draw[j]);
    }
  }

  /** So many hours pass for each. */
  void passes(double hours) {
    if (hours > 0) {
      for (int j = 0; j < size; j++) {
        time[j] += hours;
      }
    }
  }

  /** Each, whose time was its age, is at the end of its first life. */
  void firstLifePasses(Law law) {
    take(Draws.LIFE, 0);
    for (int j = 0; j < size; j++) {
      time[j] = law.remaining(time[j], draw[j]);
    }
  }

  /** Each waits for somebody to look by the clock. */
  void waitsForLook(Delay.Looks looks) {
    for (int j = 0; j < size; j++) {
      time[j] += looks.hoursUntilNext(time[j]);
    }
  }

  private void take(int use, int n) {
    makeKeys(use, n);
    for (int j = 0; j < size; j++) {
      draw[j] = Draws.budget(histories.historyKey(history[j]), key[drive[j]]);
    }
  }

  private void makeKeys(int use, int n) {
    for (int d = 0; d < key.length; d++) {
      key[d] = Draws.key(source[d], use, n);
    }
  }

  /** Drops those whose uniform for the n-th draw for a use is below a limit. */
  void keepAtLeast(double limit, int use, int n) {
    makeKeys(use, n);
    long below = HistoryLanes.below(limit);
    int kept = 0;
    for (int j = 0; j < size; j++) {
      long keeps = histories.isAtLeast(below, history[j], key[drive[j]]);
      move(j, kept);
      kept += (int) keeps;
    }
    size = kept;
  }

  /** Drops those whose time is after a limit. */
  void keepBy(double limit) {
    int kept = 0;
    for (int j = 0; j < size; j++) {
      // The sign of the difference, since of a branch a processor would guess every fifth wrong.
      long keeps = ~Double.doubleToRawLongBits(limit - time[j]) >>> (Long.SIZE - 1);
      move(j, kept);
      kept += (int) keeps;
    }
    size = kept;
  }

  private void move(int from, int to) {
    history[to] = history[from];
    drive[to] = drive[from];
    time[to] = time[from];
  }

  /** Writes down the time of each. */
  void times(double[] to) {
    System.arraycopy(time, 0, to, 0, size);
  }

  /** Each was down from a time until now. */
  void wereDown(double[] from, Downtimes downtimes) {
    downtimes.add(size, history, from, time);
  }
}
