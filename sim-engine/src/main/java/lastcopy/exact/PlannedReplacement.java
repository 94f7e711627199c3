package lastcopy.exact;

import lastcopy.law.Law;

/**
 * A drive that is swapped for another at a planned age, again and again, while it still runs
 * (replacement by age; Barlow, Proschan, Mathematical Theory of Reliability, 1965, chapter 3).
 *
 * @param life the law of a drive's life over its age
 * @param replaceAtHours the planned age a, above the age at which drives are bought
 * @param ageHours the age of the first drive at the start, at least 0
 * @param boughtAtHours the age of those that come later, at least 0
 */
public record PlannedReplacement(
    Law life, double replaceAtHours, double ageHours, double boughtAtHours) {

  /** Checks the ranges. */
  public PlannedReplacement {
    Parameters.atLeastZero(ageHours, "age");
    Parameters.atLeastZero(boughtAtHours, "age when bought");
    Parameters.that(
        replaceAtHours > boughtAtHours && Double.isFinite(replaceAtHours),
        "planned age must be above the age when bought",
        replaceAtHours);
  }

  /** New drives only: S(a)^k · S(t − k·a) after k swaps. */
  public PlannedReplacement(Law life, double replaceAtHours) {
    this(life, replaceAtHours, 0, 0);
  }

  /**
   * The chance of no failure by a time.
   *
   * @param hours at least 0
   */
  public double survival(double hours) {
    Parameters.atLeastZero(hours, "time");
    double first = Math.max(0, replaceAtHours - ageHours);
    if (hours < first) {
      return survives(ageHours, hours);
    }
    double turn = replaceAtHours - boughtAtHours;
    double left = hours - first;
    double turns = Math.floor(left / turn);
    return survives(ageHours, first)
        * Math.pow(survives(boughtAtHours, turn), turns)
        * survives(boughtAtHours, left - turns * turn);
  }

  private double survives(double age, double hours) {
    return Math.exp(life.cumulativeHazard(age) - life.cumulativeHazard(age + hours));
  }
}
