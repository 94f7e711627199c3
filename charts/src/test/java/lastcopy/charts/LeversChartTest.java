package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CategoryPlot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeversChartTest {

  @TempDir Path directory;

  private static final LeversChart.Around AROUND =
      new LeversChart.Around(
          "Studio A", "A mirror", 5, new OutOf(1_000), 0.95, false, LocalDate.of(2026, 1, 2));

  private static final LeversChart.Bar NUMBER =
      new LeversChart.Bar(
          "deletions",
          List.of(new Estimate(-0.06, -0.07, -0.05, true), new Estimate(0.11, 0.10, 0.13, true)));

  /** Studios of the denominator, at half and at double; both whole intervals are on the axis. */
  @Test
  void barsAreStudiosAndTheAxisHoldsTheirIntervals() {
    JFreeChart chart = LeversChart.ofNumbers(List.of(NUMBER), AROUND);
    CategoryPlot plot = chart.getCategoryPlot();

    assertThat(plot.getDataset().getValue("At half of it", "deletions").doubleValue())
        .isEqualTo(-60);
    assertThat(plot.getDataset().getValue("At double", "deletions").doubleValue()).isEqualTo(110);
    assertThat(plot.getRangeAxis().getRange().contains(-70)).isTrue();
    assertThat(plot.getRangeAxis().getRange().contains(130)).isTrue();
    assertThat(plot.getRangeAxis().getLabel()).contains("1,000 studios");
  }

  @Test
  void bothAreWrittenInEachFormatAndSayWhatTheyAre() throws Exception {
    LeversChart.Bar change =
        new LeversChart.Bar("cards kept", List.of(new Estimate(0.02, 0.01, 0.03, true)));
    List<Path> written =
        LeversChart.writeAll(
            List.of(change),
            List.of(NUMBER),
            AROUND,
            directory,
            List.of(ChartFiles.Format.values()));

    assertThat(written)
        .extracting(file -> file.getFileName().toString())
        .containsExactly("levers.png", "assumptions.png", "levers.svg", "assumptions.svg");
    String svg = Files.readString(directory.resolve("levers.svg"));
    assertThat(svg).contains("cards kept").contains("UNFINISHED").contains("hold all together");
  }
}
