package lastcopy.charts;

import java.time.LocalDate;
import java.util.List;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The chance of losing at least so much, against the amount, every layout with its band. */
public final class ExceedanceChart {

  private ExceedanceChart() {}

  /**
   * The chart of a result.
   *
   * @param date printed on it
   */
  public static JFreeChart of(Comparison result, LocalDate date) {
    OutOf outOf = Bands.outOf(result, LayoutResult::exceedanceBytes);
    NumberAxis chance =
        Bands.axis(
            "Chance of losing at least that much (of " + outOf.words() + ")",
            result,
            LayoutResult::exceedanceBytes,
            outOf);
    return Look.chart(
        "How much could be lost within " + Bands.horizon(result) + "?",
        result,
        date,
        dataset(result),
        new Look.Axes(amountAxis(result), chance));
  }

  /** Studios that lost at least each amount in bytes, of the denominator that the axis names. */
  static YIntervalSeriesCollection dataset(Comparison result) {
    OutOf outOf = Bands.outOf(result, LayoutResult::exceedanceBytes);
    return Bands.dataset(result, LayoutResult::exceedanceBytes, outOf);
  }

  private static LogAxis amountAxis(Comparison result) {
    List<Point> points =
        result.layouts().stream().flatMap(layout -> layout.exceedanceBytes().stream()).toList();
    double low = points.stream().mapToDouble(Point::at).filter(at -> at > 0).min().orElse(1e9);
    double high = points.stream().mapToDouble(Point::at).max().orElse(1e12);
    LogAxis axis = new LogAxis("Footage lost in total (each step is ten times as much)");
    axis.setRange(low, Math.max(high, low * 10));
    // Ticks at powers of ten only.
    axis.setTickUnit(new NumberTickUnit(1));
    axis.setNumberFormatOverride(new ByteFormat());
    return axis;
  }
}
