package lastcopy.law;

/**
 * Evenly spread between two times: H(t) = −ln((to − t)/(to − from)).
 *
 * @param from in hours, at least 0
 * @param to in hours, above {@code from}
 */
public record Uniform(double from, double to) implements Law {

  /** Checks the ranges. */
  public Uniform {
    Domain.atLeast(from, 0, "lower end");
    Domain.above(to, from, "upper end");
  }

  @Override
  public double cumulativeHazard(double age) {
    if (age <= from) {
      return 0;
    }
    return age >= to ? Double.POSITIVE_INFINITY : -StrictMath.log1p(-(age - from) / (to - from));
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return hazard > 0 ? from - (to - from) * StrictMath.expm1(-hazard) : 0;
  }

  @Override
  public double hazard(double age) {
    return age < from || age >= to ? 0 : 1 / (to - age);
  }

  @Override
  public double mean() {
    return (from + to) / 2;
  }
}
