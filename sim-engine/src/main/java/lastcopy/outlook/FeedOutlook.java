package lastcopy.outlook;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is sure about a feed.
 *
 * @param worstLagHours the longest from a shoot's offload until it is across, over the shoots that
 *     set out by the horizon; empty if none does
 * @param meanLagHours the mean of the same, weighted by bytes
 * @param neverCatchesUp whether shoots bring more than the link carries
 * @param rateNeeded the least rate in bytes per second at which it keeps up
 * @param firstFillHours the footage on hand over the link, or by hand where that is sooner; for a
 *     copy that starts empty, the time until it first holds all that was shot, empty if that is not
 *     by the horizon
 * @param link whether the time of its link is long enough; empty for drives that take turns, whose
 *     time are their visits
 */
public record FeedOutlook(
    OptionalDouble worstLagHours,
    OptionalDouble meanLagHours,
    boolean neverCatchesUp,
    double rateNeeded,
    OptionalDouble firstFillHours,
    Optional<LinkTime> link) {

  /** The rate needed in Mbit/s, rounded up to hundredths: rounded down it would not keep up. */
  public double megabitsNeeded() {
    // The small term keeps a rate that is whole hundredths from being pushed up by its last digit.
    return Math.ceil(rateNeeded * 8 / 1e4 - 1e-6) / 100;
  }
}
