package lastcopy.charts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.PercentWords;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.category.DefaultCategoryDataset;

/** How much of what is not known each unknown accounts for, a bar for each layout. */
public final class UnknownsChart {

  /** More bars than that cannot be read. */
  private static final int MOST = 8;

  private UnknownsChart() {}

  /**
   * The chart of a result some rates of which are not known.
   *
   * @param date printed on it
   * @throws java.util.NoSuchElementException if all is known
   */
  public static JFreeChart of(Comparison result, LocalDate date) {
    NumberAxis share = new NumberAxis("Share of how much possible worlds differ, in %");
    share.setRange(0, 100);
    String foot =
        String.format(
            Locale.ROOT,
            "Each by itself, of the variance of the logarithm of the chance of any loss. Lines: %s %%"
                + " sampling intervals. Drawn %s.",
            PercentWords.of(result.confidence()),
            date);
    return Look.bars(
        new Look.Words("What is not known, and how much it matters", result.studio(), foot),
        dataset(result),
        share,
        intervals(result));
  }

  /** In percent, by the layout's title and the unknown, those first that matter most. */
  static DefaultCategoryDataset dataset(Comparison result) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (Worlds.OfUnknown unknown : ranked(result.worlds().orElseThrow())) {
      for (Worlds.Share share : unknown.shares()) {
        data.addValue(100 * share.share().value(), title(result, share.layout()), label(unknown));
      }
    }
    return data;
  }

  /** Of each bar its interval in percent, by row and column of the dataset. */
  static List<List<Estimate>> intervals(Comparison result) {
    Map<String, List<Estimate>> rows = new LinkedHashMap<>();
    for (Worlds.OfUnknown unknown : ranked(result.worlds().orElseThrow())) {
      for (Worlds.Share share : unknown.shares()) {
        rows.computeIfAbsent(share.layout(), layout -> new ArrayList<>()).add(percent(share));
      }
    }
    return List.copyOf(rows.values());
  }

  private static Estimate percent(Worlds.Share share) {
    Estimate part = share.share();
    return new Estimate(100 * part.value(), 100 * part.low(), 100 * part.high(), part.seen());
  }

  private static List<Worlds.OfUnknown> ranked(Worlds worlds) {
    return worlds.unknowns().stream()
        .sorted(Comparator.comparingDouble(unknown -> -largest(unknown)))
        .limit(MOST)
        .toList();
  }

  private static double largest(Worlds.OfUnknown unknown) {
    return unknown.shares().stream().mapToDouble(of -> of.share().value()).max().orElse(0);
  }

  private static String title(Comparison result, String id) {
    return result.layouts().stream()
        .filter(layout -> layout.id().equals(id))
        .findFirst()
        .orElseThrow()
        .title();
  }

  private static String label(Worlds.OfUnknown unknown) {
    return unknown.key()
        + ": "
        + ByteUnit.digits(unknown.from())
        + " to "
        + ByteUnit.digits(unknown.to())
        + (unknown.unit().isEmpty() ? " times" : " " + unknown.unit());
  }
}
