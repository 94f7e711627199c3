package lastcopy.cli.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Spans;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.sentence.Answer;
import lastcopy.cli.sentence.CostWords;
import lastcopy.cli.sentence.Horizon;
import lastcopy.cli.sentence.LossSizes;
import lastcopy.cli.sentence.PairSentences;
import lastcopy.cli.sentence.Remarks;
import lastcopy.cli.sentence.WorldWords;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.LayoutResult.Recovery;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/** A comparison as text for a terminal or a pipe. */
final class TextReport {

  private static final int LABEL = 24;
  private static final int CAUSE = 45;
  private static final int SPAN = 18;

  /** Columns of both spans. */
  private static final int SPANS = 35;

  /** Days of a year that are as good as all. */
  private static final double ALWAYS = 364.5;

  /** So many kinds of interruption are told, the commonest; the files have all. */
  private static final int RECOVERIES = 4;

  private final Comparison result;
  private final Remarks remarks;
  private final OutOf outOf;
  private final PageLook look;
  private final StringBuilder text = new StringBuilder();

  private TextReport(Comparison result, Remarks remarks, PageLook look) {
    this.look = look;
    this.result = result;
    this.remarks = remarks;
    outOf = outOf(result);
  }

  /** The report as it is in a pipe. */
  static String of(Comparison result, Remarks remarks, boolean details) {
    return of(result, remarks, new Asked(details, false, PageLook.PLAIN));
  }

  /**
   * What is asked of a report.
   *
   * @param details whether to say how the figures were made, and to tell every pair
   * @param plot whether to draw the curves
   * @param look how it looks
   */
  record Asked(boolean details, boolean plot, PageLook look) {}

  /**
   * The report.
   *
   * @param remarks what it says beside the figures
   */
  static String of(Comparison result, Remarks remarks, Asked asked) {
    TextReport report = new TextReport(result, remarks, asked.look());
    report.title();
    report.answer();
    report.table();
    report.text.append(asked.plot() ? CurvePlot.of(result, report.outOf, asked.look()) : "");
    report.text.append(WorldWords.of(result, report.outOf, asked.look()));
    report.omissions(false);
    result.layouts().forEach(report::block);
    report.pairs(asked.details());
    report.text.append(TextFooter.of(result, remarks, asked.details(), asked.look()));
    return asked.look().written(report.text.toString());
  }

  private void title() {
    heading(result.studio() + (result.finished() ? "" : " - UNFINISHED"));
    omissions(true);
  }

  private void answer() {
    Answer.of(result, outOf)
        .ifPresent(
            words -> {
              heading(words);
              text.append('\n');
            });
    paragraph(
        "Of "
            + outOf.words()
            + " like yours, so many lose footage within "
            + Horizon.of(result)
            + (priced() ? "; the cost is what one pays by then, on average:" : ":"));
    text.append('\n');
  }

  private boolean priced() {
    return result.layouts().stream().anyMatch(layout -> layout.cost().isPresent());
  }

  /** Above the figures where they leave out so much that they would be misread. */
  private void omissions(boolean above) {
    if (OmissionWords.comeFirst(remarks.omissions()) == above) {
      OmissionWords.paragraph(remarks.omissions(), result.layouts().size())
          .ifPresent(
              words -> {
                paragraph(words);
                text.append('\n');
              });
    }
  }

  private void table() {
    text.append(SummaryTable.of(result, outOf, look.width(), this::assumption));
    remarks.assumptionOfAll().ifPresent(words -> paragraph("Each layout " + words + "."));
    text.append('\n');
  }

  /** Beside the figures; once where every layout assumes the same. */
  private Optional<String> assumption(String layout) {
    return remarks.assumptionOfAll().isPresent()
        ? Optional.empty()
        : remarks.assumption(layout).map(words -> look.lines("  ", "  ", words));
  }

  private void block(LayoutResult layout) {
    heading(layout.title());
    label("Lost on average", Numbers.bytes(layout.bytesLost()) + ", over all studios");
    LossSizes.of(layout).ifPresent(words -> label("Of those that lose", words));
    layout.moneyLost().ifPresent(money -> label("Worth", Numbers.money(money, result.currency())));
    layout.cost().ifPresent(cost -> label("Cost", CostWords.detail(cost, result.currency())));
    label("Most common cause", topCause(layout.causes()));
    label("On a single copy", days(layout.exposure().singleCopyDays()));
    recoveries(layout.recoveries());
    text.append('\n');
  }

  /** Causes after which it takes as long are told together; the files have each. */
  private void recoveries(List<Recovery> recoveries) {
    Map<String, List<Recovery>> alike =
        recoveries.stream()
            .collect(
                Collectors.groupingBy(TextReport::spans, LinkedHashMap::new, Collectors.toList()));
    if (!recoveries.isEmpty()) {
      recovery("  Work stops because", Wrap.column("it goes on after", SPAN) + "copied back after");
    }
    alike.values().stream()
        .limit(RECOVERIES)
        .forEach(some -> recovery("    " + causes(some), spans(some.get(0))));
  }

  private static String causes(List<Recovery> alike) {
    int others = alike.size() - 1;
    String more = others == 0 ? "" : " (and " + others + (others == 1 ? " other)" : " others)");
    return alike.get(0).sentence() + more;
  }

  private static String spans(Recovery recovery) {
    return Wrap.column(Spans.after(recovery.workHours().value()), SPAN)
        + recovery.wholeHours().map(h -> Spans.after(h.value())).orElse("nothing to copy");
  }

  /** A cause too long for its column stands on lines alone. */
  private void recovery(String cause, String spans) {
    int column = Math.min(CAUSE, look.width() - SPANS);
    boolean fits = cause.length() < column;
    if (!fits) {
      text.append(look.lines(cause.startsWith("    ") ? "    " : "  ", "      ", cause));
    }
    text.append(Wrap.column(fits ? cause : "", column)).append(spans).append('\n');
  }

  private void label(String label, String value) {
    text.append(look.lines(Wrap.column("  " + label, LABEL), " ".repeat(LABEL), value));
  }

  private void paragraph(String words) {
    text.append(look.paragraph(words));
  }

  private void heading(String words) {
    text.append(look.heading(look.paragraph(words)));
  }

  private void pairs(boolean all) {
    List<String> sentences = PairSentences.of(result, outOf, all);
    sentences.forEach(this::paragraph);
    text.append(sentences.isEmpty() ? "" : "\n");
  }

  private static String topCause(List<CauseShare> causes) {
    if (causes.isEmpty()) {
      return "none: no loss was seen";
    }
    CauseShare top = causes.get(0);
    return String.format(
        Locale.ROOT, "%s (%.0f %% of losses)", top.sentence(), 100 * top.share().value());
  }

  private static String days(Estimate days) {
    if (days.seen() && days.low() > ALWAYS) {
      return "always";
    }
    String figure = days.value() == 0 && days.seen() ? "0" : Numbers.figure(days);
    return figure + " days a year";
  }

  /** One denominator for the table and its sentences: the least that shows its least number. */
  private static OutOf outOf(Comparison result) {
    return OutOf.showingSmallest(
        result.layouts().stream()
            .flatMap(l -> Stream.of(l.anyLoss(), oneShoot(l), l.everythingLost()))
            .toList());
  }

  private static Estimate oneShoot(LayoutResult layout) {
    return SummaryTable.oneShootPoint(layout).orElse(Estimate.exact(0));
  }
}
