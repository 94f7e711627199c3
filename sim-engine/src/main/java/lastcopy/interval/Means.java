package lastcopy.interval;

/** Intervals for ordinary means: exposure, downtime, money, which most histories have some of. */
public final class Means {

  private Means() {}

  /**
   * The mean with Student's interval.
   *
   * <p>Assumes independent histories whose mean is near normal, which holds for amounts that most
   * histories have, not for rare ones: those belong in a {@link MeanTally}.
   *
   * @param n the number of histories, at least 1; for one history nothing bounds the mean and the
   *     interval is infinite
   * @param sum the sum of the amounts, finite
   * @param sumSquares the sum of their squares, finite
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Estimate of(long n, double sum, double sumSquares, double confidence) {
    Proportions.check(0, n);
    if (!Double.isFinite(sum) || !(sumSquares >= 0) || Double.isInfinite(sumSquares)) {
      throw new IllegalArgumentException("sums must be finite: " + sum + ", " + sumSquares);
    }
    double errorRate = Quantiles.errorRate(confidence);
    double mean = sum / n;
    if (n == 1) {
      return new Estimate(mean, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);
    }
    double half =
        Quantiles.student(errorRate, n - 1.0) * Math.sqrt(variance(n, sum, sumSquares) / n);
    return new Estimate(mean, mean - half, mean + half, true);
  }

  /**
   * The same of amounts that are never negative, such as times: no end lies below 0, and of a
   * single one the interval is from 0 to infinity.
   *
   * @param n the number of amounts, at least 1
   * @param sum the sum of the amounts, at least 0
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Estimate ofAmounts(long n, double sum, double sumSquares, double confidence) {
    if (!(sum >= 0)) {
      throw new IllegalArgumentException("a sum of amounts must be at least 0: " + sum);
    }
    Estimate estimate = of(n, sum, sumSquares, confidence);
    return new Estimate(
        estimate.value(), Math.max(0, estimate.low()), estimate.high(), estimate.seen());
  }

  /** The sample variance, with n − 1 and never below 0 by rounding. */
  static double variance(long n, double sum, double sumSquares) {
    return Math.max(0, (sumSquares - sum * (sum / n)) / (n - 1));
  }
}
