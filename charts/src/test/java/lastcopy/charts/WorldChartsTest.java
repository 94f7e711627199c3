package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known, on charts: a band of its own, and bars. */
class WorldChartsTest {

  private static final LocalDate DATE = LocalDate.of(2026, 3, 14);

  @TempDir private Path directory;

  private static Comparison result() {
    Comparison plain = Sample.result();
    List<Worlds.OfLayout> layouts =
        plain.layouts().stream()
            .map(
                layout ->
                    new Worlds.OfLayout(
                        layout.id(),
                        512,
                        new Worlds.Spread(layout.anyLoss(), Optional.empty()),
                        new Worlds.Spread(layout.bytesLost(), Optional.empty()),
                        Optional.empty(),
                        List.of(
                            new Worlds.CurvePoint(2.5, 0.05, 0.1, 0.4),
                            new Worlds.CurvePoint(5, 0.1, 0.2, 0.6))))
            .toList();
    String first = plain.layouts().get(0).id();
    List<Worlds.OfUnknown> unknowns =
        List.of(
            unknown("drives.desk.fails", first, 0.2), unknown("desk.deletion.rate", first, 0.7));
    return new Comparison(
        plain.studio(),
        plain.years(),
        plain.currency(),
        plain.seed(),
        plain.confidence(),
        plain.finished(),
        plain.layouts(),
        plain.pairs(),
        Optional.of(new Worlds(layouts, List.of(), unknowns)));
  }

  private static Worlds.OfUnknown unknown(String key, String layout, double share) {
    Estimate estimate = new Estimate(share, share - 0.05, share + 0.05, true);
    return new Worlds.OfUnknown(key, 1, 4, "%/year", List.of(new Worlds.Share(layout, estimate)));
  }

  @Test
  void theBandIsFromTheFifthToTheNinetyFifthPercentile() {
    YIntervalSeriesCollection band = WorldBands.dataset(result(), new OutOf(1_000), 0);
    assertThat(band.getXValue(0, 2)).isEqualTo(5);
    assertThat(band.getYValue(0, 2)).isEqualTo(200);
    assertThat(band.getStartYValue(0, 2)).isEqualTo(100);
    assertThat(band.getEndYValue(0, 2)).isEqualTo(600);
    assertThat(band.getEndYValue(0, 0)).isZero();
  }

  /** Two shades, the axis holds both, and words say which is which. */
  @Test
  void bothBandsStandOnTheChart() {
    JFreeChart chart = LossCurveChart.of(result(), DATE);
    assertThat(chart.getXYPlot().getDatasetCount()).isEqualTo(2);
    assertThat(chart.getXYPlot().getRangeAxis().getUpperBound()).isGreaterThan(600);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < chart.getSubtitleCount(); i++) {
      if (chart.getSubtitle(i) instanceof TextTitle title) {
        words.add(title.getText());
      }
    }
    assertThat(words)
        .anyMatch(text -> text.startsWith("Lighter bands: what is not known"))
        .anyMatch(text -> text.startsWith("Darker bands: 95 % pointwise sampling"));
    assertThat(LossCurveChart.of(Sample.result(), DATE).getXYPlot().getDatasetCount()).isEqualTo(1);
  }

  @Test
  void theBarsAreRanked() {
    CategoryDataset bars = UnknownsChart.dataset(result());
    assertThat(bars.getColumnKey(0).toString()).isEqualTo("desk.deletion.rate: 1 to 4 %/year");
    assertThat(bars.getValue(0, 0).doubleValue()).isEqualTo(70);
    assertThat(bars.getRowKey(0).toString()).isEqualTo(result().layouts().get(0).title());
  }

  /** Red if a bar gets another's interval, or its share's as a fraction. */
  @Test
  void eachBarHasItsIntervalAndTheFootSaysSo() {
    List<List<Estimate>> intervals = UnknownsChart.intervals(result());
    CategoryDataset bars = UnknownsChart.dataset(result());
    assertThat(intervals).hasSize(bars.getRowCount());
    assertThat(intervals.get(0)).hasSize(bars.getColumnCount());
    assertThat(intervals.get(0).get(0).low()).isCloseTo(65, within(1e-9));
    assertThat(intervals.get(0).get(0).high()).isCloseTo(75, within(1e-9));
    assertThat(intervals.get(0).get(1).high()).isCloseTo(25, within(1e-9));
    JFreeChart chart = UnknownsChart.of(result(), DATE);
    assertThat(chart.getCategoryPlot().getRenderer()).isInstanceOf(WhiskerBars.class);
    assertThat(((TextTitle) chart.getSubtitle(chart.getSubtitleCount() - 1)).getText())
        .contains("Lines: 95 % sampling intervals.");
  }

  @Test
  void allChartsAreWritten() throws Exception {
    List<Path> written =
        ChartFiles.writeAll(result(), DATE, directory, EnumSet.allOf(ChartFiles.Format.class));
    assertThat(written)
        .contains(directory.resolve("unknowns.png"), directory.resolve("unknowns.svg"))
        .allMatch(file -> file.toFile().length() > 1_000);
  }
}
