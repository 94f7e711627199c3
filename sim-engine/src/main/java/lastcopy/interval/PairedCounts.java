package lastcopy.interval;

/** The counts of a paired comparison, checked against each other, and the moments they give. */
record PairedCounts(
    long nA, long lossesA, long nB, long lossesB, long paired, long both, long onlyA, long onlyB) {

  PairedCounts {
    Proportions.check(lossesA, nA);
    Proportions.check(lossesB, nB);
    boolean holds =
        Math.min(Math.min(both, onlyA), onlyB) >= 0
            && paired >= 0
            && paired <= Math.min(nA, nB)
            && both + onlyA + onlyB <= paired
            && both + onlyA <= lossesA
            && both + onlyB <= lossesB;
    if (!holds) {
      throw new IllegalArgumentException(
          "paired counts must fit in those of the layouts: "
              + ("paired " + paired + ", both " + both + ", only a " + onlyA + ", only b " + onlyB)
              + (", a " + lossesA + " of " + nA + ", b " + lossesB + " of " + nB));
    }
  }

  double chanceA() {
    return (double) lossesA / nA;
  }

  double chanceB() {
    return (double) lossesB / nB;
  }

  /** Whether at least half of the losses of each layout fell in paired histories. */
  boolean mostLossesPaired() {
    return 2 * (both + onlyA) >= lossesA && 2 * (both + onlyB) >= lossesB;
  }

  /** Variance of the estimated chance of a. */
  double varianceA() {
    return chanceA() * (1 - chanceA()) / nA;
  }

  /** Variance of the estimated chance of b. */
  double varianceB() {
    return chanceB() * (1 - chanceB()) / nB;
  }

  /** Covariance of the two estimated chances: n·c/(N_a·N_b), c that of the indicators. */
  double covariance() {
    if (paired == 0) {
      return 0;
    }
    double n = paired;
    double c = both / n - (both + onlyA) / n * ((both + onlyB) / n);
    return n * c / ((double) nA * nB);
  }

  /** s_a²/(N_a p_a²) + s_b²/(N_b p_b²) − 2·n·c/(N_a N_b p_a p_b); both were seen. */
  double varianceOfLogRatio() {
    double pA = chanceA();
    double pB = chanceB();
    double variance =
        varianceA() / (pA * pA) + varianceB() / (pB * pB) - 2 * covariance() / (pA * pB);
    return Math.max(0, variance);
  }
}
