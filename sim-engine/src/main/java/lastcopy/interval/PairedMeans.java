package lastcopy.interval;

/** The difference of two means of amounts that were drawn in pairs, as far as both have them. */
public final class PairedMeans {

  private PairedMeans() {}

  /**
   * The difference of the means of a and b, with Student's interval at n − 1 degrees of freedom.
   *
   * <p>The i-th of each are a pair; where one has more they are by themselves: Var = s_a²/N_a +
   * s_b²/N_b − 2·n·c/(N_a·N_b), n the pairs and c their covariance. Assumes means near normal.
   *
   * @param a at least 1 amount
   * @param b at least 1 amount
   * @param confidence in (0, 1)
   */
  public static Estimate difference(double[] a, double[] b, double confidence) {
    double value = mean(a, a.length) - mean(b, b.length);
    int pairs = Math.min(a.length, b.length);
    if (pairs < 2) {
      return new Estimate(value, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true);
    }
    double variance =
        covariance(a, a, a.length) / a.length
            + covariance(b, b, b.length) / b.length
            - 2 * covariance(a, b, pairs) / Math.max(a.length, b.length);
    double t = Quantiles.student(Quantiles.errorRate(confidence), pairs - 1.0);
    double half = t * Math.sqrt(Math.max(0, variance));
    return new Estimate(value, value - half, value + half, true);
  }

  private static double mean(double[] x, int n) {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += x[i] - x[0]; // most of it may be alike in all
    }
    return x[0] + sum / n;
  }

  private static double covariance(double[] x, double[] y, int n) {
    double meanX = mean(x, n);
    double meanY = mean(y, n);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += (x[i] - meanX) * (y[i] - meanY);
    }
    return sum / (n - 1);
  }
}
