package lastcopy.experiment;

import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;

/**
 * What follows from what is not known, over many possible worlds, kept apart from the sampling
 * error of the simulation.
 *
 * @param layouts in the order of the scenario
 * @param pairs in the order of the comparison's
 * @param unknowns in the order of the file
 */
public record Worlds(List<OfLayout> layouts, List<OfPair> pairs, List<OfUnknown> unknowns) {

  /** Copies the lists. */
  public Worlds {
    layouts = List.copyOf(layouts);
    pairs = List.copyOf(pairs);
    unknowns = List.copyOf(unknowns);
  }

  /**
   * A figure over worlds.
   *
   * @param mean over worlds, with its sampling interval
   * @param percentiles over worlds, freed of the noise of the histories in each; empty where too
   *     little was lost to say anything
   */
  public record Spread(Estimate mean, Optional<Percentiles> percentiles) {}

  /**
   * Percentiles over worlds, each with the interval of how far the simulation knows it.
   *
   * @param p5 the 5th
   * @param p50 the median
   * @param p95 the 95th
   */
  public record Percentiles(Estimate p5, Estimate p50, Estimate p95) {}

  /**
   * Percentiles of the chance of any loss by a time.
   *
   * @param years the time
   */
  public record CurvePoint(double years, double p5, double p50, double p95) {}

  /**
   * A layout over worlds.
   *
   * @param id the layout's
   * @param count how many worlds were simulated
   * @param anyLoss chance of any loss by the horizon
   * @param bytesLost expected bytes lost
   * @param cost expected cost; empty if the scenario prices nothing
   * @param curve every quarter of a year; empty where nothing can be said
   */
  public record OfLayout(
      String id,
      int count,
      Spread anyLoss,
      Spread bytesLost,
      Optional<Spread> cost,
      List<CurvePoint> curve) {
    /** Copies the list. */
    public OfLayout {
      curve = List.copyOf(curve);
    }
  }

  /**
   * Two layouts in the same worlds.
   *
   * @param a id of the first
   * @param b id of the second
   * @param aLosesLess the share of worlds in which a's chance of any loss is less
   * @param ratio percentiles of a's chance over b's
   */
  public record OfPair(String a, String b, Estimate aLosesLess, Percentiles ratio) {}

  /**
   * A rate that is not known.
   *
   * @param key where it stands in the file
   * @param from its 5th percentile, as written
   * @param to its 95th
   * @param unit of both
   * @param shares for each layout of which anything can be said
   */
  public record OfUnknown(String key, double from, double to, String unit, List<Share> shares) {
    /** Copies the list. */
    public OfUnknown {
      shares = List.copyOf(shares);
    }
  }

  /**
   * The part of the variance, over worlds, of the logarithm of a layout's chance of loss that an
   * unknown accounts for by itself.
   *
   * @param layout the layout's id
   */
  public record Share(String layout, Estimate share) {}

  /** A layout's, by its id. */
  public Optional<OfLayout> layout(String id) {
    return layouts.stream().filter(layout -> layout.id().equals(id)).findFirst();
  }
}
