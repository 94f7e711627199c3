package lastcopy.experiment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.interval.Estimate;

/**
 * What a simulation of a studio says: each layout, and each pair of layouts.
 *
 * @param studio title of the studio
 * @param years the horizon
 * @param currency a label for money, if any
 * @param seed the seed
 * @param confidence of every interval, in (0, 1)
 * @param finished false if it was interrupted
 * @param layouts in the order of the scenario
 * @param pairs every pair a before b, in the order of the scenario
 * @param worlds what follows from what is not known, if anything is not
 */
public record Comparison(
    String studio,
    double years,
    Optional<String> currency,
    long seed,
    double confidence,
    boolean finished,
    List<LayoutResult> layouts,
    List<Pair> pairs,
    Optional<Worlds> worlds) {

  /** Copies the lists. */
  public Comparison {
    layouts = List.copyOf(layouts);
    pairs = List.copyOf(pairs);
  }

  /** One of which all is known. */
  public Comparison(
      String studio,
      double years,
      Optional<String> currency,
      long seed,
      double confidence,
      boolean finished,
      List<LayoutResult> layouts,
      List<Pair> pairs) {
    this(studio, years, currency, seed, confidence, finished, layouts, pairs, Optional.empty());
  }

  /**
   * Layout a against layout b, from histories that share their luck.
   *
   * @param a id of the first
   * @param b id of the second
   * @param ratio P(a loses) / P(b loses); empty where one of the two was never seen to lose
   * @param ratioLow lower end, or the bound where b was never seen to lose; empty if there is none
   * @param ratioHigh upper end, or the bound where a was never seen to lose; empty if there is none
   * @param difference P(a loses) − P(b loses)
   * @param pairedHistories histories that both have
   * @param costDifference cost of a − cost of b, whose histories share their luck; empty if the
   *     scenario prices nothing
   */
  public record Pair(
      String a,
      String b,
      OptionalDouble ratio,
      OptionalDouble ratioLow,
      OptionalDouble ratioHigh,
      Estimate difference,
      long pairedHistories,
      Optional<Estimate> costDifference) {}
}
