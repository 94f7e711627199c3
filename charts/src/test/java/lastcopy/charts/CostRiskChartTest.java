package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.IntervalXYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cost against risk: what is drawn where, and on which axis. */
class CostRiskChartTest {

  @TempDir Path folder;

  private static CostRiskChart.Point point(String name, double chance, double cost) {
    return new CostRiskChart.Point(
        name,
        new Estimate(chance, 0.9 * chance, 1.1 * chance, true),
        new Estimate(cost, cost - 5, cost + 5, true));
  }

  private static CostRiskChart.Layouts layouts(double safest) {
    return new CostRiskChart.Layouts(
        List.of(point("box", 0.2, 100), point("box-7", safest, 400)),
        point("today", 0.25, 150),
        List.of(point("box-3", 0.22, 300)));
  }

  private static JFreeChart chart(double safest, boolean finished) {
    return CostRiskChart.of(layouts(safest), frame(finished));
  }

  private static CostRiskChart.Frame frame(boolean finished) {
    return new CostRiskChart.Frame(
        "Kiln Lane Weddings",
        5,
        Optional.of("EUR"),
        new OutOf(1_000),
        0.95,
        finished,
        LocalDate.of(2026, 1, 1));
  }

  @Test
  void theFrontHasItsPlacesIntervalsAndSteps() {
    XYPlot plot = chart(0.05, true).getXYPlot();
    IntervalXYDataset front = (IntervalXYDataset) plot.getDataset(0);

    assertThat(front.getItemCount(0)).isEqualTo(2);
    assertThat(front.getXValue(0, 1)).isEqualTo(400);
    assertThat(front.getStartXValue(0, 1)).isEqualTo(395);
    assertThat(front.getYValue(0, 1)).isEqualTo(50);
    assertThat(front.getEndYValue(0, 0)).isCloseTo(220, within(1e-9));
    assertThat(plot.getDataset(1).getYValue(0, 0)).isEqualTo(250);
    assertThat(plot.getDataset(2).getXValue(0, 0)).isEqualTo(300);
    assertThat(plot.getRenderer(3)).isInstanceOf(XYStepRenderer.class);
    assertThat(plot.getAnnotations()).hasSize(2);
    assertThat(plot.getDomainAxis().getLabel()).isEqualTo("Cost over 5 years (EUR)");
  }

  /** From a hundred times apart on in powers of ten, which the axis says. */
  @Test
  void whatIsFarApartHasPowersOfTen() {
    assertThat(chart(0.05, true).getXYPlot().getRangeAxis()).isInstanceOf(NumberAxis.class);
    XYPlot far = chart(0.0001, true).getXYPlot();
    assertThat(far.getRangeAxis()).isInstanceOf(LogAxis.class);
    assertThat(far.getRangeAxis().getLabel()).endsWith("(each line is ten times as many)");
    assertThat(far.getRangeAxis().getLowerBound()).isLessThan(0.1);
  }

  @Test
  void eachIsInTheLegendOnceAndTheFootSaysWhatIsUnfinished() throws Exception {
    Path written =
        CostRiskChart.writeAll(layouts(0.05), frame(false), folder, List.of(ChartFiles.Format.SVG))
            .get(0);
    assertThat(chart(0.05, true).getXYPlot().getLegendItems().getItemCount()).isEqualTo(3);
    String svg = Files.readString(written);
    assertThat(written.getFileName()).hasToString("cost-and-risk.svg");
    assertThat(svg).contains("UNFINISHED").contains("What does less risk cost?");
  }
}
