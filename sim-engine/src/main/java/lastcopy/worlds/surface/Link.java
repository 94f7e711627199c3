package lastcopy.worlds.surface;

/** How a mean follows from what is linear in the terms of a surface. */
public enum Link {
  /**
   * Complementary log-log: a chance is 1 − exp(−exp(η)). Exact where losses are a Poisson process
   * whose rate is a product of unknown rates; the logarithm where the chance is small.
   */
  CHANCE {
    @Override
    double mean(double eta) {
      return -StrictMath.expm1(-StrictMath.exp(eta));
    }

    @Override
    double slope(double eta) {
      return StrictMath.exp(eta - StrictMath.exp(eta));
    }

    @Override
    double variance(double mean) {
      return mean * (1 - mean);
    }

    @Override
    double likelihood(double histories, double sum, double mean) {
      return sum * StrictMath.log(mean) + (histories - sum) * StrictMath.log1p(-mean);
    }

    /** Where nearly all lose, those tell that do not. */
    @Override
    double telling(Observations seen) {
      return Math.min(seen.effective(), seen.spared());
    }

    @Override
    double eta(double mean) {
      return StrictMath.log(-StrictMath.log1p(-Math.min(mean, MOST)));
    }

    @Override
    double highest() {
      return 3;
    }
  },
  /** The logarithm, for amounts. */
  AMOUNT {
    @Override
    double mean(double eta) {
      return StrictMath.exp(eta);
    }

    @Override
    double slope(double eta) {
      return StrictMath.exp(eta);
    }

    @Override
    double variance(double mean) {
      return mean;
    }

    @Override
    double likelihood(double histories, double sum, double mean) {
      return sum * StrictMath.log(mean) - histories * mean;
    }

    @Override
    double telling(Observations seen) {
      return seen.effective();
    }

    @Override
    double eta(double mean) {
      return StrictMath.log(mean);
    }

    @Override
    double highest() {
      return 300;
    }
  };

  private static final double MOST = 1 - 1e-9;
  private static final double LOWEST = -300;

  /** The mean. */
  abstract double mean(double eta);

  /** The derivative of the mean. */
  abstract double slope(double eta);

  /** The variance that goes with a mean, but for a factor. */
  abstract double variance(double mean);

  /**
   * The logarithm of the quasi-likelihood of a mean, whose derivative is the residual over the
   * variance (Wedderburn 1974), but for what does not depend on the mean.
   */
  abstract double likelihood(double histories, double sum, double mean);

  /** How many equal histories tell how the figure depends on what is not known. */
  abstract double telling(Observations seen);

  /** The inverse of the mean. */
  abstract double eta(double mean);

  abstract double highest();

  /** Kept to where numbers hold it. */
  double bounded(double eta) {
    return Math.max(LOWEST, Math.min(highest(), eta));
  }
}
