package lastcopy.law;

/** What never happens: no hazard at any age. */
public record Never() implements Law {

  @Override
  public double cumulativeHazard(double age) {
    return 0;
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return hazard > 0 ? Double.POSITIVE_INFINITY : 0;
  }

  @Override
  public double hazard(double age) {
    return 0;
  }

  @Override
  public double mean() {
    return Double.POSITIVE_INFINITY;
  }
}
