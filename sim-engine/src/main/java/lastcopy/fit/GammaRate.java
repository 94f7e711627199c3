package lastcopy.fit;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * What is held to be known of a rate, as a Gamma law: as if {@code events} had been counted in
 * {@code time}. Counting more only adds up (e.g. Gelman and others, Bayesian Data Analysis, 2013,
 * section 2.6).
 *
 * @param events above 0; need not be whole
 * @param time above 0
 */
public record GammaRate(double events, double time) {

  private static final double LOWER = 0.05;
  private static final double MOST_RATIO = 1e6;

  /** Checks the ranges. */
  public GammaRate {
    if (!(events > 0 && time > 0)) {
      throw new IllegalArgumentException(
          "events and time must be above 0: " + events + ", " + time);
    }
  }

  /**
   * The law with these 5th and 95th percentiles.
   *
   * @param low above 0
   * @param high above {@code low}, at most a million times it
   */
  public static GammaRate between(double low, double high) {
    if (!(low > 0 && high > low && high / low < MOST_RATIO)) {
      throw new IllegalArgumentException(
          "percentiles must be above 0, the lower first, within a factor of a million: "
              + (low + ", " + high));
    }
    double wanted = StrictMath.log(high / low);
    double logEvents =
        new BrentSolver(1e-12, 1e-12)
            .solve(500, log -> spread(StrictMath.exp(log)) - wanted, -2, 30);
    double events = StrictMath.exp(logEvents);
    double median = GammaDistribution.of(events, 1).inverseSurvivalProbability(LOWER);
    return new GammaRate(events, median / high);
  }

  private static double spread(double events) {
    GammaDistribution law = GammaDistribution.of(events, 1);
    return StrictMath.log(
        law.inverseSurvivalProbability(LOWER) / law.inverseCumulativeProbability(LOWER));
  }

  /** After counting so many events more in so much time. */
  public GammaRate after(double moreEvents, double moreTime) {
    return new GammaRate(events + moreEvents, time + moreTime);
  }

  /** The mean rate. */
  public double mean() {
    return events / time;
  }

  /** The rate below which it is with a chance. */
  public double percentile(double chance) {
    return GammaDistribution.of(events, 1).inverseCumulativeProbability(chance) / time;
  }
}
