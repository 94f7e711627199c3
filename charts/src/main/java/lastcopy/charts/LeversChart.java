package lastcopy.charts;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;
import lastcopy.words.PercentWords;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.Range;
import org.jfree.data.category.DefaultCategoryDataset;

/** What each change of a layout takes off the chance of a loss, or what numbers add to it. */
public final class LeversChart {

  /** More bars than that cannot be read. */
  private static final int MOST = 12;

  private static final double ROOM = 0.03;

  private LeversChart() {}

  /**
   * Writes both charts in every format into a directory that exists.
   *
   * @param fewer by change, one value each; drawn if there are any
   * @param more by number, two values each; drawn if there are any
   * @return the files written
   * @throws ChartException if the system cannot draw
   * @throws IOException if a file cannot be written
   */
  public static List<Path> writeAll(
      List<Bar> fewer,
      List<Bar> more,
      Around around,
      Path directory,
      Collection<ChartFiles.Format> formats)
      throws ChartException, IOException {
    List<Path> written = new ArrayList<>();
    for (ChartFiles.Format format : formats) {
      if (!fewer.isEmpty()) {
        JFreeChart changes = ChartFiles.drawn(() -> ofChanges(fewer, around));
        written.add(ChartFiles.writeNamed(changes, directory, "levers", format));
      }
      if (!more.isEmpty()) {
        JFreeChart numbers = ChartFiles.drawn(() -> ofNumbers(more, around));
        written.add(ChartFiles.writeNamed(numbers, directory, "assumptions", format));
      }
    }
    return written;
  }

  /**
   * A change, or a number.
   *
   * @param name beside its bars
   * @param values one for each row of the chart, as chances with their intervals
   */
  public record Bar(String name, List<Estimate> values) {

    /** Copies the list. */
    public Bar {
      values = List.copyOf(values);
    }
  }

  /**
   * What is around the bars.
   *
   * @param studio its name
   * @param layout the title of the layout
   * @param years the horizon
   * @param outOf of how many studios chances are told
   * @param confidence with which all intervals hold together
   * @param finished whether nothing cut it short
   * @param date printed on it
   */
  public record Around(
      String studio,
      String layout,
      double years,
      OutOf outOf,
      double confidence,
      boolean finished,
      LocalDate date) {

    private String below() {
      return String.format(
          Locale.ROOT, "%s: \"%s\", within %s years", studio, layout, ByteUnit.digits(years));
    }

    private String foot() {
      return String.format(
          Locale.ROOT,
          "%sLines: intervals that hold all together in %s %% of such studies. A model, not a"
              + " guarantee. Drawn %s.",
          finished ? "" : "UNFINISHED. ",
          PercentWords.of(confidence),
          date);
    }
  }

  /**
   * How many fewer studios lose footage with each change, the first of a ranking.
   *
   * @param fewer one value each
   */
  public static JFreeChart ofChanges(List<Bar> fewer, Around around) {
    return chart(
        "What takes most off the risk?",
        "Fewer of " + around.outOf.words() + " that lose any footage",
        List.of("With the change"),
        fewer,
        around);
  }

  /**
   * How many more or fewer studios lose footage where a number is half, or double, what is assumed:
   * a range chart, the widest first.
   *
   * @param more two values each, at half and at double
   */
  public static JFreeChart ofNumbers(List<Bar> more, Around around) {
    return chart(
        "Which assumption matters?",
        "More of " + around.outOf.words() + " that lose any footage (left of 0: fewer)",
        List.of("At half of it", "At double"),
        more,
        around);
  }

  private static JFreeChart chart(
      String title, String axis, List<String> rows, List<Bar> bars, Around around) {
    List<Bar> shown = bars.subList(0, Math.min(MOST, bars.size()));
    double factor = around.outOf.count(1);
    List<List<Estimate>> ends =
        IntStream.range(0, rows.size())
            .mapToObj(
                row -> shown.stream().map(bar -> times(bar.values().get(row), factor)).toList())
            .toList();
    NumberAxis values = new NumberAxis(axis);
    values.setNumberFormatOverride(new StudioFormat());
    values.setRange(range(ends));
    return Look.bars(
        new Look.Words(title, around.below(), around.foot()),
        dataset(shown, rows, factor),
        values,
        ends);
  }

  /** Zero, and each interval with a little room. */
  private static Range range(List<List<Estimate>> ends) {
    double least = ends.stream().flatMap(List::stream).mapToDouble(Estimate::low).min().orElse(0);
    double most = ends.stream().flatMap(List::stream).mapToDouble(Estimate::high).max().orElse(0);
    double from = Math.min(0, least);
    double room = ROOM * (Math.max(0, most) - from);
    return new Range(from < 0 ? from - room : 0, Math.max(0, most) + room);
  }

  static DefaultCategoryDataset dataset(List<Bar> bars, List<String> rows, double factor) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (Bar bar : bars) {
      for (int row = 0; row < rows.size(); row++) {
        data.addValue(bar.values().get(row).value() * factor, rows.get(row), bar.name());
      }
    }
    return data;
  }

  private static Estimate times(Estimate of, double factor) {
    return new Estimate(of.value() * factor, of.low() * factor, of.high() * factor, of.seen());
  }
}
