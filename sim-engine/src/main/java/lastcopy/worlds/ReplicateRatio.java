package lastcopy.worlds;

import java.util.Arrays;
import java.util.OptionalDouble;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;
import lastcopy.interval.RatioEstimate;
import lastcopy.worlds.surface.Jackknife;

/** Two chances from replicates that share their worlds: what they share cancels. */
final class ReplicateRatio {

  private ReplicateRatio() {}

  /**
   * The ratio and the difference of two chances.
   *
   * @param a by replicate, not all 0
   * @param b by the same replicates
   */
  static RatioEstimate of(double[] a, double[] b, double confidence) {
    double[] without = new double[a.length];
    Arrays.setAll(without, r -> log(a, r) - log(b, r));
    Estimate log = Jackknife.of(log(a, -1) - log(b, -1), without, confidence);
    return new RatioEstimate(
        OptionalDouble.of(StrictMath.exp(log.value())),
        OptionalDouble.of(StrictMath.exp(log.low())),
        OptionalDouble.of(StrictMath.exp(log.high())),
        difference(a, b, confidence));
  }

  /** The logarithm of the mean of all but one. */
  private static double log(double[] chances, int without) {
    double sum = 0;
    for (int r = 0; r < chances.length; r++) {
      sum += r == without ? 0 : chances[r];
    }
    return StrictMath.log(sum / (without < 0 ? chances.length : chances.length - 1));
  }

  private static Estimate difference(double[] a, double[] b, double confidence) {
    double sum = 0;
    double squares = 0;
    for (int r = 0; r < a.length; r++) {
      sum += a[r] - b[r];
      squares += (a[r] - b[r]) * (a[r] - b[r]);
    }
    return Means.of(a.length, sum, squares, confidence);
  }
}
