package lastcopy.interval;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;

/**
 * Exact intervals for a proportion: how often something happened in so many histories.
 *
 * <p>Assumes independent histories, a number of them that was not chosen by looking at the outcome,
 * and nothing else: Clopper and Pearson, Biometrika 26 (1934) 404-413, cover at least as often as
 * they say for every true proportion, however rare.
 */
public final class Proportions {

  private Proportions() {}

  /**
   * The share of successes with its interval.
   *
   * <p>If there was none, the limit is one-sided and exact, 1 − (1 − confidence)^(1/n), about 3/n
   * at 95 % (the rule of three: Hanley, Lippman-Hand, JAMA 249, 1983). One-sided there and
   * two-sided elsewhere, the whole procedure errs at most 1.5 times as often as stated, just above
   * that limit.
   *
   * @param successes from 0 to {@code n}
   * @param n the number of independent histories, at least 1
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Estimate of(long successes, long n, double confidence) {
    check(successes, n);
    double errorRate = Quantiles.errorRate(confidence);
    if (successes == 0) {
      return new Estimate(0, 0, upperOfNone(n, errorRate), false);
    }
    double value = (double) successes / n;
    double low = Math.min(value, lower(successes, n, errorRate / 2));
    double high = Math.max(value, upper(successes, n, errorRate / 2));
    return new Estimate(value, low, high, true);
  }

  /**
   * The one-sided upper limit after no success: solves (1 − p)^n = error rate.
   *
   * @param n at least 1
   * @param errorRate in (0, 1)
   */
  public static double upperOfNone(long n, double errorRate) {
    return -Math.expm1(Math.log(errorRate) / n);
  }

  /** The exact one-sided lower limit: at it, that many successes or more have the error rate. */
  static double lower(long successes, long n, double errorRate) {
    if (successes == 0) {
      return 0;
    }
    if (n > Integer.MAX_VALUE) {
      return BetaDistribution.of((double) successes, n - successes + 1.0)
          .inverseCumulativeProbability(errorRate);
    }
    return BinomialConfidenceInterval.CLOPPER_PEARSON
        .fromErrorRate((int) n, (int) successes, 2 * errorRate)
        .getLowerBound();
  }

  /** The exact one-sided upper limit: at it, that many successes or fewer have the error rate. */
  static double upper(long successes, long n, double errorRate) {
    if (successes == 0) {
      return upperOfNone(n, errorRate);
    }
    if (successes == n) {
      return 1;
    }
    if (n > Integer.MAX_VALUE) {
      return BetaDistribution.of(successes + 1.0, (double) n - successes)
          .inverseSurvivalProbability(errorRate);
    }
    return BinomialConfidenceInterval.CLOPPER_PEARSON
        .fromErrorRate((int) n, (int) successes, 2 * errorRate)
        .getUpperBound();
  }

  static void check(long successes, long n) {
    if (n < 1) {
      throw new IllegalArgumentException("number of histories must be at least 1: " + n);
    }
    if (successes < 0 || successes > n) {
      throw new IllegalArgumentException(
          "successes must be from 0 to " + n + " (the number of histories): " + successes);
    }
  }
}
