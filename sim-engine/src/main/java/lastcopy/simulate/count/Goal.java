package lastcopy.simulate.count;

import lastcopy.experiment.Settings;
import lastcopy.interval.WeightedTally;

/**
 * How precise figures are to be, and what that takes.
 *
 * @param precision relative half-width of the chance of any loss, above 0
 * @param confidence of the intervals, in (0, 1)
 */
public record Goal(double precision, double confidence) {

  /** Means of events and bytes may be this much wider than the chance of any loss. */
  private static final double MEAN_FACTOR = 2.5;

  /** That of a simulation. */
  public static Goal of(Settings settings) {
    return new Goal(settings.precision(), settings.confidence());
  }

  /** Histories until the precision is reached, of relative variances of one history. */
  public double needs(double anyVariance, double bytesVariance) {
    double variance = Math.max(anyVariance, bytesVariance / (MEAN_FACTOR * MEAN_FACTOR));
    return variance * 4 / (precision * precision); // 2: the normal quantile of 95 %, near enough
  }

  /**
   * Biased histories of a second stage until the precision is reached, of what a first one saw;
   * infinite where that was too little to say.
   */
  public double planned(WeightedTally any, WeightedTally bytes, WeightedTally events) {
    double means = MEAN_FACTOR * precision;
    return Math.max(
        any.historiesFor(precision, confidence),
        Math.max(bytes.historiesFor(means, confidence), events.historiesFor(means, confidence)));
  }

  /** Whether figures are as precise as asked for, means 2.5 times less so. */
  public boolean isReached(Figures figures) {
    return widest(figures) <= precision;
  }

  /** The share of the histories that precision takes which stand behind figures, roughly. */
  public double share(Figures figures) {
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
