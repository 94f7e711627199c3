package lastcopy.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lastcopy.charts.ByteUnit;
import lastcopy.simulate.Comparison;
import lastcopy.simulate.LayoutResult;

/** The end of a report: warnings, cautions, and how the figures were made. */
final class TextFooter {

  private static final List<String> CAUTIONS =
      List.of(
          "This is a model, not a guarantee; rates left to their defaults are assumptions.",
          "Drives that back each other in one place are not an independent copy.",
          "A copy counts only once restoring from it was tried.",
          "Wiring and fire safety follow local codes: ask a licensed electrician.");

  private TextFooter() {}

  static String of(Comparison result, List<String> warnings) {
    StringBuilder text = new StringBuilder();
    warnings.forEach(warning -> text.append(Wrap.lines("! ", "  ", warning)));
    doubts(result).forEach(doubt -> text.append(Wrap.lines("! ", "  ", doubt)));
    CAUTIONS.forEach(caution -> text.append(Wrap.lines("- ", "  ", caution)));
    text.append('\n').append(Wrap.lines("", "", made(result)));
    return text.toString();
  }

  private static String made(Comparison result) {
    return String.format(
        Locale.ROOT,
        "In brackets: %s %% intervals of the sampling alone, not of unknown rates. %s; seed %d. %s%s",
        ByteUnit.digits(100 * result.confidence()),
        histories(result),
        result.seed(),
        biased(result),
        reached(result));
  }

  /** What the weights of biased histories cannot carry: said wherever it shows. */
  private static List<String> doubts(Comparison result) {
    return result.layouts().stream()
        .filter(layout -> layout.doubt().isPresent())
        .map(
            layout ->
                layout.id()
                    + ": "
                    + layout.doubt().get()
                    + (layout.method() == LayoutResult.Method.RARE
                        ? "; its figures are not to be trusted."
                        : "; its figures come from plain histories instead."))
        .toList();
  }

  private static String biased(Comparison result) {
    String ids =
        result.layouts().stream()
            .filter(layout -> layout.method() == LayoutResult.Method.RARE)
            .map(
                layout ->
                    String.format(
                        Locale.ROOT,
                        "%s (losses count as %,.0f, the heaviest has %.2g %% of the weight)",
                        layout.id(),
                        layout.effectiveHistories(),
                        100 * layout.largestWeightShare()))
            .collect(Collectors.joining(", "));
    return ids.isEmpty()
        ? ""
        : "Losses estimated from histories biased towards them and weighted: " + ids + ". ";
  }

  private static String histories(Comparison result) {
    boolean same =
        result.layouts().stream().mapToLong(LayoutResult::histories).distinct().count() == 1;
    return same
        ? String.format(
            Locale.ROOT, "%,d histories of each layout", result.layouts().get(0).histories())
        : "Histories: "
            + result.layouts().stream()
                .map(
                    layout -> String.format(Locale.ROOT, "%s %,d", layout.id(), layout.histories()))
                .collect(Collectors.joining(", "));
  }

  private static String reached(Comparison result) {
    List<String> missed =
        result.layouts().stream()
            .filter(layout -> !layout.precisionReached())
            .map(LayoutResult::id)
            .toList();
    String precision =
        missed.isEmpty()
            ? "The precision asked for was reached."
            : "The precision asked for was not reached for " + String.join(", ", missed) + ".";
    return result.finished() ? precision : "Unfinished: interrupted. " + precision;
  }
}
