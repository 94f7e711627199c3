package lastcopy.charts;

import java.time.LocalDate;
import java.util.stream.DoubleStream;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The chance of losing at least so much, against the amount, every layout with its band. */
public final class ExceedanceChart {

  private static final double ROOM = 1.25;

  private ExceedanceChart() {}

  /**
   * The chart of a result.
   *
   * @param date printed on it
   */
  public static JFreeChart of(Comparison result, LocalDate date) {
    OutOf outOf = Bands.outOf(result, LayoutResult::exceedanceBytes);
    ValueAxis chance =
        Bands.axis(
            "Chance of losing at least that much", result, LayoutResult::exceedanceBytes, outOf);
    JFreeChart chart =
        Look.chart(
            "How much could be lost within " + Bands.horizon(result) + "?",
            result,
            date,
            // All lines end at the floor: their names stand from the top, in the order of the
            // layouts.
            new Look.Lines(dataset(result), Bands.labels(result, outOf, any -> 0)),
            new Look.Axes(amountAxis(result), chance));
    Look.mark(chart, most(result), "all that is ever shot");
    return chart;
  }

  /** Studios that lost at least each amount in bytes, of the denominator that the axis names. */
  static YIntervalSeriesCollection dataset(Comparison result) {
    OutOf outOf = Bands.outOf(result, LayoutResult::exceedanceBytes);
    return Bands.dataset(result, LayoutResult::exceedanceBytes, outOf);
  }

  private static LogAxis amountAxis(Comparison result) {
    double low = amounts(result).filter(at -> at > 0).min().orElse(1e9);
    LogAxis axis = new LogAxis("Footage lost in total (each step is ten times as much)");
    // A little room, so that the first tick's words do not meet those of the other axis.
    axis.setRange(low / ROOM, Math.max(most(result) * ROOM, low * 10));
    // Ticks at powers of ten only.
    axis.setTickUnit(new NumberTickUnit(1));
    axis.setNumberFormatOverride(new ByteFormat());
    return axis;
  }

  private static double most(Comparison result) {
    return amounts(result).max().orElse(1e12);
  }

  private static DoubleStream amounts(Comparison result) {
    return result.layouts().stream()
        .flatMap(layout -> layout.exceedanceBytes().stream())
        .mapToDouble(Point::at);
  }
}
