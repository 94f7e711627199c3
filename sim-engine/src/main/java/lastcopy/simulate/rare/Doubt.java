package lastcopy.simulate.rare;

import java.util.Locale;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.interval.OneIn;
import lastcopy.interval.Proportions;
import lastcopy.simulate.count.LossTally;

/** Why biased histories cannot be trusted, if they cannot. */
public final class Doubt {

  /** Two intervals this sure that are apart mean that one of them is wrong. */
  private static final double SURE = 0.9999;

  /** What was not seen may add so much, of the chance of any loss, to its interval. */
  private static final double TOO_MUCH = 0.1;

  private Doubt() {}

  /**
   * The reason, a sentence for a layman.
   *
   * @param plain histories of the same layout as they fall
   * @param one can say what its unlikely draws do
   */
  public static Optional<String> of(RareTally tally, LossTally plain, Biasable one) {
    Optional<String> ofDraws = ofDraws(tally, one);
    if (ofDraws.isPresent()) {
      return ofDraws;
    }
    if (!tally.any.trusted()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "Of the %,d simulated histories that lost footage a few decide nearly all of the"
                  + " figure (they say no more than %.0f equal ones would; one alone makes up"
                  + " %.0f %%), so the true chance may lie far from it.",
              tally.any.nonZero(),
              tally.any.effective(),
              100 * tally.any.largestShare()));
    }
    Estimate seen = Proportions.of(plain.losses(), plain.histories(), SURE);
    Estimate weighted = tally.any.estimate(SURE, 1);
    if (seen.low() > weighted.high() || weighted.low() > seen.high()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "Two ways to estimate the chance contradict each other: of %,d histories as they"
                  + " fall %,d lost footage, which does not fit those that are biased towards"
                  + " losses.",
              plain.histories(),
              plain.losses()));
    }
    return Optional.empty();
  }

  /** The reasons that are not in how the weights are spread. */
  public static Optional<String> ofDraws(RareTally tally, Biasable one) {
    if (tally.any.nonZero() == 0) {
      return Optional.of(
          tally.any.histories() == 0
              ? "There was no time to count any history that is biased towards losses."
              : "No history lost any footage, although failures and mishaps were made more"
                  + " frequent on purpose.");
    }
    if (tally.weightless > 0) {
      return Optional.of(
          "Some drives reach a fixed age at which they fail for certain; histories that are biased"
              + " towards losses cannot be weighed then.");
    }
    if (tally.channels.missed() > TOO_MUCH * tally.any.mean()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "Too few of the simulated histories saw that %s; that may add up to %s to the"
                  + " chance of a loss.",
              one.channel(tally.channels.missing().get(0)),
              OneIn.words(Math.min(1, tally.channels.missed()))));
    }
    return Optional.empty();
  }
}
