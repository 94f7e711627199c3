package lastcopy.cli.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Comparison.Pair;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Exposure;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;

/** A result made by hand: three layouts, the last never seen to lose. */
public final class SampleComparison {

  static final Estimate NEVER = new Estimate(0, 0, 3e-5, false);

  private SampleComparison() {}

  public static Comparison result(boolean finished) {
    return new Comparison(
        "Harbour Lane Films",
        5,
        Optional.of("EUR"),
        1,
        0.95,
        finished,
        List.of(
            layout("one-drive", "One external drive", seen(0.07, 0.002), true),
            layout("mirror", "Two drives mirrored in one box", seen(0.008, 0.0002), true),
            layout("three-copies", "Mirror, a copy off site and a service", NEVER, false)),
        List.of(
            pair("one-drive", "mirror", of(8.75), of(8.2), of(9.4), seen(0.062, 0.002)),
            pair("one-drive", "three-copies", none(), of(2300), none(), seen(0.07, 0.002)),
            pair("mirror", "three-copies", none(), of(250), none(), seen(0.008, 0.0002))));
  }

  /** Layouts alone, without pairs. */
  static Comparison of(LayoutResult... layouts) {
    return new Comparison("s", 5, Optional.of("EUR"), 1, 0.95, true, List.of(layouts), List.of());
  }

  public static LayoutResult layout(String id, String title, Estimate any, boolean priced) {
    double p = any.value();
    Estimate bytes = any.seen() ? seen(p * 9e12, p * 1e11) : new Estimate(0, 0, 2e8, false);
    return new LayoutResult(
        id,
        title,
        100_000,
        Method.PLAIN,
        any.seen(),
        100_000,
        1e-5,
        any,
        any,
        any,
        bytes,
        any,
        any,
        priced ? Optional.of(seen(900 * p, 10 * p)) : Optional.empty(),
        List.of(new Point(2.5, any), new Point(5, any)),
        List.of(new Point(1e9, any), new Point(9.6e10, any)),
        List.of(new Point(0.25, any), new Point(1, any)),
        priced ? List.of(new Point(900, any)) : List.of(),
        any.seen()
            ? List.of(new CauseShare("drive", "a drive failed", seen(0.7, 0.01), 0.71))
            : List.of(),
        new Exposure(
            Estimate.exact(365),
            seen(3.1, 0.1),
            seen(0.2, 0.01),
            seen(0.1, 0.01),
            seen(2.1e13, 1e11),
            100_000),
        any.seen()
            ? List.of(
                new Recovery(
                    "drive", "a drive failed", 950, seen(72.5, 1), Optional.of(seen(91, 1.5))),
                new Recovery(
                    "place:fire", "fire struck at 'studio'", 1, wide(72), Optional.empty()))
            : List.of(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** The same, not to be trusted. */
  public static LayoutResult doubted(LayoutResult of, List<String> doubts, List<String> notes) {
    return like(of, false, of.cost(), doubts, notes, of.exceedanceBytes(), of.moneyLost());
  }

  /** The same at a cost, if any. */
  public static LayoutResult costing(LayoutResult of, Optional<Cost> cost) {
    return like(
        of,
        of.precisionReached(),
        cost,
        of.doubts(),
        of.notes(),
        of.exceedanceBytes(),
        of.moneyLost());
  }

  /** The same with other chances to lose at least so much. */
  public static LayoutResult exceeding(LayoutResult of, Point... bytes) {
    return like(
        of,
        of.precisionReached(),
        of.cost(),
        of.doubts(),
        of.notes(),
        List.of(bytes),
        of.moneyLost());
  }

  /** The same with another mean of what is lost in money. */
  public static LayoutResult losing(LayoutResult of, Estimate money) {
    return like(
        of,
        of.precisionReached(),
        of.cost(),
        of.doubts(),
        of.notes(),
        of.exceedanceBytes(),
        Optional.of(money));
  }

  /** The same, estimated from histories biased towards losses. */
  public static LayoutResult biased(LayoutResult of) {
    return like(
        of,
        Method.RARE,
        of.precisionReached(),
        of.cost(),
        of.doubts(),
        of.notes(),
        of.exceedanceBytes(),
        of.moneyLost());
  }

  private static LayoutResult like(
      LayoutResult of,
      boolean reached,
      Optional<Cost> cost,
      List<String> doubts,
      List<String> notes,
      List<Point> exceedanceBytes,
      Optional<Estimate> money) {
    return like(of, of.method(), reached, cost, doubts, notes, exceedanceBytes, money);
  }

  private static LayoutResult like(
      LayoutResult of,
      Method method,
      boolean reached,
      Optional<Cost> cost,
      List<String> doubts,
      List<String> notes,
      List<Point> exceedanceBytes,
      Optional<Estimate> money) {
    return new LayoutResult(
        of.id(),
        of.title(),
        of.histories(),
        method,
        reached,
        of.effectiveHistories(),
        of.largestWeightShare(),
        of.anyLoss(),
        of.everythingLost(),
        of.lossEvents(),
        of.bytesLost(),
        of.shootsLost(),
        of.shootsHit(),
        money,
        of.curve(),
        exceedanceBytes,
        of.exceedanceShoots(),
        of.exceedanceMoney(),
        of.causes(),
        of.exposure(),
        of.recoveries(),
        cost,
        doubts,
        notes);
  }

  public static Pair pair(
      String a,
      String b,
      OptionalDouble ratio,
      OptionalDouble low,
      OptionalDouble high,
      Estimate difference) {
    return new Pair(a, b, ratio, low, high, difference, 100_000, Optional.empty());
  }

  public static Estimate seen(double value, double half) {
    return new Estimate(value, value - half, value + half, true);
  }

  /** Of a single one nothing bounds the mean. */
  private static Estimate wide(double value) {
    return new Estimate(value, 0, Double.POSITIVE_INFINITY, true);
  }

  public static OptionalDouble of(double value) {
    return OptionalDouble.of(value);
  }

  public static OptionalDouble none() {
    return OptionalDouble.empty();
  }
}
