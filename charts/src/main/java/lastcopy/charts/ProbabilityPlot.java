package lastcopy.charts;

import java.awt.geom.Ellipse2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lastcopy.fit.Fitted;
import lastcopy.fit.FittedLaw;
import lastcopy.fit.PlotPoint;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Whether laws go through the records: on these scales a Weibull law is a straight line. */
public final class ProbabilityPlot {

  private static final int POINTS = 80;
  private static final double DOT = 7;
  private static final int LEAST_POWER = -4;
  private static final int MOST_POWER = 6;
  private static final double[] PERCENT = {
    0.001, 0.01, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 50, 70, 90, 99, 99.9
  };

  private ProbabilityPlot() {}

  /** The plot of all records. */
  public static JFreeChart of(FitChartFiles.Pictured what) {
    AgeAxis unit = unit(what);
    double scale = what.hours() / unit.hours();
    List<PlotPoint> points = what.all().plot();
    double first = points.get(0).age() * scale;
    double last = what.all().lives().oldest() * scale;
    MarkedAxis age = new MarkedAxis(unit.label(), ageMarks());
    age.setRange(Math.log(first / 1.5), Math.log(1.2 * Math.max(last, first)));
    MarkedAxis failed = new MarkedAxis("Failed by then (of 100 drives)", failedMarks());
    failed.setRange(points.get(0).y() - 1, points.get(points.size() - 1).y() + 0.7);
    JFreeChart chart =
        Look.chart(
            new Look.Words(
                "Do the laws go through the records?",
                what.counts(),
                what.foot("Dots: failures. A law fits where its line runs through the dots.")),
            dataset(what),
            new Look.Axes(age, failed));
    dots((DeviationRenderer) chart.getXYPlot().getRenderer());
    return chart;
  }

  /** At 1, 2, 5, 10, 20 ... of the unit. */
  private static List<MarkedAxis.Mark> ageMarks() {
    List<MarkedAxis.Mark> marks = new ArrayList<>();
    for (int power = LEAST_POWER; power <= MOST_POWER; power++) {
      for (int digit : new int[] {1, 2, 5}) {
        double age = digit * Math.pow(10, power);
        marks.add(new MarkedAxis.Mark(Math.log(age), words(age)));
      }
    }
    return marks;
  }

  private static List<MarkedAxis.Mark> failedMarks() {
    return Arrays.stream(PERCENT)
        .mapToObj(
            percent -> new MarkedAxis.Mark(new PlotPoint(1, percent / 100).y(), words(percent)))
        .toList();
  }

  /** As many decimals as it takes. */
  private static String words(double number) {
    return new BigDecimal(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** The first series is of dots alone. */
  private static void dots(DeviationRenderer renderer) {
    renderer.setSeriesLinesVisible(0, false);
    renderer.setSeriesShapesVisible(0, true);
    renderer.setSeriesShape(0, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
  }

  /** The dots, then each law. */
  static YIntervalSeriesCollection dataset(FitChartFiles.Pictured what) {
    double scale = what.hours() / unit(what).hours();
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    YIntervalSeries dots = new YIntervalSeries("failures in the records");
    what.all()
        .plot()
        .forEach(point -> dots.add(Math.log(point.age() * scale), point.y(), point.y(), point.y()));
    data.addSeries(dots);
    Fitted all = what.all();
    all.exponential().ifPresent(law -> data.addSeries(law("constant rate", law, what, scale)));
    all.weibull().ifPresent(law -> data.addSeries(law("Weibull", law, what, scale)));
    all.lognormal().ifPresent(law -> data.addSeries(law("lognormal", law, what, scale)));
    return data;
  }

  private static YIntervalSeries law(
      String name, FittedLaw law, FitChartFiles.Pictured what, double scale) {
    YIntervalSeries series = new YIntervalSeries(name);
    double from = Math.log(what.all().plot().get(0).age() / 2);
    double to = Math.log(1.3 * what.all().lives().oldest());
    for (int i = 0; i <= POINTS; i++) {
      double age = Math.exp(from + (to - from) * i / POINTS);
      double share = 1 - law.survival(age);
      if (share > 0 && share < 1) {
        double y = new PlotPoint(age, share).y();
        series.add(Math.log(age * scale), y, y, y);
      }
    }
    return series;
  }

  private static AgeAxis unit(FitChartFiles.Pictured what) {
    return AgeAxis.upTo(what.all().lives().oldest() * what.hours());
  }
}
