package lastcopy.exact;

import lastcopy.law.Law;

/**
 * A drive that runs during visits by the clock and is off between them; it ages by the calendar,
 * and hazards add up by whichever law applies.
 *
 * @param on the law of its life while it runs
 * @param off the law while it is off
 * @param firstHours the start of its first visit, at least 0
 * @param everyHours from one visit to the next, above 0
 * @param visitHours how long one lasts, above 0 and at most the time to the next
 */
public record VisitingDrive(
    Law on, Law off, double firstHours, double everyHours, double visitHours) {

  /** Checks the ranges. */
  public VisitingDrive {
    Parameters.atLeastZero(firstHours, "first visit");
    Parameters.above(everyHours, "every");
    Parameters.that(
        visitHours > 0 && visitHours <= everyHours, "visits must be in (0, every]", visitHours);
  }

  /**
   * The chance that a new drive survives to a time.
   *
   * @param hours at least 0
   */
  public double survival(double hours) {
    Parameters.atLeastZero(hours, "time");
    double hazard = off.cumulativeHazard(hours);
    for (int k = 0; firstHours + k * everyHours < hours; k++) {
      double start = firstHours + k * everyHours;
      double end = Math.min(hours, start + visitHours);
      hazard += between(on, start, end) - between(off, start, end);
    }
    return Math.exp(-hazard);
  }

  private static double between(Law law, double from, double to) {
    return law.cumulativeHazard(to) - law.cumulativeHazard(from);
  }
}
