package lastcopy.interval;

/**
 * The mean over histories of an amount that may be skewed and heavy-tailed, from the sums of its
 * powers.
 *
 * <p>Its interval is, at each end, the wider of two. One takes ln(mean) as normal (delta method);
 * the other corrects for skewness (the cubic transformation of Hall, JRSS B 54 (1992) 221-228).
 * Both with Student's quantile at (Σx²)²/Σx⁴ degrees of freedom, about the mean: how many amounts
 * the variance itself rests on, so that heavy tails widen them.
 */
final class SkewedMean {

  private final long histories;
  private final double mean;
  private final double variance;
  private final double third;
  private final double fourth;

  /**
   * A mean.
   *
   * @param histories at least 1
   * @param powers the sums of the first to the fourth power of the amounts, at 1 to 4
   */
  SkewedMean(long histories, double[] powers) {
    this.histories = histories;
    double m = powers[1] / histories;
    double squares = powers[2] / histories;
    double cubes = powers[3] / histories;
    mean = m;
    variance = squares - m * m;
    third = cubes - 3 * m * squares + 2 * m * m * m;
    fourth = powers[4] / histories - 4 * m * cubes + 6 * m * m * squares - 3 * m * m * m * m;
  }

  /** Variance of one history over the square of the mean. */
  double relativeVariance() {
    return variance / (mean * mean);
  }

  /** How many amounts the variance rests on, at least 1. */
  double restsOn() {
    return Math.max(1, histories * (variance * variance / fourth));
  }

  /** The mean and its interval; exact where every history has the same amount. */
  Estimate estimate(double errorRate) {
    if (!(variance > 0)) {
      return Estimate.exact(mean);
    }
    double deviation = Math.sqrt(variance / (histories - 1.0)) / mean;
    double t = Level.student(errorRate, restsOn());
    double skewness = third / (variance * Math.sqrt(variance)) / Math.sqrt((double) histories);
    double factor = StrictMath.exp(t * deviation);
    double low = Math.min(1 / factor, 1 - deviation * cubic(t, skewness));
    double high = Math.max(factor, 1 - deviation * cubic(-t, skewness));
    // Markov's bound is never the tighter one by luck: it keeps a low end above 0.
    return new Estimate(mean, mean * Math.max(errorRate / 2, Math.min(1, low)), mean * high, true);
  }

  /** Hall's inverse transformation; skewness over the root of the number of histories. */
  private static double cubic(double t, double skewness) {
    if (Math.abs(skewness) < 1e-9) {
      return t;
    }
    return 3 / skewness * (StrictMath.cbrt(1 + skewness * (t - skewness / 6)) - 1);
  }
}
