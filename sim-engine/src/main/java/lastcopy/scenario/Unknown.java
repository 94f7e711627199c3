package lastcopy.scenario;

/**
 * A rate or a mean of which a file says only between what it lies: lognormal, with its 5th and 95th
 * percentiles at the two ends.
 *
 * @param key the keys that lead to it from the top of the file, joined by dots
 * @param from the lower end as written, above 0
 * @param to the upper end as written, above {@code from}
 * @param unit the unit of both, as written; empty for a factor
 */
public record Unknown(String key, double from, double to, String unit) {

  /** The 95th percentile of the standard normal law. */
  private static final double NORMAL_95 = 1.6448536269514722;

  /** Checks the order. */
  public Unknown {
    Require.text(key, "key");
    Require.above(from, 0, "lower end");
    Require.above(to, from, "upper end");
  }

  /**
   * The value that stands at a point of the standard normal law.
   *
   * @param low the 5th percentile, above 0
   * @param high the 95th percentile, above {@code low}
   * @param z a standard normal deviate; 0 is the median
   */
  public static double between(double low, double high, double z) {
    double middle = (StrictMath.log(low) + StrictMath.log(high)) / 2;
    double deviation = (StrictMath.log(high) - StrictMath.log(low)) / (2 * NORMAL_95);
    return StrictMath.exp(middle + deviation * z);
  }
}
