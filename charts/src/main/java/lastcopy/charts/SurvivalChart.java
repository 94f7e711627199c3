package lastcopy.charts;

import java.util.ArrayList;
import java.util.List;
import lastcopy.fit.Fitted;
import lastcopy.fit.FittedLaw;
import lastcopy.fit.Step;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** How many drives of a hundred still run at each age: the records' own curve and fitted laws. */
public final class SurvivalChart {

  private static final int POINTS = 120;
  private static final double HUNDRED = 100;
  private static final String SLANTED = "Slanted: failures between two checks.";

  /** More lines than colours tell nobody anything. */
  private static final int MOST_GROUPS = 6;

  private SurvivalChart() {}

  /** All records, with their band and the laws. */
  public static JFreeChart of(FitChartFiles.Pictured what) {
    String records = what.all().lives().between() ? SLANTED : band(what);
    return chart(
        what, "How long do these drives run?", what.counts(), records + laws(), dataset(what));
  }

  /** Each group by itself, with its band. */
  public static JFreeChart ofGroups(FitChartFiles.Pictured what) {
    int left = what.groups().size() - MOST_GROUPS;
    String more = left > 0 ? " The first " + MOST_GROUPS + " groups of the file." : "";
    return chart(
        what, "How long do the groups run?", what.counts(), band(what) + more, groupDataset(what));
  }

  private static String band(FitChartFiles.Pictured what) {
    return "Band: " + what.percent() + " % interval of the steps.";
  }

  private static String laws() {
    return " Smooth lines: fitted laws.";
  }

  private static JFreeChart chart(
      FitChartFiles.Pictured what,
      String title,
      String below,
      String bands,
      YIntervalSeriesCollection data) {
    AgeAxis unit = unit(what);
    NumberAxis running = new NumberAxis("Still running (of 100 drives)");
    running.setRange(0, HUNDRED);
    running.setNumberFormatOverride(new StudioFormat());
    double oldest = what.all().lives().oldest() * what.hours() / unit.hours();
    return Look.chart(
        new Look.Words(title, below, what.foot(bands.strip())),
        data,
        new Look.Axes(unit.axis(oldest), running));
  }

  /** The records' own curve first, then each law. */
  static YIntervalSeriesCollection dataset(FitChartFiles.Pictured what) {
    double scale = what.hours() / unit(what).hours();
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(steps("the records", what.all(), scale));
    what.all()
        .exponential()
        .ifPresent(law -> data.addSeries(law("constant rate", law, what.all(), scale)));
    what.all().weibull().ifPresent(law -> data.addSeries(law("Weibull", law, what.all(), scale)));
    what.all()
        .lognormal()
        .ifPresent(law -> data.addSeries(law("lognormal", law, what.all(), scale)));
    return data;
  }

  /** A curve for each of the first groups. */
  static YIntervalSeriesCollection groupDataset(FitChartFiles.Pictured what) {
    double scale = what.hours() / unit(what).hours();
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    what.groups().stream()
        .limit(MOST_GROUPS)
        .forEach(group -> data.addSeries(steps(group.name(), group.fitted(), scale)));
    return data;
  }

  private static AgeAxis unit(FitChartFiles.Pictured what) {
    return AgeAxis.upTo(what.all().lives().oldest() * what.hours());
  }

  /** Where ages at failure are known, upright steps; else slanted, since nobody knows where. */
  private static YIntervalSeries steps(String name, Fitted fitted, double scale) {
    YIntervalSeries series = new YIntervalSeries(name, false, true);
    double[] now = {1, 1, 1};
    series.add(0, HUNDRED, HUNDRED, HUNDRED);
    for (Step step : fitted.steps()) {
      add(series, step.from() * scale, now);
      now = after(step, now);
      add(series, step.age() * scale, now);
    }
    add(series, fitted.lives().oldest() * scale, now);
    return series;
  }

  /** Once all have failed there is no interval: the last upper end stays. */
  private static double[] after(Step step, double... before) {
    if (Double.isNaN(step.high())) {
      boolean down = step.survival() <= 0 && before[2] > before[0];
      return new double[] {step.survival(), step.survival(), down ? before[2] : step.survival()};
    }
    return new double[] {step.survival(), step.low(), step.high()};
  }

  private static void add(YIntervalSeries series, double age, double... now) {
    series.add(age, HUNDRED * now[0], HUNDRED * now[1], HUNDRED * now[2]);
  }

  private static YIntervalSeries law(String name, FittedLaw law, Fitted fitted, double scale) {
    YIntervalSeries series = new YIntervalSeries(name);
    List<Double> ages = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      ages.add(fitted.lives().oldest() * i / POINTS);
    }
    for (double age : ages) {
      double running = HUNDRED * law.survival(age);
      series.add(age * scale, running, running, running);
    }
    return series;
  }
}
