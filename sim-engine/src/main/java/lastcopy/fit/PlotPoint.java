package lastcopy.fit;

/**
 * A point of a probability plot: an age and the share failed by then, midway up the step of the
 * survival curve (e.g. Meeker, Escobar, Statistical Methods for Reliability Data, 1998, section
 * 6.4). On the scales of {@link #x} and {@link #y} a Weibull law is a straight line.
 *
 * @param age above 0
 * @param failed in (0, 1)
 */
public record PlotPoint(double age, double failed) {

  /** ln age. */
  public double x() {
    return StrictMath.log(age);
  }

  /** ln(−ln(1 − failed)). */
  public double y() {
    return StrictMath.log(-StrictMath.log1p(-failed));
  }
}
