package lastcopy.law;

/**
 * A time that is always the same.
 *
 * @param hours at least 0, finite
 */
public record Fixed(double hours) implements Law {

  /** Checks the range. */
  public Fixed {
    Domain.atLeast(hours, 0, "fixed time");
  }

  @Override
  public double cumulativeHazard(double age) {
    return age < hours ? 0 : Double.POSITIVE_INFINITY;
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return hazard > 0 ? hours : 0;
  }

  @Override
  public double hazard(double age) {
    return age == hours ? Double.POSITIVE_INFINITY : 0;
  }

  @Override
  public double mean() {
    return hours;
  }

  /** Always what is left of the fixed time, even for a deviate of 0. */
  @Override
  public double remaining(double age, double deviate) {
    return Math.max(0, hours - age);
  }
}
