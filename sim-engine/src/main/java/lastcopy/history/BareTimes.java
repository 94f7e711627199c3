package lastcopy.history;

import lastcopy.footage.Rising;

/**
 * When, on the undisturbed course, some footage stands in one copy only: stretches of time between
 * edges, bare and not bare by turns. Immutable.
 */
final class BareTimes {

  private final double[] edge;
  private final boolean firstIsBare;

  /**
   * Stretches.
   *
   * @param firstIsBare whether the one before the first edge is bare
   * @param edges in rising order
   */
  BareTimes(boolean firstIsBare, double... edges) {
    this.firstIsBare = firstIsBare;
    edge = edges.clone();
  }

  /** How many edges. */
  int edges() {
    return edge.length;
  }

  /** Whether the stretch that ends at the k-th edge is bare. */
  boolean isBare(int stretch) {
    return firstIsBare == (stretch % 2 == 0);
  }

  /** Whether the stretch that ends at, or goes on over, a time is bare. */
  boolean bareUntil(double time) {
    return isBare(Rising.below(edge, edge.length, time));
  }

  /** The stretch that begins at, or goes on over, a time. */
  int stretchFrom(double time) {
    int k = Rising.below(edge, edge.length, time);
    return k < edge.length && edge[k] == time ? k + 1 : k;
  }

  /** The start of a stretch; 0 for the first. */
  double start(int stretch) {
    return stretch == 0 ? 0 : edge[stretch - 1];
  }

  /** The end of a stretch; infinite for the last. */
  double end(int stretch) {
    return stretch < edge.length ? edge[stretch] : Double.POSITIVE_INFINITY;
  }
}
