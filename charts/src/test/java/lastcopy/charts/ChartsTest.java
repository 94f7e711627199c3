package lastcopy.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lastcopy.experiment.Comparison;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class ChartsTest {

  private static final LocalDate DATE = LocalDate.of(2026, 3, 14);

  @TempDir Path directory;

  @Test
  void curveHoldsEveryLayoutFromTodayInStudiosOfAThousand() {
    YIntervalSeriesCollection data = LossCurveChart.dataset(Sample.result());
    assertThat(data.getSeriesCount()).isEqualTo(3);
    assertThat(data.getSeriesKey(1).toString()).isEqualTo("Two drives mirrored in one box");
    assertThat(data.getItemCount(0)).isEqualTo(21);
    assertThat(data.getXValue(0, 0)).isZero();
    assertThat(data.getYValue(0, 0)).isZero();
    assertThat(data.getXValue(0, 20)).isEqualTo(5);
    double expected = -1000 * Math.expm1(-0.3);
    assertThat(data.getYValue(0, 20)).isCloseTo(expected, within(1e-9));
    assertThat(data.getStartYValue(0, 20)).isLessThan(expected);
    assertThat(data.getEndYValue(0, 20)).isGreaterThan(expected);
  }

  @Test
  void curveAxesHoldTheHorizonAndTheHighestBand() {
    JFreeChart chart = LossCurveChart.of(Sample.result(), DATE);
    assertThat(chart.getXYPlot().getDomainAxis().getLabel()).isEqualTo("Years from today");
    assertThat(chart.getXYPlot().getDomainAxis().getUpperBound()).isEqualTo(5);
    assertThat(chart.getXYPlot().getRangeAxis().getLabel())
        .isEqualTo("Chance of losing any footage (of 1,000 studios)");
    assertThat(chart.getXYPlot().getRangeAxis().getLowerBound()).isZero();
    double high = LossCurveChart.dataset(Sample.result()).getEndYValue(0, 20);
    assertThat(chart.getXYPlot().getRangeAxis().getUpperBound()).isBetween(high, 1.2 * high);
  }

  @Test
  void rareLossesAreToldOfMoreStudios() {
    JFreeChart chart = LossCurveChart.of(Sample.result(4e-5, 1e-6, 0), DATE);
    assertThat(chart.getXYPlot().getRangeAxis().getLabel()).contains("of 10,000 studios");
  }

  /** Names stand beside the lines, with what the axis counts; by hand, 1,000(1 - e^-0.3). */
  @Test
  void eachLineIsNamedWhereItEndsWithItsNumber() {
    LabelledPlot plot = (LabelledPlot) LossCurveChart.of(Sample.result(), DATE).getXYPlot();
    EndLabels.Label worst = plot.labels().get(0);
    assertThat(worst.lines()).containsExactly("One external drive", "259 of 1,000");
    assertThat(worst.height())
        .isCloseTo(
            1 - 1000 * -Math.expm1(-0.3) / plot.getRangeAxis().getUpperBound(), within(1e-9));
    assertThat(plot.labels().get(2).height()).isGreaterThan(worst.height());
  }

  /** More than a hundred times as often: by powers of ten, which the axis says. */
  @Test
  void layoutsFarApartAreDrawnByPowersOfTen() {
    JFreeChart chart = LossCurveChart.of(Sample.result(0.3, 0.02, 2e-5), DATE);
    assertThat(chart.getXYPlot().getRangeAxis()).isInstanceOf(LogAxis.class);
    assertThat(chart.getXYPlot().getRangeAxis().getLabel())
        .isEqualTo("Studios, of 100,000 (each line is ten times as many)");
    assertThat(chart.getXYPlot().getDataset().getXValue(0, 0)).isPositive();
    double floor = chart.getXYPlot().getRangeAxis().getLowerBound();
    assertThat(floor).isEqualTo(0.1);
    LabelledPlot plot = (LabelledPlot) chart.getXYPlot();
    assertThat(plot.labels().get(2).lines()).last().asString().endsWith(" of 100,000");
    assertThat(plot.labels().get(2).height()).isBetween(0.5, 0.95);
    assertThat(LossCurveChart.of(Sample.result(0.3, 0.02, 4e-3), DATE).getXYPlot().getRangeAxis())
        .isNotInstanceOf(LogAxis.class);
  }

  @Test
  void theEndOfTheAmountsIsMarked() {
    XYPlot plot = ExceedanceChart.of(Sample.result(), DATE).getXYPlot();
    ValueMarker end = (ValueMarker) plot.getDomainMarkers(Layer.FOREGROUND).iterator().next();
    assertThat(end.getValue()).isCloseTo(4e13, within(1e6));
    assertThat(end.getLabel()).isEqualTo("all that is ever shot");
  }

  @Test
  void neverSeenLossesStillGiveAnAxis() {
    JFreeChart chart = LossCurveChart.of(Sample.result(0, 0, 0), DATE);
    assertThat(chart.getXYPlot().getRangeAxis().getUpperBound()).isPositive();
  }

  @Test
  void chartsAreDatedAndCautious() {
    for (JFreeChart chart : both()) {
      assertThat(subtitles(chart))
          .contains("Harbour Lane Films")
          .contains("95 % pointwise sampling intervals")
          .contains("not a guarantee")
          .contains("2026-03-14");
      assertThat(chart.getLegend()).isNull();
      assertThat(((LabelledPlot) chart.getXYPlot()).labels()).hasSize(3);
    }
  }

  /** What was simulated until an interruption is drawn, and marked. */
  @Test
  void anInterruptedRunIsMarkedOnEveryChart() {
    Comparison all = Sample.result();
    Comparison part =
        new Comparison(
            all.studio(),
            all.years(),
            all.currency(),
            all.seed(),
            all.confidence(),
            false,
            all.layouts(),
            all.pairs());
    assertThat(subtitles(LossCurveChart.of(part, DATE))).contains("UNFINISHED: interrupted");
    assertThat(subtitles(ExceedanceChart.of(part, DATE))).contains("UNFINISHED: interrupted");
    assertThat(both()).noneMatch(chart -> subtitles(chart).contains("UNFINISHED"));
  }

  @Test
  void layoutsDifferInColourAndInDashes() {
    JFreeChart chart = LossCurveChart.of(Sample.result(), DATE);
    Set<Object> colours = new HashSet<>();
    Set<Object> dashes = new HashSet<>();
    for (int i = 0; i < 3; i++) {
      colours.add(chart.getXYPlot().getRenderer().getSeriesPaint(i));
      BasicStroke stroke = (BasicStroke) chart.getXYPlot().getRenderer().getSeriesStroke(i);
      dashes.add(java.util.Arrays.toString(stroke.getDashArray()));
    }
    assertThat(colours).hasSize(3);
    assertThat(dashes).hasSize(3);
  }

  /** Red with seven colours, the eighth layout then having the first's. */
  @Test
  void eachLayoutThatIsNamedBesideItsLineHasAColourOfItsOwn() {
    YIntervalSeriesCollection lines = new YIntervalSeriesCollection();
    for (int i = 0; i < EndLabels.MOST; i++) {
      lines.addSeries(new YIntervalSeries("layout " + i));
    }
    JFreeChart chart =
        Look.chart(
            new Look.Words("title", "below", "foot"),
            lines,
            new Look.Axes(new NumberAxis("x"), new NumberAxis("y")));
    Set<Object> colours = new HashSet<>();
    for (int i = 0; i < EndLabels.MOST; i++) {
      colours.add(chart.getXYPlot().getRenderer().getSeriesPaint(i));
    }
    assertThat(colours).hasSize(EndLabels.MOST);
  }

  @Test
  void exceedanceIsLogarithmicInBytes() {
    JFreeChart chart = ExceedanceChart.of(Sample.result(), DATE);
    assertThat(chart.getXYPlot().getDomainAxis()).isInstanceOf(LogAxis.class);
    assertThat(chart.getXYPlot().getDomainAxis().getLowerBound()).isBetween(0.7e9, 0.9e9);
    assertThat(chart.getXYPlot().getDomainAxis().getUpperBound()).isBetween(4.5e13, 6e13);
    assertThat(ExceedanceChart.dataset(Sample.result()).getItemCount(2)).isEqualTo(41);
  }

  @Test
  void filesAreValidAndNothingElseIsLeft() throws Exception {
    List<Path> files =
        ChartFiles.writeAll(Sample.result(), DATE, directory, List.of(ChartFiles.Format.values()));
    assertThat(files).hasSize(4);
    try (var listed = Files.list(directory)) {
      assertThat(listed).containsExactlyInAnyOrderElementsOf(files);
    }
    assertThat(ImageIO.read(directory.resolve("loss-curve.png").toFile()).getWidth())
        .isEqualTo(900);
    Path svg = directory.resolve("exceedance.svg");
    assertThat(parsed(svg).getDocumentElement().getTagName()).isEqualTo("svg");
  }

  /** An editor, a browser and a reader of a screen must need nothing but the file. */
  @Test
  void anSvgStandsAloneAndSaysWhatItShows() throws Exception {
    Path file = directory.resolve("alone.svg");
    ChartFiles.write(LossCurveChart.of(Sample.result(), DATE), file, ChartFiles.Format.SVG);
    Document document = parsed(file);
    assertThat(document.getDoctype()).isNull();
    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 900 560");
    assertThat(root.getAttribute("role")).isEqualTo("img");
    Node title = root.getFirstChild();
    assertThat(title.getNodeName()).isEqualTo("title");
    assertThat(title.getTextContent()).contains("loses footage", "Harbour Lane Films");
    Node description = title.getNextSibling();
    assertThat(description.getNodeName()).isEqualTo("desc");
    assertThat(description.getTextContent())
        .contains("Chance of losing any footage (of 1,000 studios), against: Years from today")
        .contains("One external drive; Two drives mirrored in one box")
        .contains("95 % pointwise sampling intervals", "2026-03-14");
    assertThat(root.getAttribute("aria-labelledby").split(" "))
        .containsExactly(
            ((Element) title).getAttribute("id"), ((Element) description).getAttribute("id"));
    // The only address is the name of the format itself.
    String text = Files.readString(file);
    assertThat(text.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
        .doesNotContain("://", "href", "<!DOCTYPE", "<style", "<image");
    assertThat(text).contains(">One external drive</text>").contains("stroke-dasharray");
  }

  /** Characters that XML 1.0 has no way to write, and those that it writes as references. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a\u0000b",
        "a\u001bb",
        "a\ufffeb",
        "a\ud800b",
        "<a> & \"b\"",
        "\u5bfa\ud83c\udfa5"
      })
  void anSvgIsWellFormedWhateverTheNames(String name) throws Exception {
    JFreeChart chart = LossCurveChart.of(Sample.result(), DATE);
    chart.setTitle(name);
    Path file = directory.resolve("name.svg");
    ChartFiles.write(chart, file, ChartFiles.Format.SVG);
    String kept = name.replaceAll("[\u0000\u001b\ufffe\ud800]", "\ufffd");
    assertThat(parsed(file).getDocumentElement().getFirstChild().getTextContent())
        .startsWith(kept + " ");
  }

  /** Fails on whatever is not well-formed, and on any document type. */
  private static Document parsed(Path svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(svg.toFile());
  }

  @Test
  void sameChartGivesTheSameSvg() throws Exception {
    Path one = directory.resolve("one.svg");
    Path two = directory.resolve("two.svg");
    ChartFiles.write(LossCurveChart.of(Sample.result(), DATE), one, ChartFiles.Format.SVG);
    ChartFiles.write(LossCurveChart.of(Sample.result(), DATE), two, ChartFiles.Format.SVG);
    assertThat(one).hasSameTextualContentAs(two);
  }

  @Test
  void missingFontsAreToldWithTheirPackages() {
    assertThatThrownBy(
            () ->
                ChartFiles.drawn(
                    () -> {
                      throw new NoClassDefFoundError("sun.awt.X11FontManager");
                    }))
        .isInstanceOf(ChartException.class)
        .hasMessageContaining("fontconfig fonts-dejavu-core libfreetype6");
  }

  @Test
  void denominatorsAndAmountsReadWell() {
    assertThat(OutOf.showing(0.001).words()).isEqualTo("1,000 studios");
    assertThat(OutOf.showing(0.0009).words()).isEqualTo("10,000 studios");
    assertThat(OutOf.showing(0).words()).isEqualTo("1,000 studios");
    assertThat(ByteUnit.format(2.5e12)).isEqualTo("2.5 TB");
    assertThat(ByteUnit.format(1e11)).isEqualTo("100 GB");
    assertThat(ByteUnit.format(1e9 * (1 - 1e-12))).isEqualTo("1 GB");
  }

  private static String subtitles(JFreeChart chart) {
    String text = "";
    for (Object title : chart.getSubtitles()) {
      text += title instanceof TextTitle line ? line.getText() + "\n" : "";
    }
    return text;
  }

  private static List<JFreeChart> both() {
    return List.of(
        LossCurveChart.of(Sample.result(), DATE), ExceedanceChart.of(Sample.result(), DATE));
  }
}
