package lastcopy.charts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** From points with intervals to a dataset in studios, and its vertical axis. */
final class Bands {

  private static final double FAR_APART = 100;

  private Bands() {}

  /** The denominator for the largest chance; for the smallest too where all are drawn by powers. */
  static OutOf outOf(Comparison result, Function<LayoutResult, List<Point>> points) {
    return farApart(result)
        ? OutOf.showing(seen(result).min().orElse(0))
        : OutOf.showingLargest(chances(result, points));
  }

  /** One series for each layout, in studios of the denominator. */
  static YIntervalSeriesCollection dataset(
      Comparison result, Function<LayoutResult, List<Point>> points, OutOf outOf) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    for (LayoutResult layout : result.layouts()) {
      data.addSeries(series(layout.title(), points.apply(layout), outOf, least(result, outOf)));
    }
    return data;
  }

  /** What is drawn at the least: 0, or something that powers of ten can show. */
  static double least(Comparison result, OutOf outOf) {
    return farApart(result) ? floor(result, outOf) / 10 : 0;
  }

  /**
   * The vertical axis: from 0 to a little above the highest band; or by powers of ten, which its
   * words say, where the layouts are so far apart that the least would lie on the floor.
   */
  static ValueAxis axis(
      String label, Comparison result, Function<LayoutResult, List<Point>> points, OutOf outOf) {
    double high = chances(result, points).stream().mapToDouble(Estimate::high).max().orElse(0);
    if (farApart(result)) {
      return logarithmic(result, outOf, high);
    }
    double top = Math.min(high * 1.08, 1);
    NumberAxis axis = new NumberAxis(label + " (of " + outOf.words() + ")");
    axis.setRange(0, top > 0 ? outOf.count(top) : 1);
    axis.setNumberFormatOverride(new StudioFormat());
    return axis;
  }

  private static LogAxis logarithmic(Comparison result, OutOf outOf, double high) {
    // The title says what these studios do: all of it beside the axis would be longer than that.
    LogAxis axis =
        new LogAxis("Studios, of " + outOf.number() + " (each line is ten times as many)");
    axis.setRange(floor(result, outOf), outOf.count(Math.min(1, 1.5 * high)));
    axis.setTickUnit(new NumberTickUnit(1));
    axis.setNumberFormatOverride(new StudioFormat());
    return axis;
  }

  /** A power of ten, a tenth to a hundredth of the least chance of any loss that was seen. */
  private static double floor(Comparison result, OutOf outOf) {
    double least = outOf.count(seen(result).min().orElse(1e-3));
    return Math.pow(10, Math.floor(Math.log10(least)) - 1);
  }

  /** Whether one layout loses footage a hundred times as often as another. */
  static boolean farApart(Comparison result) {
    double least = seen(result).min().orElse(1);
    return seen(result).max().orElse(1) > FAR_APART * least;
  }

  private static DoubleStream seen(Comparison result) {
    return result.layouts().stream()
        .map(LayoutResult::anyLoss)
        .filter(any -> any.seen() && any.value() > 0)
        .mapToDouble(Estimate::value);
  }

  /** Each layout's name and chance of any loss, to stand beside its line at a height. */
  static List<EndLabels.Label> labels(
      Comparison result, OutOf outOf, ToDoubleFunction<Estimate> height) {
    List<EndLabels.Label> labels = new ArrayList<>();
    for (LayoutResult layout : result.layouts()) {
      List<String> lines = new ArrayList<>(EndLabels.broken(layout.title()));
      lines.add(number(layout.anyLoss(), outOf));
      labels.add(new EndLabels.Label(labels.size(), height.applyAsDouble(layout.anyLoss()), lines));
    }
    return labels.size() > EndLabels.MOST ? List.of() : labels;
  }

  private static String number(Estimate chance, OutOf outOf) {
    boolean most = chance.onlyAtMost();
    String count = ByteUnit.digits(outOf.count(most ? chance.high() : chance.value()));
    return (most ? "at most " : "") + count + " of " + outOf.number();
  }

  /** The horizon in words, such as {@code 5 years}. */
  static String horizon(Comparison result) {
    String number = ByteUnit.digits(result.years());
    return String.format(Locale.ROOT, "%s %s", number, number.equals("1") ? "year" : "years");
  }

  private static YIntervalSeries series(
      String title, List<Point> points, OutOf outOf, double least) {
    YIntervalSeries series = new YIntervalSeries(title, false, true);
    for (Point point : points) {
      Estimate chance = point.chance();
      if (least > 0 && chance.value() == 0 && series.isEmpty()) {
        continue; // powers of ten have no 0 to start from
      }
      series.add(
          point.at(),
          Math.max(least, outOf.count(chance.value())),
          Math.max(least, outOf.count(chance.low())),
          Math.max(least, outOf.count(chance.high())));
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
