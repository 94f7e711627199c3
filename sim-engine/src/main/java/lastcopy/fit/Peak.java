package lastcopy.fit;

/**
 * Where a log-likelihood is greatest.
 *
 * @param location of ln age
 * @param logScale ln of the scale of ln age
 * @param slopes the log-likelihood and its derivatives there
 */
record Peak(double location, double logScale, Slopes slopes) {

  /** Standard error of the location, by the observed information. */
  double locationError() {
    return StrictMath.sqrt(-slopes.second()[2] / slopes.determinant());
  }

  /** Standard error of the ln scale, by the observed information. */
  double logScaleError() {
    return StrictMath.sqrt(-slopes.second()[0] / slopes.determinant());
  }

  /** How the best other parameter moves with one of them, near the peak. */
  double ridge(int along) {
    return -slopes.second()[1] / slopes.second()[2 * (1 - along)];
  }
}
