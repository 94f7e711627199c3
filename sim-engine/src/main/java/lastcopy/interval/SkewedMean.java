package lastcopy.interval;

/**
 * The mean over histories of an amount that may be skewed and heavy-tailed, from the sums of its
 * powers.
 *
 * <p>Histories may come from several strata (Cochran, Sampling Techniques, 3rd ed. 1977, 5.3): the
 * cumulants of the mean are then the sums of those within strata.
 *
 * <p>Its interval corrects for skewness (the cubic transformation of Hall, JRSS B 54 (1992)
 * 221-228); the high end is at least that at which ln(mean) is normal (delta method), since heavy
 * amounts may not have been seen yet. Both with Student's quantile at (Σx²)²/Σx⁴ degrees of
 * freedom, about the mean: how many amounts the variance itself rests on, so that heavy tails widen
 * it.
 */
final class SkewedMean {

  /** Strata with fewer histories say nothing by themselves; then all are taken as one. */
  private static final long LEAST_OF_STRATUM = 30;

  private final double histories;
  private final double mean;
  private final double second;
  private final double third;
  private final double fourth;

  private SkewedMean(SumsOfPowers... strata) {
    long count = 0;
    double sum = 0;
    double[] central = new double[5];
    for (SumsOfPowers stratum : strata) {
      count += stratum.histories();
      sum += stratum.sum(1);
      for (int k = 2; k < central.length; k++) {
        central[k] += stratum.central(k);
      }
    }
    histories = count;
    mean = sum / count;
    second = central[2];
    third = central[3];
    fourth = central[4];
  }

  /**
   * A mean over all histories of strata whose shares were fixed beforehand: only what differs
   * within them is luck.
   *
   * @param strata together of at least 1 history
   */
  static SkewedMean of(SumsOfPowers... strata) {
    SumsOfPowers all = new SumsOfPowers();
    boolean each = true;
    for (SumsOfPowers stratum : strata) {
      all.merge(stratum);
      each &= stratum.histories() == 0 || stratum.histories() >= LEAST_OF_STRATUM;
    }
    return each ? new SkewedMean(strata) : new SkewedMean(all);
  }

  /** Variance of one history over the square of the mean. */
  double relativeVariance() {
    return second / histories / (mean * mean);
  }

  /** How many amounts the variance rests on, at least 1. */
  double restsOn() {
    return Math.max(1, second * (second / fourth));
  }

  /** The mean and its interval; exact where every history has the same amount. */
  Estimate estimate(double errorRate) {
    if (!(second > 0)) {
      return Estimate.exact(mean);
    }
    double deviation = Math.sqrt(second / histories / (histories - 1)) / mean;
    double t = Quantiles.student(errorRate, restsOn());
    double skewness = third / (second * Math.sqrt(second)); // of the mean, not of one history
    double low = 1 - deviation * cubic(t, skewness);
    double high = Math.max(StrictMath.exp(t * deviation), 1 - deviation * cubic(-t, skewness));
    // Markov's bound is never the tighter one by luck: it keeps a low end above 0.
    return new Estimate(mean, mean * Math.max(errorRate / 2, Math.min(1, low)), mean * high, true);
  }

  /** Hall's inverse transformation, by the skewness of the mean. */
  static double cubic(double t, double skewness) {
    if (Math.abs(skewness) < 1e-9) {
      return t;
    }
    return 3 / skewness * (StrictMath.cbrt(1 + skewness * (t - skewness / 6)) - 1);
  }
}
