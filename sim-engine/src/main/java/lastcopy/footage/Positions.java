package lastcopy.footage;

/** Positions to look at, which somebody else may change: disjoint intervals in rising order. */
public sealed interface Positions permits PositionSet {

  /** How many intervals. */
  int size();

  /** Lower end of interval i. */
  double from(int i);

  /** Upper end of interval i, not included. */
  double to(int i);

  /** Whether there are none. */
  boolean isEmpty();

  /** How many bytes. */
  double bytes();

  /** Whether a position is among them. */
  default boolean contain(double position) {
    for (int i = 0; i < size(); i++) {
      if (from(i) <= position && position < to(i)) {
        return true;
      }
    }
    return false;
  }
}
