package lastcopy.cli.compare;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.sentence.PairSentences;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.words.PercentWords;

/** The end of a report: warnings, cautions, and how the figures were made. */
final class TextFooter {

  private static final List<String> CAUTIONS =
      List.of(
          "This is a model, not a guarantee; rates left to their defaults are assumptions.",
          "Drives that back each other in one place are not an independent copy.",
          "A copy counts only once restoring from it was tried.");

  private static final String WIRING =
      "Wiring and fire safety follow local codes: ask a licensed electrician.";

  /** Causes that have to do with wiring or fire, by a word in their ids. */
  private static final Pattern OF_WIRING =
      Pattern.compile("^box|fire|surge|lightning|electric|power|wiring");

  private TextFooter() {}

  /**
   * The end of a report.
   *
   * @param details whether to say how the figures were made
   * @param look how it looks
   */
  static String of(Comparison result, Remarks remarks, boolean details, PageLook look) {
    StringBuilder text = new StringBuilder();
    remarks
        .warnings()
        .forEach(warning -> text.append(look.warning(look.lines("! ", "  ", warning))));
    doubts(result).forEach(doubt -> text.append(look.warning(look.lines("! ", "  ", doubt))));
    Stream.concat(CAUTIONS.stream(), remarks.cautions().stream())
        .forEach(caution -> text.append(look.lines("- ", "  ", caution)));
    if (ofWiring(result)) {
      text.append(look.lines("- ", "  ", WIRING));
    }
    text.append('\n').append(look.paragraph(brackets(result) + reached(result)));
    if (details) {
      text.append('\n').append(look.paragraph(made(result)));
      result.layouts().forEach(layout -> text.append(look.lines("  ", "    ", exact(layout))));
    }
    return text.toString();
  }

  private static boolean ofWiring(Comparison result) {
    return result.layouts().stream()
        .flatMap(
            layout ->
                Stream.concat(
                    layout.causes().stream().map(LayoutResult.CauseShare::id),
                    layout.recoveries().stream().map(LayoutResult.Recovery::id)))
        .anyMatch(id -> OF_WIRING.matcher(id).find());
  }

  private static String brackets(Comparison result) {
    return String.format(
        Locale.ROOT,
        "In brackets: how far chance may have led the simulation astray (%s %% intervals); that"
            + " nobody knows the %s comes on top.",
        PercentWords.of(result.confidence()),
        result.worlds().isPresent() ? "other rates" : "rates themselves");
  }

  private static String made(Comparison result) {
    return String.format(
        Locale.ROOT,
        "How it was made: %s, random numbers from --seed %d. %sThe chances of losing any footage:",
        histories(result),
        result.seed(),
        biased(result));
  }

  /** The chance itself, which a number of studios may hide. */
  private static String exact(LayoutResult layout) {
    Estimate any = layout.anyLoss();
    return String.format(
        Locale.ROOT,
        "%s (%s): %.4g (%.4g to %.4g)",
        layout.title(),
        layout.id(),
        any.value(),
        any.low(),
        any.high());
  }

  /** Why figures are not to be trusted, and what else is to be known of how they were made. */
  private static List<String> doubts(Comparison result) {
    return result.layouts().stream().flatMap(TextFooter::doubts).toList();
  }

  private static Stream<String> doubts(LayoutResult layout) {
    Stream<String> doubts =
        layout.doubts().stream()
            .map(why -> PairSentences.quoted(layout) + ": not to be trusted. " + why);
    return Stream.concat(
        doubts, layout.notes().stream().map(note -> PairSentences.quoted(layout) + ": " + note));
  }

  private static String biased(Comparison result) {
    String ids =
        result.layouts().stream()
            .filter(layout -> layout.method() == Method.RARE)
            .map(
                layout ->
                    String.format(
                        Locale.ROOT,
                        "%s (an effective number of %,.0f losing histories, the heaviest with"
                            + " %.1f %% of the weight)",
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
            .map(PairSentences::quoted)
            .toList();
    String less =
        missed.isEmpty()
            ? ""
            : " The run ended before the figures of "
                + String.join(" and ", missed)
                + " were as sure as they should be; --time and --histories let it go on.";
    return result.finished() ? less : less + " Unfinished: the run was interrupted.";
  }
}
