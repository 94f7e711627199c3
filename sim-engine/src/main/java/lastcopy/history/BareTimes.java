package lastcopy.history;

import java.util.Arrays;

/**
 * When, on the undisturbed course, some footage stands in one copy only: stretches of time between
 * edges, bare and not bare by turns. Immutable.
 */
final class BareTimes {

  private final double[] edge;
  private final double[] bareBefore;
  private final boolean firstIsBare;

  /**
   * Stretches.
   *
   * @param firstIsBare whether the one before the first edge is bare
   * @param edges in rising order
   */
  BareTimes(boolean firstIsBare, double[] edges) {
    this.firstIsBare = firstIsBare;
    edge = edges.clone();
    bareBefore = new double[edge.length];
    double last = 0;
    for (int k = 0; k < edge.length; k++) {
      bareBefore[k] =
          (k == 0 ? 0 : bareBefore[k - 1]) + (isBare(k) ? Math.max(0, edge[k] - last) : 0);
      last = edge[k];
    }
  }

  /** Whether the stretch that ends at the k-th edge is bare. */
  boolean isBare(int stretch) {
    return firstIsBare == (stretch % 2 == 0);
  }

  /** Whether the stretch that ends at, or goes on over, a time is bare. */
  boolean bareUntil(double time) {
    int at = Arrays.binarySearch(edge, time);
    return isBare(at >= 0 ? at : -at - 1);
  }

  /** The stretch that begins at, or goes on over, a time. */
  int stretchFrom(double time) {
    int at = Arrays.binarySearch(edge, time);
    return at >= 0 ? at + 1 : -at - 1;
  }

  /** The end of a stretch; infinite for the last. */
  double end(int stretch) {
    return stretch < edge.length ? edge[stretch] : Double.POSITIVE_INFINITY;
  }

  /** Bare hours from 0 to a time. */
  double hours(double until) {
    int k = stretchFrom(until);
    double before = k == 0 ? 0 : bareBefore[k - 1];
    return before + (isBare(k) ? until - (k == 0 ? 0 : edge[k - 1]) : 0);
  }

  /**
   * When a weighted time from 0 reaches a value: hours that are not bare count {@code other} each,
   * bare ones {@code bare}.
   *
   * @param other at least 0
   * @param bare at least 0
   */
  double when(double other, double bare, double value) {
    int low = 0;
    int high = edge.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (other * edge[middle] + (bare - other) * bareBefore[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    double from = low == 0 ? 0 : edge[low - 1];
    double before = low == 0 ? 0 : other * from + (bare - other) * bareBefore[low - 1];
    return Math.min(end(low), from + Math.max(0, value - before) / (isBare(low) ? bare : other));
  }
}
