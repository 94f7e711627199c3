package lastcopy.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A report on pages of different widths, to the letter; {@code -Dpages=renew} writes the references
 * anew, each of which is then to be read.
 *
 * <p>Sabotage seen red: a paragraph wrapped at 80 on a page of 60; the plot's first layout drawn
 * under the others; powers of ten from 10 times apart on.
 */
class PageWidthsTest {

  private static final Path STORED = Path.of("src/test/resources/lastcopy/cli/pages");

  private static final Remarks REMARKS =
      new Remarks(List.of(), Map.of(), List.of(), List.of("The upload never catches up."));

  private static String page(int width, boolean plot) {
    return TextReport.of(
        SampleComparison.result(true),
        REMARKS,
        new TextReport.Asked(true, plot, new PageLook(width, false, false)));
  }

  private static void same(String text, String name) throws IOException {
    Path stored = STORED.resolve(name);
    if (System.getProperty("pages", "").equals("renew")) {
      Files.writeString(stored, text);
    }
    assertThat(text).isEqualTo(Files.readString(stored));
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 80, 200})
  void aPageIsAsItWasRead(int width) throws IOException {
    same(page(width, true), width + ".txt");
  }

  /** What is stored beside the demos stays as it is. */
  @Test
  void eightyColumnsAreWhatAPipeGets() {
    assertThat(page(80, false))
        .isEqualTo(TextReport.of(SampleComparison.result(true), REMARKS, true));
  }

  @Test
  void noLineIsWiderThanItsPage() {
    for (int width = PageLook.NARROWEST; width <= PageLook.WIDEST; width++) {
      int most = width;
      assertThat(page(width, true).lines()).allMatch(line -> line.length() <= most);
    }
  }

  /** 70 and 8 of 1,000, the third never: 9 times apart, so from 0 on. */
  @Test
  void thePlotBeginsAtNothingWhereLayoutsAreOfOneSize() {
    String plot = plot(0.07, 0.008);
    assertThat(plot).contains("so many have lost footage by then, over 5 years from today:");
    assertThat(plot).doesNotContain("ten times");
    assertThat(plot.lines().filter(line -> line.matches(" +0 \\|.*"))).hasSize(1);
    assertThat(plot.lines().filter(line -> line.matches(" +80 \\|.*"))).hasSize(1);
    // At the end of the row of 70 and of 8: the last of the plot's 70 columns.
    assertThat(end(plot, '*')).isEqualTo(10 + 69);
    assertThat(plot).contains("  * Layout 0: 70\n").contains("  o Layout 1: 8.0\n");
  }

  /** 70 and 0.05 of 1,000 are 1,400 times apart. */
  @Test
  void thePlotGoesByPowersOfTenWhereLayoutsAreFarApart() {
    String plot = plot(0.07, 5e-5);
    assertThat(plot).contains("(each number at the side is ten times the one below)");
    assertThat(plot.lines().filter(line -> line.contains("|") && line.matches(".*\\d.*")))
        .hasSizeGreaterThan(3);
    assertThat(end(plot, 'o')).isEqualTo(10 + 69);
  }

  @Test
  void whereLinesMeetTheFirstIsSeen() {
    String plot = plot(0.07, 0.07);
    assertThat(plot.substring(0, plot.indexOf('+'))).contains("*").doesNotContain("o\n");
  }

  @Test
  void withoutALossThereIsNothingToPlot() {
    Comparison never =
        SampleComparison.of(
            SampleComparison.layout("a", "Layout 0", SampleComparison.NEVER, false));
    assertThat(CurvePlot.of(never, new OutOf(1_000), PageLook.PLAIN))
        .startsWith("Nothing to plot: no loss was seen in any layout.");
  }

  private static String plot(double first, double second) {
    Comparison result =
        SampleComparison.of(
            SampleComparison.layout(
                "a", "Layout 0", SampleComparison.seen(first, first / 50), false),
            SampleComparison.layout(
                "b", "Layout 1", SampleComparison.seen(second, second / 50), false));
    OutOf outOf = OutOf.showingSmallest(result.layouts().stream().map(l -> l.anyLoss()).toList());
    return CurvePlot.of(result, outOf, PageLook.PLAIN);
  }

  /** The last column with a mark, in the plot itself. */
  private static int end(String plot, char mark) {
    return plot.lines()
        .filter(line -> line.contains("|"))
        .mapToInt(line -> line.lastIndexOf(mark))
        .max()
        .orElse(-1);
  }
}
