package lastcopy.charts;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** From points with intervals to a dataset in studios, and its vertical axis. */
final class Bands {

  private Bands() {}

  /** The denominator for the largest chance of any layout. */
  static OutOf outOf(Comparison result, Function<LayoutResult, List<Point>> points) {
    return OutOf.showingLargest(chances(result, points));
  }

  /** One series for each layout, in studios of the denominator. */
  static YIntervalSeriesCollection dataset(
      Comparison result, Function<LayoutResult, List<Point>> points, OutOf outOf) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    for (LayoutResult layout : result.layouts()) {
      data.addSeries(series(layout.title(), points.apply(layout), outOf));
    }
    return data;
  }

  /** From 0 to a little above the highest band, in whole studios where they are many. */
  static NumberAxis axis(
      String label, Comparison result, Function<LayoutResult, List<Point>> points, OutOf outOf) {
    double high = chances(result, points).stream().mapToDouble(Estimate::high).max().orElse(0);
    double top = Math.min(high * 1.08, 1);
    NumberAxis axis = new NumberAxis(label);
    axis.setRange(0, top > 0 ? outOf.count(top) : 1);
    axis.setNumberFormatOverride(new StudioFormat());
    return axis;
  }

  /** The horizon in words, such as {@code 5 years}. */
  static String horizon(Comparison result) {
    String number = ByteUnit.digits(result.years());
    return String.format(Locale.ROOT, "%s %s", number, number.equals("1") ? "year" : "years");
  }

  private static YIntervalSeries series(String title, List<Point> points, OutOf outOf) {
    YIntervalSeries series = new YIntervalSeries(title);
    for (Point point : points) {
      Estimate chance = point.chance();
      series.add(
          point.at(),
          outOf.count(chance.value()),
          outOf.count(chance.low()),
          outOf.count(chance.high()));
    }
    return series;
  }

  private static Collection<Estimate> chances(
      Comparison result, Function<LayoutResult, List<Point>> points) {
    return result.layouts().stream()
        .flatMap(layout -> points.apply(layout).stream())
        .map(Point::chance)
        .toList();
  }
}
