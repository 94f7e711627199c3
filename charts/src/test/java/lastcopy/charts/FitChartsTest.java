package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import lastcopy.fit.Fitted;
import lastcopy.fit.LifeRecord;
import lastcopy.fit.Records;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts of lifetimes from records: their numbers, not their pixels. */
class FitChartsTest {

  @TempDir Path directory;

  /** Failures after 1, 2, 3 years of eight drives watched for four. */
  private static FitChartFiles.Pictured sample(boolean atChecks) {
    List<LifeRecord> records = new ArrayList<>();
    for (int year = 1; year <= 3; year++) {
      records.add(
          atChecks ? LifeRecord.failedBetween(0, year - 0.5, year) : LifeRecord.failedAt(0, year));
    }
    for (int i = 0; i < 5; i++) {
      records.add(LifeRecord.running(0, 4));
    }
    Fitted fitted = Fitted.of(new Records(records), 1, 0.95);
    return new FitChartFiles.Pictured(
        "records.csv",
        8_760,
        0.95,
        LocalDate.of(2026, 3, 14),
        fitted,
        List.of(new FitChartFiles.Group("a", fitted), new FitChartFiles.Group("b", fitted)));
  }

  /** By hand: 7/8 from one year on, upright. */
  @Test
  void theCurveOfTheRecordsGoesDownInSteps() {
    YIntervalSeriesCollection data = SurvivalChart.dataset(sample(false));
    assertThat(data.getSeriesCount()).isEqualTo(4);
    assertThat(data.getXValue(0, 1)).isEqualTo(1);
    assertThat(data.getYValue(0, 1)).isEqualTo(100);
    assertThat(data.getXValue(0, 2)).isEqualTo(1);
    assertThat(data.getYValue(0, 2)).isCloseTo(87.5, within(1e-9));
    assertThat(data.getStartYValue(0, 2)).isLessThan(80);
    assertThat(data.getXValue(0, 7)).isEqualTo(4);
    // The constant rate by hand: three failures in 26 years.
    assertThat(data.getSeriesKey(1).toString()).isEqualTo("constant rate");
    assertThat(data.getYValue(1, 120)).isCloseTo(100 * Math.exp(-12 / 26.0), within(1e-9));
  }

  /** Nobody knows where between two checks it falls. */
  @Test
  void theCurveIsSlantedBetweenChecks() {
    YIntervalSeriesCollection data = SurvivalChart.dataset(sample(true));
    assertThat(data.getXValue(0, 1)).isEqualTo(0.5);
    assertThat(data.getYValue(0, 1)).isEqualTo(100);
    assertThat(data.getXValue(0, 2)).isEqualTo(1);
    assertThat(data.getYValue(0, 2)).isCloseTo(87.5, within(1e-6));
    assertThat(text(SurvivalChart.of(sample(true)))).contains("between two checks");
  }

  @Test
  void dotsLieMidwayUpTheStepsAndAWeibullLawIsStraight() {
    YIntervalSeriesCollection data = ProbabilityPlot.dataset(sample(false));
    assertThat(data.getItemCount(0)).isEqualTo(3);
    assertThat(data.getYValue(0, 0)).isCloseTo(Math.log(-Math.log(1 - 0.0625)), within(1e-9));
    int last = data.getItemCount(2) - 1;
    double slope =
        (data.getYValue(2, last) - data.getYValue(2, 0))
            / (data.getXValue(2, last) - data.getXValue(2, 0));
    double half =
        (data.getYValue(2, last / 2) - data.getYValue(2, 0))
            / (data.getXValue(2, last / 2) - data.getXValue(2, 0));
    assertThat(half).isCloseTo(slope, within(1e-9));
    MarkedAxis failed = (MarkedAxis) ProbabilityPlot.of(sample(false)).getXYPlot().getRangeAxis();
    assertThat(failed.shown()).contains("5", "10", "20", "30").doesNotContain("0.01");
  }

  @Test
  void chartsAreDatedAndCautious() {
    for (JFreeChart chart :
        List.of(
            SurvivalChart.of(sample(false)),
            SurvivalChart.ofGroups(sample(false)),
            ProbabilityPlot.of(sample(false)))) {
      assertThat(text(chart))
          .contains("8 drives, 3 of them failed (records.csv)")
          .contains("A few records are no certainty. Drawn 2026-03-14.");
    }
    assertThat(text(SurvivalChart.of(sample(false)))).contains("Band: 95 % interval");
  }

  @Test
  void everyChartIsWrittenInEveryFormat() throws Exception {
    List<Path> written =
        FitChartFiles.writeAll(
            sample(false), directory, List.of(ChartFiles.Format.PNG, ChartFiles.Format.SVG));
    assertThat(written).hasSize(6).allSatisfy(file -> assertThat(file).isNotEmptyFile());
    Path png = directory.resolve("survival-by-group.png");
    assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(ChartFiles.WIDTH);
  }

  @Test
  void whereNothingFailedThereIsNothingToDraw() throws Exception {
    Fitted none = Fitted.of(new Records(List.of(LifeRecord.running(0, 4))), 1, 0.95);
    FitChartFiles.Pictured what =
        new FitChartFiles.Pictured("r.csv", 1, 0.95, LocalDate.of(2026, 1, 1), none, List.of());
    assertThat(FitChartFiles.writeAll(what, directory, List.of(ChartFiles.Format.PNG))).isEmpty();
  }

  private static String text(JFreeChart chart) {
    StringBuilder text = new StringBuilder();
    for (Object title : chart.getSubtitles()) {
      text.append(title instanceof TextTitle line ? line.getText() + "\n" : "");
    }
    return text.toString();
  }
}
