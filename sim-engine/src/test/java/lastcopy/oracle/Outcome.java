package lastcopy.oracle;

import java.util.HashMap;
import java.util.Map;

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
  final Map<String, Double> paid = new HashMap<>();
}
