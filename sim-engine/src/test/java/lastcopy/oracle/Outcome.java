package lastcopy.oracle;

/** What one history came to. */
final class Outcome {
  int events;
  double bytes;
  boolean everything;
  double bareHours;
  double fragileHours;
  double awayHours;
  double refillHours;
  double mostBare;
}
