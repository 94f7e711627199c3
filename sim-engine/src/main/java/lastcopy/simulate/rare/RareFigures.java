package lastcopy.simulate.rare;

import java.util.ArrayList;
import java.util.List;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.Counted;
import lastcopy.simulate.count.Exceedance;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.PlainFigures;

/**
 * Figures of biased histories. What the weights cannot bound is bounded by what the plain histories
 * of the same layout say, and by the chance of any loss, which no other chance exceeds.
 *
 * @param tally of the biased histories
 * @param plain of the plain ones
 * @param doubted whether they cannot be trusted: then each interval is widened to what plain
 *     histories and Markov's inequality still hold
 * @param confidence in (0, 1)
 */
public record RareFigures(RareTally tally, PlainFigures plain, boolean doubted, double confidence)
    implements Figures {

  @Override
  public Estimate anyLoss() {
    return estimate(tally.any, plain.anyLoss(), Double.POSITIVE_INFINITY).upTo(missed());
  }

  @Override
  public Estimate everythingLost() {
    return chance(tally.everything, plain.everythingLost()).upTo(later(tally.everythingLater));
  }

  @Override
  public Estimate lossEvents() {
    return estimate(tally.events, plain.lossEvents(), Double.POSITIVE_INFINITY).upTo(missed());
  }

  @Override
  public Estimate bytesLost() {
    double most = plain.tally().thresholds().mostBytes();
    return mean(tally.bytes, plain.bytesLost(), most).upTo(unseen(most - tally.largest.bytes()));
  }

  @Override
  public Estimate shootsLost() {
    double most = plain.mostShoots();
    return mean(tally.shoots, plain.shootsLost(), most).upTo(unseen(most - tally.largest.shoots()));
  }

  @Override
  public Estimate shootsHit() {
    double most = plain.mostShoots() + 1;
    return mean(tally.hits, plain.shootsHit(), most).upTo(unseen(most - tally.largest.hits()));
  }

  @Override
  public Estimate firstLossBy(int row) {
    return chance(tally.firstLossBy[row], plain.firstLossBy(row));
  }

  @Override
  public List<Point> bytesReached() {
    return points(tally.bytesReached, plain.tally().bytesReached());
  }

  @Override
  public List<Point> shootsReached() {
    return points(tally.shootsReached, plain.tally().shootsReached());
  }

  private List<Point> points(Exceedance weighted, Exceedance unweighted) {
    return weighted.points(
        tally.any.sum(),
        (at, reached, later) -> chance(reached, plain.reached(unweighted, at)).upTo(later(later)));
  }

  /**
   * What may be missing of a chance since it takes more than the first loss of a history: hazards
   * are not biased after that, so of those with a loss a share goes on to it that counting bounds,
   * however rare the ways are that biases make common.
   *
   * @param seen histories that came to it by a later loss; enough of them are in the variance, but
   *     many that weigh little are few, as the heavier ones may not have been seen
   */
  private double later(Counted seen) {
    long losses = (long) tally.any.effective();
    long few = Math.min(seen.histories(), Math.round(tally.any.effectiveOf(seen.weight())));
    if (few >= RareCause.FEW_LATER || losses <= few) {
      return 0;
    }
    Estimate share = Proportions.of(few, losses, confidence);
    return anyLoss().high() * (share.high() - share.value());
  }

  /**
   * What losses larger than any seen may add to a mean: the chance of any loss, times the limit of
   * the share of them, of which none was seen in so many effective losses, times how much larger.
   */
  private double unseen(double more) {
    long losses = (long) tally.any.effective();
    return plain.withUnseen() && losses > 0
        ? anyLoss().high() * Proportions.upperOfNone(losses, 1 - confidence) * Math.max(0, more)
        : 0;
  }

  private Estimate chance(WeightedTally weighted, Estimate unweighted) {
    return mean(weighted, unweighted, 1);
  }

  private Estimate mean(WeightedTally weighted, Estimate unweighted, double most) {
    return estimate(weighted, unweighted, anyLoss().high() * most).upTo(missed() * most);
  }

  /** What unlikely draws may add that came out badly too seldom. */
  private double missed() {
    return tally.channels.missed();
  }

  private Estimate estimate(WeightedTally weighted, Estimate unweighted, double limit) {
    if (weighted.nonZero() == 0 && unweighted.seen()) {
      return unweighted;
    }
    Estimate estimate = weighted.estimate(confidence, Math.min(limit, unweighted.high()));
    return doubted ? widened(estimate, unweighted.high()) : estimate;
  }

  private Estimate widened(Estimate estimate, double high) {
    double low = Math.min(estimate.low(), (1 - confidence) / 2 * estimate.value());
    return new Estimate(estimate.value(), low, Math.max(estimate.high(), high), estimate.seen());
  }

  @Override
  public List<CauseShare> causes() {
    double bytes = tally.causes.values().stream().mapToDouble(RareCause::bytes).sum();
    List<CauseShare> all = new ArrayList<>();
    tally.causes.forEach(
        (id, cause) ->
            all.add(
                new CauseShare(
                    id,
                    cause.sentence,
                    cause.share(tally.events, confidence),
                    cause.bytes() / bytes)));
    all.sort(PlainFigures.LARGEST_FIRST);
    return all;
  }
}
