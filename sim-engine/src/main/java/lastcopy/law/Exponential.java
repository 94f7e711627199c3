package lastcopy.law;

/**
 * A constant hazard: H(t) = t/mean.
 *
 * @param mean the mean in hours, above 0, finite
 */
public record Exponential(double mean) implements Law {

  private static final double HOURS_PER_YEAR = 8_760;

  /** Checks the range. */
  public Exponential {
    Domain.above(mean, 0, "mean");
  }

  /**
   * The constant hazard at which a year is fatal with the given probability, −ln(1 − p) per year.
   *
   * @param probability in (0, 1)
   * @throws IllegalArgumentException if it is not
   */
  public static Exponential ofYearlyProbability(double probability) {
    Domain.that(
        probability > 0 && probability < 1, "yearly probability must be in (0, 1)", probability);
    return new Exponential(-HOURS_PER_YEAR / StrictMath.log1p(-probability));
  }

  @Override
  public double cumulativeHazard(double age) {
    return age / mean;
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return hazard * mean;
  }

  @Override
  public double hazard(double age) {
    return 1 / mean;
  }

  /** Without memory: the age drops out, and with it its rounding. */
  @Override
  public double remaining(double age, double deviate) {
    return deviate * mean;
  }
}
