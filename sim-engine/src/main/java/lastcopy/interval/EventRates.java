package lastcopy.interval;

import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Exact intervals for the rate of events that were counted over a time, by Poisson's law (Garwood,
 * Biometrika 28, 1936).
 *
 * <p>Assumes that events come at a constant rate and that the time was not chosen by looking at
 * them.
 */
public final class EventRates {

  private EventRates() {}

  /**
   * The events per unit of time with their interval; after none, a one-sided upper limit.
   *
   * @param events at least 0; need not be whole where some are shared out
   * @param time above 0
   * @param confidence in (0, 1)
   * @throws IllegalArgumentException if an argument is out of range
   */
  public static Estimate of(double events, double time, double confidence) {
    double errorRate = Quantiles.errorRate(confidence);
    if (!(events >= 0) || !(time > 0)) {
      throw new IllegalArgumentException(
          "events must be at least 0 and time above 0: " + events + ", " + time);
    }
    if (events == 0) {
      return new Estimate(0, 0, -StrictMath.log(errorRate) / time, false);
    }
    double low = GammaDistribution.of(events, 1).inverseCumulativeProbability(errorRate / 2);
    double high = GammaDistribution.of(events + 1.0, 1).inverseSurvivalProbability(errorRate / 2);
    return new Estimate(events / time, low / time, high / time, true);
  }
}
