package lastcopy.law;

/**
 * A constant hazard in one stretch of age and none before or after: a risk that passes, such as
 * that of a drive's journey to its owner.
 *
 * @param perHour the hazard in the stretch, above 0, finite
 * @param from the age at which it begins in hours, at least 0
 * @param to the age at which it ends in hours, above {@code from}, finite
 */
public record HazardWindow(double perHour, double from, double to) implements Law {

  /** Checks the ranges. */
  public HazardWindow {
    Domain.above(perHour, 0, "hazard");
    Domain.atLeast(from, 0, "begin of a stretch");
    Domain.above(to - from, 0, "length of a stretch");
  }

  @Override
  public double cumulativeHazard(double age) {
    return perHour * Math.max(0, Math.min(age, to) - from);
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    if (hazard <= 0) {
      return 0;
    }
    double age = from + hazard / perHour;
    return age <= to ? age : Double.POSITIVE_INFINITY;
  }

  @Override
  public double hazard(double age) {
    return age >= from && age < to ? perHour : 0;
  }

  /** Some never end, so there is none. */
  @Override
  public double mean() {
    return Double.POSITIVE_INFINITY;
  }
}
