package lastcopy.exact;

import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * Drives of one batch: one multiplier Z on all their hazards, gamma with mean 1 and a variance
 * (shared frailty; Clayton, Biometrika 65(1), 1978; Hougaard, Analysis of Multivariate Survival
 * Data, 2000, chapter 7). Given that the batch has survived a cumulative hazard A, Z is gamma of
 * shape 1/v and rate 1/v + A.
 *
 * @param spread v, the variance of Z, above 0
 * @param survivedHazard A, what the cumulative hazards of all its drives add up to so far, at least
 *     0
 */
public record SharedFrailty(double spread, double survivedHazard) {

  /** Checks the ranges. */
  public SharedFrailty {
    Parameters.above(spread, "spread");
    Parameters.atLeastZero(survivedHazard, "hazard survived");
  }

  /** A batch of new drives. */
  public SharedFrailty(double spread) {
    this(spread, 0);
  }

  /**
   * The chance that no drive fails, E[e^(−Zh)] = (1 + h/(1/v + A))^(−1/v).
   *
   * @param hazard h, what the cumulative hazards of the drives asked for add up to from now on, at
   *     least 0
   */
  public double survival(double hazard) {
    Parameters.atLeastZero(hazard, "hazard");
    return Math.exp(-Math.log1p(hazard / (1 / spread + survivedHazard)) / spread);
  }

  /**
   * The chance that each of two drives fails.
   *
   * @param one cumulative hazard of the first from now on, at least 0
   * @param other of the second, at least 0
   */
  public double bothFail(double one, double other) {
    return 1 - survival(one) - survival(other) + survival(one + other);
  }

  /**
   * The chance that more than m of n like drives fail, none being repaired.
   *
   * @param drives n, at least 1
   * @param survives m, in [0, n)
   * @param hazardEach cumulative hazard of each from now on, at least 0
   */
  public double moreThanFail(int drives, int survives, double hazardEach) {
    double atMost = 0;
    for (int down = 0; down <= survives; down++) {
      double exactly = 0;
      for (int i = 0; i <= down; i++) {
        exactly +=
            (i % 2 == 0 ? 1 : -1)
                * CombinatoricsUtils.binomialCoefficientDouble(down, i)
                * survival((drives - down + i) * hazardEach);
      }
      atMost += CombinatoricsUtils.binomialCoefficientDouble(drives, down) * exactly;
    }
    return 1 - atMost;
  }

  /**
   * The chance that two pairs of new drives, each pair of one batch, agree on which of its drives
   * lives longer: (1 + τ)/2 with Kendall's τ = v/(v + 2), whatever the law of life (Oakes, JRSS B
   * 44(3), 1982).
   */
  public double concordance() {
    return (1 + spread / (spread + 2)) / 2;
  }
}
