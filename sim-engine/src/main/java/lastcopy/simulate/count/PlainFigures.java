package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.interval.MeanTally;
import lastcopy.interval.Proportions;
import lastcopy.interval.Shares;

/**
 * Figures of plain histories.
 *
 * @param tally of the histories
 * @param mostShoots the most that a history can lose
 * @param confidence in (0, 1)
 * @param withUnseen whether means hold what losses larger than any seen may add, as those do that
 *     are told; the precision that stops a simulation is that of what was seen
 */
public record PlainFigures(
    LossTally tally, double mostShoots, double confidence, boolean withUnseen) implements Figures {

  @Override
  public Estimate anyLoss() {
    return chance(tally.losses());
  }

  @Override
  public Estimate everythingLost() {
    return chance(tally.everything());
  }

  @Override
  public Estimate lossEvents() {
    return tally.events().estimate(confidence, Math.max(1, tally.events().largest()));
  }

  @Override
  public Estimate bytesLost() {
    return mean(tally.bytes(), tally.thresholds().mostBytes());
  }

  @Override
  public Estimate shootsLost() {
    return mean(tally.shoots(), mostShoots);
  }

  @Override
  public Estimate shootsHit() {
    return mean(tally.hits(), mostShoots + 1);
  }

  @Override
  public Estimate firstLossBy(int row) {
    return chance(tally.firstLossBy(row));
  }

  @Override
  public List<Point> bytesReached() {
    return points(tally.bytesReached());
  }

  @Override
  public List<Point> shootsReached() {
    return points(tally.shootsReached());
  }

  private List<Point> points(Exceedance amounts) {
    return amounts.points(
        (double) tally.losses(), (at, reached, later) -> chance(reached.nonZero()));
  }

  /** Chance to lose at least so much, or a thousandth less. */
  public Estimate reached(Exceedance amounts, double at) {
    return chance(amounts.from(at).nonZero());
  }

  private Estimate chance(long histories) {
    return Proportions.of(histories, tally.histories(), confidence);
  }

  private Estimate mean(MeanTally amounts, double largest) {
    Estimate estimate = amounts.estimate(confidence, Math.max(largest, amounts.largest()));
    return withUnseen && estimate.seen()
        ? estimate.upTo(amounts.unseen(confidence, largest))
        : estimate;
  }

  @Override
  public List<CauseShare> causes() {
    long events = 0;
    double bytes = 0;
    for (LossTally.CauseTally cause : tally.causes().values()) {
      events += cause.events();
      bytes += cause.bytes();
    }
    List<CauseShare> all = new ArrayList<>();
    for (var entry : tally.causes().entrySet()) {
      all.add(
          new CauseShare(
              entry.getKey(),
              entry.getValue().sentence(),
              Shares.ofEvents(entry.getValue().events(), events, confidence),
              entry.getValue().bytes() / bytes));
    }
    all.sort(LARGEST_FIRST);
    return all;
  }

  public static final Comparator<CauseShare> LARGEST_FIRST =
      Comparator.comparingDouble(c -> -c.share().value());
}
