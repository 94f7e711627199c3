package lastcopy.history;

/** What sources did in one history up to its first loss, by group and depth: for tuning a bias. */
public final class Effort {

  private final int[][] events;
  private final double[][] hazard;
  private boolean closed;

  Effort(int groups, int depths) {
    events = new int[groups][depths];
    hazard = new double[groups][depths];
  }

  void clear() {
    closed = false;
    for (int g = 0; g < events.length; g++) {
      java.util.Arrays.fill(events[g], 0);
      java.util.Arrays.fill(hazard[g], 0);
    }
  }

  void happened(int group, int depth, int count) {
    if (!closed) {
      events[group][depth] += count;
    }
  }

  void ran(int group, int depth, double cumulated) {
    if (!closed) {
      hazard[group][depth] += cumulated;
    }
  }

  /** Nothing after the first loss counts. */
  void close() {
    closed = true;
  }

  /** How many events of a group fell while so many things were wrong. */
  public int events(int group, int depth) {
    return events[group][depth];
  }

  /** The unbiased hazard of a group, integrated over the time in which so much was wrong. */
  public double hazard(int group, int depth) {
    return hazard[group][depth];
  }
}
