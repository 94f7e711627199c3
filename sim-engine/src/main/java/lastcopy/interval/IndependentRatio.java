package lastcopy.interval;

import java.util.OptionalDouble;

/**
 * The ratio and the difference of two chances whose histories share nothing, each with an interval
 * of its own, as of layouts that are biased differently.
 *
 * <p>Limits by square-and-add of the distances to each chance's own limits, on logarithms for the
 * ratio (Zou, Donner, Statistics in Medicine 27 (2008) 1693-1702; Donner, Zou, Statistical Methods
 * in Medical Research 21 (2012) 347-359): they inherit whatever skewness those intervals have.
 */
public final class IndependentRatio {

  private IndependentRatio() {}

  /**
   * Compares chance a with chance b.
   *
   * @param a with its interval
   * @param b with its interval, of the same confidence
   */
  public static RatioEstimate of(Estimate a, Estimate b) {
    Estimate difference = difference(a, b);
    OptionalDouble none = OptionalDouble.empty();
    if (!a.seen() || !b.seen()) {
      OptionalDouble least = a.seen() ? OptionalDouble.of(a.low() / b.high()) : none;
      OptionalDouble most = b.seen() ? OptionalDouble.of(a.high() / b.low()) : none;
      return new RatioEstimate(none, least, most, difference);
    }
    double ratio = a.value() / b.value();
    double down = distance(a.value() / a.low(), b.high() / b.value());
    double up = distance(a.high() / a.value(), b.value() / b.low());
    return new RatioEstimate(
        OptionalDouble.of(ratio),
        OptionalDouble.of(ratio / down),
        OptionalDouble.of(ratio * up),
        difference);
  }

  /** Two factors away from an estimate, combined. */
  private static double distance(double one, double other) {
    double x = StrictMath.log(one);
    double y = StrictMath.log(other);
    return StrictMath.exp(Math.sqrt(x * x + y * y));
  }

  private static Estimate difference(Estimate a, Estimate b) {
    double value = a.value() - b.value();
    double down = side(a.value() - a.low(), b.high() - b.value());
    double up = side(a.high() - a.value(), b.value() - b.low());
    return new Estimate(value, value - down, value + up, a.seen() || b.seen());
  }

  private static double side(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }
}
