package lastcopy.interval;

/** Intervals for the share that a cause has of what was lost. */
public final class Shares {

  private Shares() {}

  /**
   * A cause's share of the loss events, exact (Clopper-Pearson) given their number.
   *
   * <p>Assumes events independent of each other, which holds where a history with a loss has one
   * event, as nearly all have; several events of one history make the interval a little too narrow.
   *
   * @param events the events of this cause
   * @param all the events of all causes; 0 gives a share of 0 to 1, not seen
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Estimate ofEvents(long events, long all, double confidence) {
    if (all == 0 && events == 0) {
      Quantiles.errorRate(confidence);
      return new Estimate(0, 0, 1, false);
    }
    return Proportions.of(events, all, confidence);
  }

  /**
   * A share of amounts: the sum of x over the sum of y, where 0 ≤ x ≤ y in each history (bytes lost
   * by this cause, bytes lost).
   *
   * <p>Delta method for a ratio of sums, ln(share/(1 − share)) taken as normal (Cochran, Sampling
   * Techniques, 3rd ed., section 6.3 for the variance). Assumes at least some tens of histories
   * with a loss; with one, or with a share of 0 or 1, nothing bounds it and the interval is 0 to 1.
   *
   * @param losses the histories with a loss
   * @param sumX the sum of x
   * @param sumY the sum of y
   * @param sumXx the sum of x²
   * @param sumXy the sum of x·y
   * @param sumYy the sum of y²
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if confidence or the sums are out of range
   */
  public static Estimate ofAmounts(
      long losses,
      double sumX,
      double sumY,
      double sumXx,
      double sumXy,
      double sumYy,
      double confidence) {
    double errorRate = Quantiles.errorRate(confidence);
    if (!(sumX >= 0 && sumX <= sumY)) {
      throw new IllegalArgumentException(
          "a part must be from 0 to the whole: " + sumX + " of " + sumY);
    }
    if (sumX == 0) {
      return new Estimate(0, 0, 1, false);
    }
    double share = sumX / sumY;
    if (losses < 2 || share >= 1) {
      return new Estimate(share, 0, 1, true);
    }
    double squares = Math.max(0, sumXx - 2 * share * sumXy + share * share * sumYy);
    double deviation = Math.sqrt(squares * losses / (losses - 1.0)) / sumY;
    double step = Quantiles.student(errorRate, losses - 1.0) * deviation / (share * (1 - share));
    double logit = Math.log(share / (1 - share));
    double low = Math.min(share, 1 / (1 + Math.exp(step - logit)));
    double high = Math.max(share, 1 / (1 + Math.exp(-step - logit)));
    return new Estimate(share, low, high, true);
  }
}
