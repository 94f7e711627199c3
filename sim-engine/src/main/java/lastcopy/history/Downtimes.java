package lastcopy.history;

import java.util.Arrays;

/** When drives of a set were down, in each history of a {@link Block}. */
final class Downtimes {

  /** Beyond so many failures of a set in one history the general path takes over. */
  static final int MOST_FAILURES = 256;

  private final int survives;
  private final double stretchesPerHour;
  private final int[] count = new int[Block.SIZE];

  /** The n-th of history i at n · SIZE + i. */
  private double[] failedAt = new double[4 * Block.SIZE];

  private double[] wholeAt = new double[4 * Block.SIZE];

  /**
   * The horizon in 64 stretches, each a bit: those of history i in which at least n + 1 drives were
   * down, perhaps not at once, at n · SIZE + i.
   */
  private final long[] touched;

  private long tooManyToTell;

  Downtimes(int survives, double horizon) {
    this.survives = survives;
    stretchesPerHour = Long.SIZE / horizon;
    touched = new long[(survives + 1) * Block.SIZE];
  }

  void clear() {
    Arrays.fill(count, 0);
    Arrays.fill(touched, 0);
    tooManyToTell = 0;
  }

  /** In history i a drive was down, from a time up to the horizon. */
  void add(int i, double failed, double whole) {
    int n = count[i] * Block.SIZE + i;
    if (n >= failedAt.length && !grow()) {
      tooManyToTell |= 1L << i;
      return;
    }
    count[i]++;
    failedAt[n] = failed;
    wholeAt[n] = whole;
    touch(i, stretches(failed, whole));
  }

  private boolean grow() {
    if (failedAt.length == MOST_FAILURES * Block.SIZE) {
      return false;
    }
    failedAt = Arrays.copyOf(failedAt, 2 * failedAt.length);
    wholeAt = Arrays.copyOf(wholeAt, failedAt.length);
    return true;
  }

  private long stretches(double from, double to) {
    int first = Math.min((int) (from * stretchesPerHour), Long.SIZE - 1);
    int last = Math.min((int) (to * stretchesPerHour), Long.SIZE - 1);
    return -1L << first & -1L >>> (Long.SIZE - 1 - last);
  }

  private void touch(int i, long stretches) {
    for (int n = survives * Block.SIZE + i; n >= Block.SIZE; n -= Block.SIZE) {
      touched[n] |= touched[n - Block.SIZE] & stretches;
    }
    touched[i] |= stretches;
  }

  /**
   * The histories in which too many drives were down at once, or that are not known well enough.
   */
  long tooMany() {
    long all = tooManyToTell;
    for (int i = 0; i < Block.SIZE; i++) {
      if (touched[survives * Block.SIZE + i] != 0 && tooMany(i)) {
        all |= 1L << i;
      }
    }
    return all;
  }

  private boolean tooMany(int history) {
    int end = count[history] * Block.SIZE;
    for (int i = history; i < end; i += Block.SIZE) {
      double at = failedAt[i];
      int down = 0;
      for (int j = history; j < end; j += Block.SIZE) {
        down += failedAt[j] <= at && at <= wholeAt[j] ? 1 : 0;
      }
      if (down > survives) {
        return true;
      }
    }
    return false;
  }
}
