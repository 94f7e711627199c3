package lastcopy.exact;

/**
 * Two drives that hold the same, each with a constant hazard and a repair of constant rate: the
 * closed forms of any reliability textbook.
 *
 * <p>With a and b the roots of x² − (3λ + μ)·x + 2λ², the time to loss is the sum of an exponential
 * time of rate a and one of rate b.
 *
 * @param failsPerHour λ of each drive, above 0
 * @param repairsPerHour μ, at least 0; 0 for no repair
 */
public record RepairablePair(double failsPerHour, double repairsPerHour) {

  /** Checks the ranges. */
  public RepairablePair {
    Parameters.above(failsPerHour, "failure rate");
    Parameters.atLeastZero(repairsPerHour, "repair rate");
  }

  /** Mean time to loss in hours from two good drives, (3λ + μ)/(2λ²). */
  public double meanTimeToLoss() {
    return (3 * failsPerHour + repairsPerHour) / (2 * failsPerHour * failsPerHour);
  }

  /**
   * The chance of loss by a time, 1 − R(t); loses digits once t is short against a repair (use
   * {@link ParityGroup#chain()} there).
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    Parameters.atLeastZero(hours, "time");
    double fast = fastRoot();
    double slow = 2 * failsPerHour * failsPerHour / fast;
    return (slow * Math.expm1(-fast * hours) - fast * Math.expm1(-slow * hours)) / (fast - slow);
  }

  /**
   * The chance of no loss by a time, R(t).
   *
   * @param hours at least 0
   */
  public double survival(double hours) {
    return 1 - lossBy(hours);
  }

  private double fastRoot() {
    double sum = 3 * failsPerHour + repairsPerHour;
    return (sum + Math.sqrt(sum * sum - 8 * failsPerHour * failsPerHour)) / 2;
  }
}
