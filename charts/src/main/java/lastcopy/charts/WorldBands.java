package lastcopy.charts;

import java.util.ArrayList;
import java.util.List;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The bands of what is not known: from the 5th to the 95th percentile over possible worlds. */
final class WorldBands {

  /** What stands on a chart that has them. */
  static final String WORDS =
      "Lighter bands: what is not known (9 of 10 possible worlds); lines: the mean over all.";

  private WorldBands() {}

  /** A layout's percentiles by year; none where all is known. */
  private static List<Worlds.CurvePoint> curve(Comparison result, LayoutResult layout) {
    return result
        .worlds()
        .flatMap(worlds -> worlds.layout(layout.id()))
        .map(Worlds.OfLayout::curve)
        .orElse(List.of());
  }

  /** One series for each layout, from today on, in studios of the denominator. */
  static YIntervalSeriesCollection dataset(Comparison result, OutOf outOf, double least) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    for (LayoutResult layout : result.layouts()) {
      YIntervalSeries series = new YIntervalSeries(layout.id(), false, true);
      if (least == 0) {
        series.add(0, 0, 0, 0);
      }
      for (Worlds.CurvePoint point : curve(result, layout)) {
        series.add(
            point.years(),
            Math.max(least, outOf.count(point.p50())),
            Math.max(least, outOf.count(point.p5())),
            Math.max(least, outOf.count(point.p95())));
      }
      data.addSeries(series);
    }
    return data;
  }

  /** Points whose upper ends hold these bands too, for an axis that shows them. */
  static List<Point> within(Comparison result, LayoutResult layout, List<Point> points) {
    List<Point> all = new ArrayList<>(points);
    for (Worlds.CurvePoint point : curve(result, layout)) {
      all.add(new Point(point.years(), new Estimate(point.p50(), point.p50(), point.p95(), true)));
    }
    return all;
  }
}
