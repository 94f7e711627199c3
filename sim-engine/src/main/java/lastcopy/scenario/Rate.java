package lastcopy.scenario;

/**
 * The constant hazard of a Poisson process of mishaps.
 *
 * @param perHour the hazard per hour, at least 0, finite
 */
public record Rate(double perHour) {

  /** A rate that never strikes. */
  public static final Rate NONE = new Rate(0);

  /** Checks the range. */
  public Rate {
    Require.atLeast(perHour, 0, "rate per hour");
  }

  /**
   * The rate at which at least one event falls within a year with the given probability: −ln(1 − p)
   * per year.
   *
   * @param probability in [0, 1)
   */
  public static Rate ofYearlyProbability(double probability) {
    Require.that(
        probability >= 0 && probability < 1,
        "a yearly chance must be from 0 to below 100 %: " + probability);
    return new Rate(-StrictMath.log1p(-probability) / Units.HOURS_PER_YEAR);
  }

  /** A rate in events per year, at least 0. */
  public static Rate perYear(double events) {
    return new Rate(events / Units.HOURS_PER_YEAR);
  }

  /** Whether it can strike at all. */
  public boolean strikes() {
    return perHour > 0;
  }
}
