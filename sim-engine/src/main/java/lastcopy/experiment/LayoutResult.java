package lastcopy.experiment;

import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;

/**
 * What the histories of one layout say.
 *
 * @param id the layout's id
 * @param title the layout's title
 * @param histories how many histories were simulated
 * @param method how losses were estimated, which somebody has decided: plain or rare
 * @param precisionReached whether the precision asked for was reached before a cap
 * @param effectiveHistories effective sample size of the weights of histories with a loss; the
 *     number of histories where none is biased
 * @param largestWeightShare the largest weight's share of those weights
 * @param anyLoss chance that any footage is lost by the horizon
 * @param everythingLost chance that everything is lost at some instant
 * @param lossEvents expected number of loss events
 * @param bytesLost expected bytes lost
 * @param shootsLost expected shoots lost, parts counted as parts
 * @param shootsHit expected shoots of which any byte is lost
 * @param moneyLost expected money lost, where a shoot has a worth
 * @param curve chance of any loss by t, every quarter of a year and at the horizon
 * @param exceedanceBytes chance that at least so many bytes are lost in total, rising thresholds
 * @param exceedanceShoots the same in shoots
 * @param exceedanceMoney the same in money; empty where a shoot has no worth
 * @param causes shares by cause, the largest first; empty if no loss was seen
 * @param exposure how bare the footage stands
 * @param recoveries how long interruptions of work last, by cause, the commonest first
 * @param cost what it costs; empty if the scenario prices nothing
 * @param doubts why the figures are not to be trusted, sentences for a layman; empty if they are
 * @param notes what else is to be known of how they were made, sentences for a layman
 */
public record LayoutResult(
    String id,
    String title,
    long histories,
    Method method,
    boolean precisionReached,
    double effectiveHistories,
    double largestWeightShare,
    Estimate anyLoss,
    Estimate everythingLost,
    Estimate lossEvents,
    Estimate bytesLost,
    Estimate shootsLost,
    Estimate shootsHit,
    Optional<Estimate> moneyLost,
    List<Point> curve,
    List<Point> exceedanceBytes,
    List<Point> exceedanceShoots,
    List<Point> exceedanceMoney,
    List<CauseShare> causes,
    Exposure exposure,
    List<Recovery> recoveries,
    Optional<Cost> cost,
    List<String> doubts,
    List<String> notes) {

  /**
   * A point of a curve.
   *
   * @param at years, bytes, shoots or money
   * @param chance the probability there
   */
  public record Point(double at, Estimate chance) {}

  /**
   * A cause's share of the losses.
   *
   * @param id stable id
   * @param sentence for a layman
   * @param share of the expected number of loss events; all shares add to 1
   * @param shareOfBytes of the expected bytes lost; all shares add to 1
   */
  public record CauseShare(String id, String sentence, Estimate share, double shareOfBytes) {}

  /**
   * How bare the footage stands, in days of a year, from plain histories.
   *
   * @param singleCopyDays days on which some footage exists in one copy only
   * @param noRedundancyDays days on which the next failure of a drive or service loses some
   * @param noWorkingCopyDays days without hardware for the working copy
   * @param refillingDays days until its refill is complete
   * @param largestSingleCopyBytes mean over histories of the most that stood in one copy only
   * @param histories how many histories these figures come from
   */
  public record Exposure(
      Estimate singleCopyDays,
      Estimate noRedundancyDays,
      Estimate noWorkingCopyDays,
      Estimate refillingDays,
      Estimate largestSingleCopyBytes,
      long histories) {}

  /**
   * How long work is interrupted and how long it takes until all is back, from plain histories.
   *
   * @param id stable id of what interrupted work
   * @param sentence for a layman
   * @param seen how many such interruptions the figures come from
   * @param workHours mean hours until work goes on
   * @param wholeHours mean hours until everything that was saved is back, over those interruptions
   *     after which anything came back; empty if nothing ever did
   */
  public record Recovery(
      String id, String sentence, long seen, Estimate workHours, Optional<Estimate> wholeHours) {}

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if the method is {@link Method#AUTO}
   */
  public LayoutResult {
    if (method == Method.AUTO) {
      throw new IllegalArgumentException("a result was estimated plainly or by rare losses");
    }
    curve = List.copyOf(curve);
    exceedanceBytes = List.copyOf(exceedanceBytes);
    exceedanceShoots = List.copyOf(exceedanceShoots);
    exceedanceMoney = List.copyOf(exceedanceMoney);
    causes = List.copyOf(causes);
    recoveries = List.copyOf(recoveries);
    doubts = List.copyOf(doubts);
    notes = List.copyOf(notes);
  }

  /** Whether nothing is known that puts the figures in doubt. */
  public boolean trusted() {
    return doubts.isEmpty();
  }
}
