package lastcopy.exact;

import java.util.function.DoubleUnaryOperator;

/**
 * The place of one drive through time: it fails, is away, and another takes its place, a delayed
 * renewal process (Cox, Renewal Theory, 1962). Expectations are solved on an even grid, by the
 * trapezium in every convolution; a step of a hundredth of the shortest time that matters gives
 * about four digits.
 */
public final class DriveSlot {

  private final double step;
  private final double[] failures;
  private final double[] replacements;

  /**
   * Solves a slot.
   *
   * @param first survival function of the drive in service at the start
   * @param later survival function of those that come after it, from the day they come
   * @param away survival function of the time from a failure to the next drive; a constant 0 for no
   *     time
   * @param hours how far to solve, above 0
   * @param steps of the grid, at least 1
   */
  public DriveSlot(
      DoubleUnaryOperator first,
      DoubleUnaryOperator later,
      DoubleUnaryOperator away,
      double hours,
      int steps) {
    Parameters.above(hours, "time");
    Parameters.that(steps >= 1, "steps must be at least 1", steps);
    step = hours / steps;
    double[] back = endedBy(away, steps);
    double[] firstFails = endedBy(first, steps);
    double[] laterFails = endedBy(later, steps);
    replacements = renew(follow(firstFails, back), follow(laterFails, back));
    failures = sum(firstFails, follow(replacements, laterFails));
  }

  /** Expected number of failures from the start to the end of the grid. */
  public double expectedFailures() {
    return failures[failures.length - 1];
  }

  /** Expected number of failures within the i-th step, from 1. */
  double failuresIn(int i) {
    return failures[i] - failures[i - 1];
  }

  /**
   * The chance, at each instant of the grid, that a drive is in service and in a state that depends
   * on the time since it came.
   *
   * @param state chance to be in service and in that state a time after it came new
   */
  double[] chance(DoubleUnaryOperator state) {
    double[] since = new double[failures.length];
    for (int i = 0; i < since.length; i++) {
      since[i] = state.applyAsDouble(i * step);
    }
    return sum(since, follow(replacements, since));
  }

  private double[] endedBy(DoubleUnaryOperator survival, int steps) {
    double[] cdf = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      cdf[i] = 1 - survival.applyAsDouble(i * step);
    }
    return cdf;
  }

  /** ∫ then(t − s) dFirst(s) at each instant of the grid. */
  private static double[] follow(double[] first, double[] then) {
    double[] result = new double[first.length];
    for (int i = 1; i < first.length; i++) {
      for (int j = 1; j <= i; j++) {
        result[i] += (first[j] - first[j - 1]) * (then[i - j] + then[i - j + 1]) / 2;
      }
    }
    return result;
  }

  /** M = first + ∫ M(t − s) dLater(s), the expected number of renewals. */
  private static double[] renew(double[] first, double[] later) {
    double[] result = new double[first.length];
    for (int i = 1; i < first.length; i++) {
      double known = first[i] + (later[1] - later[0]) * result[i - 1] / 2;
      for (int j = 2; j <= i; j++) {
        known += (later[j] - later[j - 1]) * (result[i - j] + result[i - j + 1]) / 2;
      }
      result[i] = known / (1 - (later[1] - later[0]) / 2);
    }
    return result;
  }

  private static double[] sum(double[] a, double[] b) {
    double[] sum = new double[a.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = a[i] + b[i];
    }
    return sum;
  }
}
