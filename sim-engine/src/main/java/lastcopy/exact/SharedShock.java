package lastcopy.exact;

/**
 * A mirror of two with a common cause: beside their own failures, a shock takes both at once.
 *
 * @param ownPerHour λi, the failures of each drive alone, above 0
 * @param sharedPerHour λc, the shocks, at least 0
 * @param repairsPerHour μ, at least 0
 */
public record SharedShock(double ownPerHour, double sharedPerHour, double repairsPerHour) {

  /** Checks the ranges. */
  public SharedShock {
    Parameters.above(ownPerHour, "own failure rate");
    Parameters.atLeastZero(sharedPerHour, "shock rate");
    Parameters.atLeastZero(repairsPerHour, "repair rate");
  }

  /**
   * The β-factor split of a failure rate: (1 − β)λ each alone, βλ shared (IEC 61508-6).
   *
   * @param failsPerHour λ, above 0
   * @param beta in [0, 1)
   * @param repairsPerHour μ, at least 0
   */
  public static SharedShock ofBeta(double failsPerHour, double beta, double repairsPerHour) {
    Parameters.that(beta >= 0 && beta < 1, "beta must be in [0, 1)", beta);
    return new SharedShock((1 - beta) * failsPerHour, beta * failsPerHour, repairsPerHour);
  }

  /** Mean time to loss in hours, (3λi + λc + μ)/((2λi + λc)(λi + λc) + μλc). */
  public double meanTimeToLoss() {
    double alone = ownPerHour + sharedPerHour;
    double both = 2 * ownPerHour + sharedPerHour;
    return (both + ownPerHour + repairsPerHour) / (both * alone + repairsPerHour * sharedPerHour);
  }

  /**
   * The chance of loss by a time.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    return new ParityGroup(2, 1, ownPerHour, repairsPerHour, 1, sharedPerHour).lossBy(hours);
  }
}
