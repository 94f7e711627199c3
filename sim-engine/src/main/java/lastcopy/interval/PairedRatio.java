package lastcopy.interval;

import java.util.OptionalDouble;

/**
 * The ratio of the chances of loss of two layouts whose first histories share their luck.
 *
 * <p>Three intervals, the first that fits:
 *
 * <ul>
 *   <li>many losses: ln(ratio) is taken as normal, with the variance of both chances less twice
 *       their covariance over the histories that both have (delta method);
 *   <li>few discordant histories (under 20), most losses in paired ones: exact, conditional on the
 *       histories in which either lost;
 *   <li>otherwise: the quotient of the exact limits of the two chances, each at half the error rate
 *       (Bonferroni), which is right whatever the pairing.
 * </ul>
 */
public final class PairedRatio {

  // Under this many the normal approximation of a logarithm is too narrow.
  private static final long FEW = 20;

  private PairedRatio() {}

  /**
   * Compares layout a with layout b.
   *
   * @param nA the histories of a, at least 1
   * @param lossesA those with a loss
   * @param nB the histories of b, at least 1
   * @param lossesB those with a loss
   * @param paired the first histories, that both have
   * @param both paired histories in which both lost
   * @param onlyA paired histories in which only a lost
   * @param onlyB paired histories in which only b lost
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if the counts contradict each other
   */
  public static RatioEstimate of(
      long nA,
      long lossesA,
      long nB,
      long lossesB,
      long paired,
      long both,
      long onlyA,
      long onlyB,
      double confidence) {
    PairedCounts counts = new PairedCounts(nA, lossesA, nB, lossesB, paired, both, onlyA, onlyB);
    double errorRate = Quantiles.errorRate(confidence);
    Estimate difference = PairedDifference.of(counts, errorRate);
    if (lossesA == 0 || lossesB == 0) {
      return bound(counts, errorRate, difference);
    }
    double ratio = counts.chanceA() / counts.chanceB();
    double[] ends = ends(counts, ratio, errorRate);
    return new RatioEstimate(
        OptionalDouble.of(ratio),
        OptionalDouble.of(Math.min(ratio, ends[0])),
        OptionalDouble.of(Math.max(ratio, ends[1])),
        difference);
  }

  private static RatioEstimate bound(PairedCounts c, double errorRate, Estimate difference) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble low = c.lossesA() == 0 ? none : OptionalDouble.of(unpaired(c, errorRate, false));
    OptionalDouble high = c.lossesB() == 0 ? none : OptionalDouble.of(unpaired(c, errorRate, true));
    return new RatioEstimate(none, low, high, difference);
  }

  private static double[] ends(PairedCounts c, double ratio, double errorRate) {
    long discordant = c.onlyA() + c.onlyB();
    if (discordant < FEW && c.mostLossesPaired()) {
      return conditional(c, errorRate);
    }
    if (discordant < FEW || Math.min(c.lossesA(), c.lossesB()) < FEW) {
      double half = errorRate / 2;
      return new double[] {unpaired(c, half, false), unpaired(c, half, true)};
    }
    double factor = Math.exp(Quantiles.normal(errorRate) * Math.sqrt(c.varianceOfLogRatio()));
    return new double[] {ratio / factor, ratio * factor};
  }

  /** A one-sided limit at the error rate: the quotient of two limits at half of it. */
  private static double unpaired(PairedCounts c, double errorRate, boolean upper) {
    double tail = errorRate / 2;
    return upper
        ? Proportions.upper(c.lossesA(), c.nA(), tail)
            / Proportions.lower(c.lossesB(), c.nB(), tail)
        : Proportions.lower(c.lossesA(), c.nA(), tail)
            / Proportions.upper(c.lossesB(), c.nB(), tail);
  }

  /**
   * Given the histories in which either lost, q is the share of discordant ones, and pi the share
   * of a among those: ratio = (1 − q + q·pi)/(1 − q + q·(1 − pi)). Exact limits of each at half the
   * error rate; the ratio rises with pi, and moves away from 1 as q rises.
   */
  private static double[] conditional(PairedCounts c, double errorRate) {
    long discordant = c.onlyA() + c.onlyB();
    long either = discordant + c.both();
    double tail = errorRate / 4;
    double qLow = Proportions.lower(discordant, either, tail);
    double qHigh = Proportions.upper(discordant, either, tail);
    double piLow = discordant == 0 ? 0 : Proportions.lower(c.onlyA(), discordant, tail);
    double piHigh = discordant == 0 ? 1 : Proportions.upper(c.onlyA(), discordant, tail);
    return new double[] {
      Math.min(ratioAt(qLow, piLow), ratioAt(qHigh, piLow)),
      Math.max(ratioAt(qLow, piHigh), ratioAt(qHigh, piHigh))
    };
  }

  private static double ratioAt(double q, double pi) {
    return (1 - q * (1 - pi)) / (1 - q * pi);
  }
}
