package lastcopy.fit;

import lastcopy.interval.Estimate;
import lastcopy.number.Elementary;

/**
 * A life whose logarithm is normal.
 *
 * @param median the age by which half have failed, with its interval by profile likelihood
 * @param sigma standard deviation of ln age, with its interval by profile likelihood
 * @param logMedianError standard error of ln median, by the observed information
 * @param logSigmaError standard error of ln sigma
 * @param logLikelihood of the records
 */
public record LognormalFit(
    Estimate median,
    Estimate sigma,
    double logMedianError,
    double logSigmaError,
    double logLikelihood)
    implements FittedLaw {

  @Override
  public int parameters() {
    return 2;
  }

  @Override
  public double survival(double age) {
    double z = Elementary.log(age / median.value()) / sigma.value();
    return age <= 0 ? 1 : Elementary.exp(Shape.LOGNORMAL.logSurvival(z));
  }
}
