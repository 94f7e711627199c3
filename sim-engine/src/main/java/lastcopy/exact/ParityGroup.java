package lastcopy.exact;

/**
 * A set of like drives with constant hazards, each failed one repaired by itself at a constant rate
 * (in parallel, as the model repairs). A mirror of n is a group that survives n − 1.
 *
 * @param drives n, at least 1
 * @param survives m, the failed drives that it survives, in [0, n)
 * @param failsPerHour λ of each drive, above 0
 * @param repairsPerHour μ of each failed drive, at least 0
 * @param strain factor on the hazard of the others while a drive is down, at least 0
 * @param shocksPerHour rate of what takes the whole group at once, at least 0
 */
public record ParityGroup(
    int drives,
    int survives,
    double failsPerHour,
    double repairsPerHour,
    double strain,
    double shocksPerHour) {

  /** Checks the ranges. */
  public ParityGroup {
    Parameters.that(drives >= 1, "drives must be at least 1", drives);
    Parameters.that(
        survives >= 0 && survives < drives, "failures survived must be in [0, drives)", survives);
    Parameters.above(failsPerHour, "failure rate");
    Parameters.atLeastZero(repairsPerHour, "repair rate");
    Parameters.atLeastZero(strain, "strain");
    Parameters.atLeastZero(shocksPerHour, "shock rate");
  }

  /** A group without strain or shocks. */
  public ParityGroup(int drives, int survives, double failsPerHour, double repairsPerHour) {
    this(drives, survives, failsPerHour, repairsPerHour, 1, 0);
  }

  /** Its chain: state k has k drives down; the last state, m + 1, is loss. */
  public MarkovChain chain() {
    return new MarkovChain(rates());
  }

  /** The rates of its chain, a fresh array. */
  double[][] rates() {
    int loss = survives + 1;
    double[][] rates = new double[loss + 1][loss + 1];
    for (int down = 0; down < loss; down++) {
      rates[down][loss] = shocksPerHour;
      rates[down][down + 1] += (drives - down) * failsPerHour * (down == 0 ? 1 : strain);
      if (down > 0) {
        rates[down][down - 1] = down * repairsPerHour;
      }
    }
    return rates;
  }

  /**
   * The chance of loss by a time, all drives good at the start.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    return chain().chance(0, survives + 1, hours);
  }

  /** Mean time to loss in hours, all drives good at the start. */
  public double meanTimeToLoss() {
    return chain().meanTimeToAbsorption(0);
  }
}
