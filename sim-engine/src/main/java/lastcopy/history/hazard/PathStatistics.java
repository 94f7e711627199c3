package lastcopy.history.hazard;

import java.util.Arrays;

/**
 * What sources did in one history up to its first loss, by group and level of trouble: for tuning a
 * bias by cross-entropy.
 */
public final class PathStatistics {

  private final int[][] events;
  private final double[][] hazard;
  private double places;
  private boolean closed;

  PathStatistics(int groups, int levels) {
    events = new int[groups][levels];
    hazard = new double[groups][levels];
  }

  void clear() {
    closed = false;
    places = 0;
    for (int g = 0; g < events.length; g++) {
      Arrays.fill(events[g], 0);
      Arrays.fill(hazard[g], 0);
    }
  }

  void happened(int group, int level, int count) {
    if (!closed) {
      events[group][level] += count;
    }
  }

  void ran(int group, int level, double cumulated) {
    if (!closed) {
      hazard[group][level] += cumulated;
    }
  }

  void placed(double logRatio) {
    if (!closed) {
      places += logRatio;
    }
  }

  /** Nothing after the first loss counts. */
  void close() {
    closed = true;
  }

  /** How many events of a group fell at a level. */
  public int events(int group, int level) {
    return events[group][level];
  }

  /** The unbiased hazard of a group, integrated over the time at a level. */
  public double hazard(int group, int level) {
    return hazard[group][level];
  }

  /**
   * The logarithm of the likelihood ratio of where things were put; it is the same for any bias.
   */
  public double places() {
    return places;
  }
}
