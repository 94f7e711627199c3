package lastcopy.exact;

import java.util.List;
import lastcopy.law.Law;

/**
 * Separate drives filled one after another, no other copy: each loses what it holds when it fails.
 *
 * @param life the law of a drive's life over its age
 * @param ageHours the age of those in service at the start, at least 0
 * @param boughtAtHours the age of those that enter later, at least 0
 * @param entersAtHours when each drive enters service, at least 0
 */
public record Shelf(Law life, double ageHours, double boughtAtHours, List<Double> entersAtHours) {

  /** Copies the list and checks the ranges. */
  public Shelf {
    Parameters.atLeastZero(ageHours, "age");
    Parameters.atLeastZero(boughtAtHours, "age when bought");
    entersAtHours = List.copyOf(entersAtHours);
    entersAtHours.forEach(hours -> Parameters.atLeastZero(hours, "entry"));
  }

  /**
   * The chance of any loss by a time, 1 − ∏ S(drive, time in service).
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    double hazard = 0;
    for (double enters : entersAtHours) {
      double age = enters == 0 ? ageHours : boughtAtHours;
      double served = Math.max(0, hours - enters);
      hazard += life.cumulativeHazard(age + served) - life.cumulativeHazard(age);
    }
    return -Math.expm1(-hazard);
  }
}
