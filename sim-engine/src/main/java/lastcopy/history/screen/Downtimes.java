package lastcopy.history.screen;

import java.util.Arrays;

/** When drives of a set were down, in each history of {@link HistoryLanes}. */
final class Downtimes {

  /** Beyond so many failures of a set in a history, on average, the general path takes over. */
  private static final int MOST_FAILURES = 256;

  private static final int NONE = -1;

  private final int survives;
  private final double stretchesPerHour;
  private double[] failedAt = new double[4 * HistoryLanes.SIZE];
  private double[] wholeAt = new double[4 * HistoryLanes.SIZE];

  // Those of one history that fall into crowded stretches.
  private double[] failed = new double[4 * HistoryLanes.SIZE];
  private double[] whole = new double[4 * HistoryLanes.SIZE];

  /** By failure, the one before it in its history. */
  private int[] before = new int[4 * HistoryLanes.SIZE];

  /** By history, its last failure. */
  private final int[] last = new int[HistoryLanes.SIZE];

  private int size;

  /**
   * The horizon in 64 stretches, each a bit: those of history i in which at least n + 1 drives were
   * down, perhaps not at once, at n · SIZE + i.
   */
  private final long[] touched;

  Downtimes(int survives, double horizon) {
    this.survives = survives;
    stretchesPerHour = Long.SIZE / horizon;
    touched = new long[(survives + 1) * HistoryLanes.SIZE];
  }

  void clear() {
    Arrays.fill(last, NONE);
    Arrays.fill(touched, 0);
    size = 0;
  }

  /** Whether it holds more than it should search. */
  boolean areTooManyToTell() {
    return size > MOST_FAILURES * HistoryLanes.SIZE;
  }

  /**
   * Drives were down.
   *
   * @param count how many
   * @param history of each
   * @param from when each failed, up to the horizon
   * @param to when it was whole again
   */
  void add(int count, int[] history, double[] from, double[] to) {
    makeRoom(size + count);
    System.arraycopy(from, 0, failedAt, size, count);
    System.arraycopy(to, 0, wholeAt, size, count);
    for (int j = 0; j < count; j++) {
      int i = history[j];
      before[size + j] = last[i];
      last[i] = size + j;
      touch(i, stretches(from[j], to[j]));
    }
    size += count;
  }

  private void makeRoom(int failures) {
    if (failures > failedAt.length) {
      int room = Math.max(failures, 2 * failedAt.length);
      failedAt = Arrays.copyOf(failedAt, room);
      wholeAt = Arrays.copyOf(wholeAt, room);
      before = Arrays.copyOf(before, room);
      failed = new double[room];
      whole = new double[room];
    }
  }

  private long stretches(double from, double to) {
    int first = Math.min((int) (from * stretchesPerHour), Long.SIZE - 1);
    int last = Math.min((int) (to * stretchesPerHour), Long.SIZE - 1);
    return -1L << first & -1L >>> (Long.SIZE - 1 - last);
  }

  private void touch(int i, long stretches) {
    for (int n = survives * HistoryLanes.SIZE + i; n >= HistoryLanes.SIZE; n -= HistoryLanes.SIZE) {
      touched[n] |= touched[n - HistoryLanes.SIZE] & stretches;
    }
    touched[i] |= stretches;
  }

  /** The histories in which too many drives were down at once. */
  long tooMany() {
    long all = 0;
    for (int i = 0; i < HistoryLanes.SIZE; i++) {
      long crowded = touched[survives * HistoryLanes.SIZE + i];
      if (crowded != 0 && tooMany(crowded, last[i])) {
        all |= 1L << i;
      }
    }
    return all;
  }

  private boolean tooMany(long crowded, int lastOfHistory) {
    int n = 0;
    for (int i = lastOfHistory; i != NONE; i = before[i]) {
      // Only where so many were down in a stretch at all, or the cost would grow as a square.
      if ((stretches(failedAt[i], wholeAt[i]) & crowded) != 0) {
        failed[n] = failedAt[i];
        whole[n++] = wholeAt[i];
      }
    }
    for (int i = 0; i < n; i++) {
      if (downAt(failed[i], n) > survives) {
        return true;
      }
    }
    return false;
  }

  private int downAt(double at, int among) {
    int down = 0;
    for (int j = 0; j < among; j++) {
      if (failed[j] <= at && at <= whole[j]) {
        down++;
      }
    }
    return down;
  }
}
