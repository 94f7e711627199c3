package lastcopy.charts;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import lastcopy.fit.Fitted;
import lastcopy.words.PercentWords;
import org.jfree.chart.JFreeChart;

/** Writes the charts of lifetimes from records, each whole or not at all. */
public final class FitChartFiles {

  private FitChartFiles() {}

  /** A group of records by its name. */
  public record Group(String name, Fitted fitted) {}

  /**
   * What is drawn.
   *
   * @param source where the records are from
   * @param hours how long the unit of ages is
   * @param confidence of the bands
   * @param date printed on it
   * @param all all records together
   * @param groups each by itself, if there are any
   */
  public record Pictured(
      String source,
      double hours,
      double confidence,
      LocalDate date,
      Fitted all,
      List<Group> groups) {

    /** Copies the list. */
    public Pictured {
      groups = List.copyOf(groups);
    }

    /** What is at the foot of a chart. */
    String foot(String bands) {
      return String.format(
          Locale.ROOT, "%s A few records are no certainty. Drawn %s.", bands, date);
    }

    /** The confidence in per cent. */
    String percent() {
      return PercentWords.of(confidence);
    }

    /** How many drives, and how many failed. */
    String counts() {
      return String.format(
          Locale.ROOT,
          "%,d drives, %,d of them failed (%s)",
          all.lives().records(),
          all.lives().failures(),
          source);
    }
  }

  /**
   * Writes every chart that the records give in every format into a directory that exists: none
   * where nothing failed.
   *
   * @return the files written
   * @throws ChartException if the system cannot draw
   * @throws IOException if a file cannot be written
   */
  public static List<Path> writeAll(
      Pictured what, Path directory, Collection<ChartFiles.Format> formats)
      throws ChartException, IOException {
    List<Path> written = new ArrayList<>();
    if (what.all().steps().isEmpty()) {
      return written;
    }
    write(ChartFiles.drawn(() -> SurvivalChart.of(what)), directory, "survival", formats, written);
    if (!what.groups().isEmpty()) {
      JFreeChart groups = ChartFiles.drawn(() -> SurvivalChart.ofGroups(what));
      write(groups, directory, "survival-by-group", formats, written);
    }
    if (!what.all().plot().isEmpty()) {
      JFreeChart plot = ChartFiles.drawn(() -> ProbabilityPlot.of(what));
      write(plot, directory, "probability-plot", formats, written);
    }
    return written;
  }

  private static void write(
      JFreeChart chart,
      Path directory,
      String name,
      Collection<ChartFiles.Format> formats,
      List<Path> written)
      throws ChartException, IOException {
    for (ChartFiles.Format format : formats) {
      written.add(ChartFiles.writeNamed(chart, directory, name, format));
    }
  }
}
