package lastcopy.charts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The chance of losing any footage against years, every layout with its band. */
public final class LossCurveChart {

  private LossCurveChart() {}

  /**
   * The chart of a result.
   *
   * @param date printed on it
   */
  public static JFreeChart of(Comparison result, LocalDate date) {
    OutOf outOf = Bands.outOf(result, LossCurveChart::points);
    NumberAxis years = new NumberAxis("Years from today");
    years.setRange(0, result.years());
    if (result.years() >= 3) {
      years.setTickUnit(new NumberTickUnit(Math.ceil(result.years() / 12)));
    }
    years.setNumberFormatOverride(new StudioFormat());
    ValueAxis chance =
        Bands.axis(
            "Chance of losing any footage",
            result,
            layout -> WorldBands.within(result, layout, points(layout)),
            outOf);
    JFreeChart chart =
        Look.chart(
            "Who loses footage within " + Bands.horizon(result) + "?",
            result,
            date,
            new Look.Lines(
                dataset(result),
                Bands.labels(
                    result,
                    outOf,
                    any ->
                        LabelledPlot.height(
                            chance, outOf.count(any.seen() ? any.value() : any.high())))),
            new Look.Axes(years, chance));
    if (result.worlds().isPresent()) {
      Look.note(chart, WorldBands.WORDS);
      Look.underlay(chart, WorldBands.dataset(result, outOf, Bands.least(result, outOf)));
    }
    return chart;
  }

  /** Studios that lost any footage by each year, of the denominator that the axis names. */
  static YIntervalSeriesCollection dataset(Comparison result) {
    OutOf outOf = Bands.outOf(result, LossCurveChart::points);
    return Bands.dataset(result, LossCurveChart::points, outOf);
  }

  /** The curve from today, when nothing is lost yet. */
  private static List<Point> points(LayoutResult layout) {
    List<Point> points = new ArrayList<>();
    if (layout.curve().isEmpty() || layout.curve().get(0).at() > 0) {
      points.add(new Point(0, Estimate.exact(0)));
    }
    points.addAll(layout.curve());
    return points;
  }
}
