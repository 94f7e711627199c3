package lastcopy.fit;

import lastcopy.interval.Estimate;
import lastcopy.number.Elementary;

/**
 * A constant hazard.
 *
 * @param mean time at risk over failures, where all ages at failure are known, with its interval
 * @param meanError standard error of the mean, by the observed information
 * @param logLikelihood of the records
 */
public record ExponentialFit(Estimate mean, double meanError, double logLikelihood)
    implements FittedLaw {

  @Override
  public int parameters() {
    return 1;
  }

  @Override
  public double survival(double age) {
    return Elementary.exp(-age / mean.value());
  }

  /** The hazard, failures per unit of time, with its interval. */
  public Estimate rate() {
    return new Estimate(1 / mean.value(), 1 / mean.high(), 1 / mean.low(), true);
  }
}
