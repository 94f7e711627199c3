package lastcopy.history.course;

import lastcopy.footage.Rising;

/**
 * When, on the undisturbed course, some footage stands in one copy only: stretches of time between
 * edges, bare and not bare by turns. Immutable.
 */
public final class BareTimes {

  private final double[] edge;
  private final boolean firstIsBare;

  /**
   * Stretches.
   *
   * @param firstIsBare whether the one before the first edge is bare
   * @param edges in rising order
   */
  public BareTimes(boolean firstIsBare, double... edges) {
    this.firstIsBare = firstIsBare;
    edge = edges.clone();
  }

  /** How many edges. */
  public int edges() {
    return edge.length;
  }

  /** Whether the stretch that ends at the k-th edge is bare. */
  public boolean isBare(int stretch) {
    return firstIsBare == (stretch % 2 == 0);
  }

  /** Whether the stretch that ends at, or goes on over, a time is bare. */
  public boolean bareUntil(double time) {
    return isBare(Rising.below(edge, edge.length, time));
  }

  /** The stretch that begins at, or goes on over, a time. */
  public int stretchFrom(double time) {
    int k = Rising.below(edge, edge.length, time);
    return k < edge.length && edge[k] == time ? k + 1 : k;
  }

  /** The start of a stretch; 0 for the first. */
  public double start(int stretch) {
    return stretch == 0 ? 0 : edge[stretch - 1];
  }

  /** The end of a stretch; infinite for the last. */
  public double end(int stretch) {
    return stretch < edge.length ? edge[stretch] : Double.POSITIVE_INFINITY;
  }
}
