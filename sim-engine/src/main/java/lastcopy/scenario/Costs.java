package lastcopy.scenario;

/**
 * Whatever else a layout or a copy takes, in money.
 *
 * @param once paid at the start, at least 0
 * @param perYear paid pro rata for each year of 8,760 h, at least 0
 * @param perMonth paid pro rata for each month of 730 h, at least 0
 */
public record Costs(double once, double perYear, double perMonth) {

  /** Nothing. */
  public static final Costs NONE = new Costs(0, 0, 0);

  /** Checks the ranges. */
  public Costs {
    Require.atLeast(once, 0, "once");
    Require.atLeast(perYear, 0, "per_year");
    Require.atLeast(perMonth, 0, "per_month");
  }

  /** What is paid pro rata, in money an hour. */
  public double perHour() {
    return perYear / Units.HOURS_PER_YEAR + perMonth / Units.HOURS_PER_MONTH;
  }

  /** These and others. */
  public Costs plus(Costs others) {
    return new Costs(once + others.once, perYear + others.perYear, perMonth + others.perMonth);
  }
}
