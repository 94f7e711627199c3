package lastcopy.fit;

/**
 * A log-likelihood at one point of (location, ln scale), with its derivatives.
 *
 * @param value the log-likelihood
 * @param first derivatives by location and by ln scale
 * @param second by location twice, by both, by ln scale twice
 */
record Slopes(double value, double[] first, double[] second) {

  /** Whether all of it is a number. */
  boolean finite() {
    double sum = value + first[0] + first[1] + second[0] + second[1] + second[2];
    return Double.isFinite(sum);
  }

  /** The determinant of the second derivatives. */
  double determinant() {
    return second[0] * second[2] - second[1] * second[1];
  }

  /** Whether the surface bends down in every direction here. */
  boolean concave() {
    return second[0] < 0 && determinant() > 0;
  }
}
