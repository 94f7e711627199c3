package lastcopy.fit;

import lastcopy.interval.Estimate;
import lastcopy.law.Weibull;
import lastcopy.number.Elementary;

/**
 * Weibull's law: S(t) = exp(−(t / scale)^shape). A shape above 1 says that older drives fail more.
 *
 * @param shape with its interval by profile likelihood
 * @param scale the age by which 63 % have failed, with its interval by profile likelihood
 * @param logShapeError standard error of ln shape, by the observed information
 * @param logScaleError standard error of ln scale
 * @param logLikelihood of the records
 */
public record WeibullFit(
    Estimate shape,
    Estimate scale,
    double logShapeError,
    double logScaleError,
    double logLikelihood)
    implements FittedLaw {

  @Override
  public int parameters() {
    return 2;
  }

  @Override
  public double survival(double age) {
    return Elementary.exp(-Elementary.pow(age / scale.value(), shape.value()));
  }

  /** The mean life. */
  public double mean() {
    return new Weibull(shape.value(), scale.value(), 0).mean();
  }
}
