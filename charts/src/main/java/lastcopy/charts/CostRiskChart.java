package lastcopy.charts;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import lastcopy.words.PercentWords;
import lastcopy.words.YearWords;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/**
 * What layouts cost against how many studios lose footage: those of the front with their intervals
 * and the steps between them, today's, and all others as faint points.
 */
public final class CostRiskChart {

  private static final String FRONT = "safest for its cost";
  private static final String TODAY = "today";
  private static final String OTHERS = "other layouts";

  /** So far apart that the least would lie on the floor. */
  private static final double FAR_APART = 100;

  private static final double AIR = 1.08;

  private CostRiskChart() {}

  /**
   * A layout.
   *
   * @param name beside its point
   * @param chance of any loss
   * @param cost over the horizon
   */
  public record Point(String name, Estimate chance, Estimate cost) {}

  /**
   * What is drawn.
   *
   * @param front the cheapest first; at least one
   * @param today what there is
   * @param others all others
   */
  public record Layouts(List<Point> front, Point today, List<Point> others) {

    /** Copies the lists. */
    public Layouts {
      front = List.copyOf(front);
      others = List.copyOf(others);
    }

    private Stream<Point> all() {
      return Stream.concat(Stream.concat(front.stream(), Stream.of(today)), others.stream());
    }
  }

  /**
   * What is around the points.
   *
   * @param studio its name
   * @param years the horizon
   * @param currency of the costs
   * @param outOf of how many studios chances are told
   * @param confidence of each interval
   * @param finished whether nothing cut it short
   * @param date printed on it
   */
  public record Frame(
      String studio,
      double years,
      Optional<String> currency,
      OutOf outOf,
      double confidence,
      boolean finished,
      LocalDate date) {

    private String horizon() {
      return YearWords.of(years);
    }

    private String foot() {
      return String.format(
          Locale.ROOT,
          "%sCrosses: intervals, each of %s %%. A model, not a guarantee. Drawn %s.",
          finished ? "" : "UNFINISHED. ",
          PercentWords.of(confidence),
          date);
    }
  }

  /**
   * Writes the chart in every format into a directory that exists.
   *
   * @return the files written
   * @throws ChartException if the system cannot draw
   * @throws IOException if a file cannot be written
   */
  public static List<Path> writeAll(
      Layouts layouts, Frame frame, Path directory, Collection<ChartFiles.Format> formats)
      throws ChartException, IOException {
    List<Path> written = new ArrayList<>();
    for (ChartFiles.Format format : formats) {
      JFreeChart chart = ChartFiles.drawn(() -> of(layouts, frame));
      written.add(ChartFiles.writeNamed(chart, directory, "cost-and-risk", format));
    }
    return written;
  }

  /** The chart. */
  public static JFreeChart of(Layouts layouts, Frame frame) {
    NumberAxis cost = new NumberAxis("Cost over " + frame.horizon() + currency(frame));
    cost.setNumberFormatOverride(new StudioFormat());
    cost.setRange(0, AIR * layouts.all().mapToDouble(each -> each.cost().high()).max().orElse(1));
    ValueAxis chance = chances(layouts, frame);
    XYPlot plot = new XYPlot(null, cost, chance, null);
    double factor = frame.outOf().count(1);
    double floor = chance.getLowerBound();
    plot.setDataset(0, data(FRONT, layouts.front(), factor, floor));
    plot.setDataset(1, data(TODAY, List.of(layouts.today()), factor, floor));
    plot.setDataset(2, data(OTHERS, layouts.others(), factor, floor));
    plot.setDataset(3, data(FRONT, layouts.front(), factor, floor));
    for (Point each : layouts.front()) {
      Look.name(plot, each.name(), each.cost().value(), each.chance().value() * factor);
    }
    return Look.costs(
        new Look.Words(
            "What does less risk cost?",
            frame.studio() + ": of all layouts that it could choose",
            frame.foot()),
        plot);
  }

  private static String currency(Frame frame) {
    return frame.currency().map(name -> " (" + name + ")").orElse("");
  }

  private static ValueAxis chances(Layouts layouts, Frame frame) {
    double factor = frame.outOf().count(1);
    String what = "Of " + frame.outOf().words() + " lose any footage within " + frame.horizon();
    double most = layouts.all().mapToDouble(each -> each.chance().high()).max().orElse(1) * factor;
    double least =
        layouts
                .all()
                .mapToDouble(each -> each.chance().value())
                .filter(value -> value > 0)
                .min()
                .orElse(1)
            * factor;
    if (most < FAR_APART * least) {
      NumberAxis axis = new NumberAxis(what);
      axis.setRange(0, AIR * most);
      axis.setNumberFormatOverride(new StudioFormat());
      return axis;
    }
    LogAxis axis = new LogAxis(what + " (each line is ten times as many)");
    axis.setRange(least / 2, AIR * most);
    axis.setSmallestValue(least / 2);
    axis.setNumberFormatOverride(new StudioFormat());
    return axis;
  }

  private static XYIntervalSeriesCollection data(
      String name, List<Point> points, double factor, double floor) {
    XYIntervalSeries series = new XYIntervalSeries(name, false, true);
    for (Point each : points) {
      Estimate cost = each.cost();
      Estimate chance = each.chance();
      series.add(
          cost.value(),
          cost.low(),
          cost.high(),
          Math.max(floor, chance.value() * factor),
          Math.max(floor, chance.low() * factor),
          chance.high() * factor);
    }
    XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
    data.addSeries(series);
    return data;
  }
}
