package lastcopy.worlds;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;
import lastcopy.scenario.Units;
import lastcopy.simulate.count.Figures;

/**
 * Figures of all worlds together, each with the wider of two intervals: that of histories as if
 * they were independent, which holds where few were lost, and Student's of the replicates, which
 * holds what worlds differ by.
 *
 * @param pooled of all replicates
 * @param replicates of each by itself
 * @param scales by replicate, what the worlds of one would have to be multiplied by to be like all
 * @param losses histories with a loss, in the replicate that has the fewest
 * @param confidence in (0, 1)
 */
record WidenedFigures(
    Figures pooled, List<Figures> replicates, double[] scales, double losses, double confidence)
    implements Figures {

  private static final double DAYS_OF_YEAR = Units.HOURS_PER_YEAR / Units.HOURS_PER_DAY;

  /** From so many losses in each on replicates are normal enough to tell an interval alone. */
  private static final double ENOUGH = 30;

  /**
   * An estimate widened to what the replicates say, by its logarithm.
   *
   * @param alone whether they say enough by themselves
   */
  static Estimate widened(
      Estimate estimate, double[] replicates, boolean alone, double confidence) {
    double sum = 0;
    double squares = 0;
    for (double value : replicates) {
      sum += value;
      squares += value * value;
    }
    if (!(estimate.value() > 0) || !(sum > 0)) {
      return estimate;
    }
    Estimate mean = Means.of(replicates.length, sum, squares, confidence);
    double factor = StrictMath.exp((mean.high() - mean.value()) / mean.value());
    double low = estimate.value() / factor;
    double high = estimate.value() * factor;
    return new Estimate(
        estimate.value(),
        alone ? low : Math.min(estimate.low(), low),
        alone ? high : Math.max(estimate.high(), high),
        estimate.seen());
  }

  /** Whether a part of the losses is enough in each replicate. */
  private boolean enough(double chance) {
    return losses * chance >= ENOUGH * pooled.anyLoss().value();
  }

  private Estimate chance(Function<Figures, Estimate> figure) {
    return widened(figure, enough(figure.apply(pooled).value())).within(0, 1);
  }

  private Estimate mean(Function<Figures, Estimate> figure) {
    return widened(figure, losses >= ENOUGH);
  }

  private Estimate widened(Function<Figures, Estimate> figure, boolean alone) {
    double[] each = replicates.stream().mapToDouble(one -> figure.apply(one).value()).toArray();
    return scaled(figure.apply(pooled), each, alone);
  }

  /**
   * Each replicate by its scale, and all by what that makes of their mean: all figures go with the
   * chance of a loss in the worlds that were drawn (the ratio estimator of survey sampling:
   * Cochran, Sampling Techniques, 3rd ed. 1977, 6).
   */
  private Estimate scaled(Estimate estimate, double[] each, boolean alone) {
    double raw = 0;
    double sum = 0;
    for (int r = 0; r < each.length; r++) {
      raw += each[r];
      each[r] *= scales[r];
      sum += each[r];
    }
    double scale = raw > 0 ? sum / raw : 1;
    Estimate moved =
        new Estimate(
            estimate.value() * scale,
            estimate.low() * scale,
            estimate.high() * scale,
            estimate.seen());
    return widened(moved, each, alone, confidence);
  }

  @Override
  public Estimate anyLoss() {
    return chance(Figures::anyLoss);
  }

  @Override
  public Estimate everythingLost() {
    return chance(Figures::everythingLost);
  }

  @Override
  public Estimate lossEvents() {
    return mean(Figures::lossEvents);
  }

  @Override
  public Estimate bytesLost() {
    return mean(Figures::bytesLost);
  }

  @Override
  public Estimate shootsLost() {
    return mean(Figures::shootsLost);
  }

  @Override
  public Estimate shootsHit() {
    return mean(Figures::shootsHit);
  }

  @Override
  public Estimate firstLossBy(int row) {
    return chance(figures -> figures.firstLossBy(row));
  }

  @Override
  public List<Point> bytesReached() {
    return points(Figures::bytesReached);
  }

  @Override
  public List<Point> shootsReached() {
    return points(Figures::shootsReached);
  }

  private List<Point> points(Function<Figures, List<Point>> rows) {
    List<List<Point>> each = replicates.stream().map(rows).toList();
    return rows.apply(pooled).stream()
        .map(point -> new Point(point.at(), widened(point, each)))
        .toList();
  }

  private Estimate widened(Point point, List<List<Point>> each) {
    ToDoubleFunction<List<Point>> there = points -> chanceAt(points, point.at());
    double[] chances = each.stream().mapToDouble(there).toArray();
    boolean alone = enough(point.chance().value());
    return scaled(point.chance(), chances, alone).within(0, 1);
  }

  /** The chance at the first row that is no less, which is nearly the same. */
  private static double chanceAt(List<Point> points, double at) {
    return points.stream()
        .filter(point -> point.at() >= at)
        .findFirst()
        .map(point -> point.chance().value())
        .orElse(0.0);
  }

  @Override
  public List<CauseShare> causes() {
    List<List<CauseShare>> each = replicates.stream().map(Figures::causes).toList();
    return pooled.causes().stream().map(cause -> widened(cause, each)).toList();
  }

  private CauseShare widened(CauseShare cause, List<List<CauseShare>> each) {
    double[] shares = each.stream().mapToDouble(causes -> share(causes, cause.id())).toArray();
    Estimate share = widened(cause.share(), shares, false, confidence).within(0, 1);
    return new CauseShare(cause.id(), cause.sentence(), share, cause.shareOfBytes());
  }

  private static double share(List<CauseShare> causes, String id) {
    return causes.stream()
        .filter(cause -> cause.id().equals(id))
        .mapToDouble(cause -> cause.share().value())
        .sum();
  }

  /** Times, widened likewise; a year has no more days than it has. */
  static Exposure exposure(Exposure pooled, List<Exposure> replicates, double confidence) {
    Function<Function<Exposure, Estimate>, Estimate> wider =
        figure ->
            widened(
                figure.apply(pooled),
                replicates.stream().mapToDouble(one -> figure.apply(one).value()).toArray(),
                false,
                confidence);
    return new Exposure(
        wider.apply(Exposure::singleCopyDays).within(0, DAYS_OF_YEAR),
        wider.apply(Exposure::noRedundancyDays).within(0, DAYS_OF_YEAR),
        wider.apply(Exposure::noWorkingCopyDays).within(0, DAYS_OF_YEAR),
        wider.apply(Exposure::refillingDays).within(0, DAYS_OF_YEAR),
        wider.apply(Exposure::largestSingleCopyBytes),
        pooled.histories());
  }
}
