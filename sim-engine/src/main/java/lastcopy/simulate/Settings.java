package lastcopy.simulate;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How to simulate, apart from what.
 *
 * @param seed any
 * @param confidence of every interval, in (0, 1)
 * @param precision relative half-width of the chance of any loss at which a layout may stop, above
 *     0
 * @param histories the number of histories after which to stop, whatever the precision; empty for
 *     no such cap
 * @param time the time after which to stop at the next chunk; empty for no cap
 * @param threads at least 1
 * @param method how losses are estimated
 */
public record Settings(
    long seed,
    double confidence,
    double precision,
    OptionalLong histories,
    Optional<Duration> time,
    int threads,
    Method method) {

  /** Means of events and bytes may be this much wider than the chance of any loss. */
  static final double MEAN_FACTOR = 2.5;

  /** Settings that leave the method to the pilot. */
  public Settings(
      long seed,
      double confidence,
      double precision,
      OptionalLong histories,
      Optional<Duration> time,
      int threads) {
    this(seed, confidence, precision, histories, time, threads, Method.AUTO);
  }

  /** Checks the ranges. */
  public Settings {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must be between 0 and 1: " + confidence);
    }
    if (!(precision > 0)) {
      throw new IllegalArgumentException("precision must be above 0: " + precision);
    }
    if (histories.isPresent() && histories.getAsLong() < 1) {
      throw new IllegalArgumentException("histories must be at least 1: " + histories.getAsLong());
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads must be at least 1: " + threads);
    }
  }

  /** Histories until the precision is reached, of relative variances of one history. */
  double needs(double anyVariance, double bytesVariance) {
    double variance = Math.max(anyVariance, bytesVariance / (MEAN_FACTOR * MEAN_FACTOR));
    return variance * 4 / (precision * precision); // 2: the normal quantile of 95 %, near enough
  }

  /**
   * Biased histories of a second stage until the precision is reached, of what a first one saw;
   * infinite where that was too little to say.
   */
  double planned(RareTally first) {
    double means = MEAN_FACTOR * precision;
    return Math.max(
        first.any.historiesFor(precision, confidence),
        Math.max(
            first.bytes.historiesFor(means, confidence),
            first.events.historiesFor(means, confidence)));
  }

  /** Whether figures are as precise as asked for, means 2.5 times less so. */
  boolean preciseEnough(Figures figures) {
    return widest(figures) <= precision;
  }

  /** The share of the histories that precision takes which stand behind figures, roughly. */
  double share(Figures figures) {
    double share = precision / widest(figures);
    return share * share; // half-widths shrink with the root of the histories
  }

  /** The relative half-width of the figure that decides, means counted 2.5 times less. */
  private static double widest(Figures figures) {
    double means =
        Math.max(figures.lossEvents().relativeHalfWidth(), figures.bytesLost().relativeHalfWidth());
    return Math.max(figures.anyLoss().relativeHalfWidth(), means / MEAN_FACTOR);
  }
}
