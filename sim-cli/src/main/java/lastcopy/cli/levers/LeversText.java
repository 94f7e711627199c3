package lastcopy.cli.levers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.levers.deed.Deed;
import lastcopy.cli.levers.deed.NotPossible;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import lastcopy.words.PercentWords;

/** Levers as text for a terminal or a pipe. */
final class LeversText {
  private static final double TEN = 10;

  private final LeverFindings findings;
  private final LeverWords words;
  private final Page page;

  private LeversText(LeverFindings findings, PageLook look) {
    page = new Page(look);
    this.findings = findings;
    words = new LeverWords(findings, outOf(findings.effects()));
  }

  static String of(LeverFindings findings, PageLook look) {
    LeversText text = new LeversText(findings, look);
    text.head();
    text.table();
    text.rest();
    text.assumptions();
    findings
        .assumptions()
        .ifPresent(
            study ->
                new AssumptionText(new AssumptionWords(study, text.words.outOf()), text.page)
                    .section());
    text.footer();
    return text.page.taken();
  }

  /** So that the layout as it is makes ten studios or more: changes are parts of that. */
  static OutOf outOf(Effects effects) {
    return OutOf.showing(effects.base().anyLoss().high() / TEN);
  }

  private void head() {
    page.heading(
        findings.study().studio().name()
            + ": what would help \""
            + findings.study().layout().title()
            + "\"?"
            + (findings.isFinished() ? "" : " - UNFINISHED"));
    page.gap();
    page.heading(words.answer());
    page.gap();
    page.paragraph(words.asItIs());
  }

  private void table() {
    List<MeasuredEffect> less = findings.deeds(Direction.LESS);
    List<MeasuredEffect> yardsticks = findings.yardsticks();
    if (less.isEmpty() && yardsticks.isEmpty()) {
      return;
    }
    page.gap();
    Table table = words.table(page.look());
    page.add(table.head());
    less.forEach(effect -> row(table, effect));
    if (!yardsticks.isEmpty()) {
      page.add(less.isEmpty() ? "" : "\n");
      page.paragraph("For comparison, no deeds:");
      yardsticks.forEach(effect -> row(table, effect));
    }
  }

  private void row(Table table, MeasuredEffect effect) {
    page.lines("", "  ", findings.deed(effect).title());
    page.add(table.row(words.cells(effect)));
  }

  private void rest() {
    List<MeasuredEffect> more = findings.deeds(Direction.MORE);
    if (!more.isEmpty()) {
      page.gap();
      page.paragraph(
          "Makes it worse: "
              + more.stream().map(words::worse).collect(Collectors.joining("; "))
              + ".");
    }
    List<MeasuredEffect> none = findings.deeds(Direction.NOT_MEASURABLE);
    if (!none.isEmpty()) {
      page.gap();
      page.paragraph(
          "No effect could be measured: "
              + none.stream().map(words::without).collect(Collectors.joining("; "))
              + ".");
    }
    words.ties().ifPresent(this::spaced);
    List<NotPossible> leftOut = findings.study().found().leftOut();
    if (!leftOut.isEmpty()) {
      page.gap();
      page.paragraph("Not possible here:");
      leftOut.forEach(each -> page.lines("  ", "    ", each.title() + ": " + each.why()));
    }
  }

  private void spaced(String sentence) {
    page.gap();
    page.paragraph(sentence);
  }

  private void assumptions() {
    List<Deed> told =
        findings.effects().ranked().stream()
            .filter(each -> each.direction() != Direction.NOT_MEASURABLE)
            .map(findings::deed)
            .filter(deed -> !deed.assumes().isEmpty())
            .toList();
    if (!told.isEmpty()) {
      page.gap();
      page.paragraph("Taken for granted beyond the file:");
      told.forEach(
          deed -> page.lines("  ", "    ", deed.title() + ": " + String.join(" ", deed.assumes())));
    }
  }

  private void footer() {
    Effects effects = findings.effects();
    page.gap();
    if (findings.isMedian()) {
      page.paragraph("Rates that the file gives as ranges have their medians here.");
    }
    page.paragraph(
        String.format(
            Locale.ROOT,
            "What changes do, from %,d histories of each%s, which share their luck; seed %d. Ranges of differences"
                + " hold all together in %s %% of such studies, those of costs each by itself.",
            effects.histories(),
            effects.method() == Method.RARE ? ", biased towards losses" : "",
            findings.settings().seed(),
            PercentWords.of(findings.settings().confidence())));
    List<String> doubts = effects.base().doubts();
    doubts.forEach(doubt -> page.warning("", "", doubt));
    Optional<Estimate> cost = effects.base().cost().map(each -> each.total());
    if (cost.isEmpty()) {
      page.paragraph("The file prices nothing, so no change has a cost here.");
    }
  }
}
