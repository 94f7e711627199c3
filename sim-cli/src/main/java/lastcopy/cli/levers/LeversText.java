package lastcopy.cli.levers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.levers.deed.Deed;
import lastcopy.cli.levers.deed.NotPossible;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Wrap;
import lastcopy.decide.effect.Direction;
import lastcopy.decide.effect.Effects;
import lastcopy.decide.effect.MeasuredEffect;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/** Levers as text for a terminal of 80 columns or a pipe. */
final class LeversText {
  private static final double TEN = 10;

  private final LeverFindings findings;
  private final LeverWords words;
  private final StringBuilder text = new StringBuilder();

  private LeversText(LeverFindings findings) {
    this.findings = findings;
    words = new LeverWords(findings, outOf(findings.effects()));
  }

  static String of(LeverFindings findings) {
    LeversText text = new LeversText(findings);
    text.head();
    text.table();
    text.rest();
    text.assumptions();
    findings
        .assumptions()
        .ifPresent(
            study -> text.text.append(new AssumptionWords(study, text.words.outOf()).section()));
    text.footer();
    return text.text.toString();
  }

  /** So that the layout as it is makes ten studios or more: changes are parts of that. */
  static OutOf outOf(Effects effects) {
    return OutOf.showing(effects.base().anyLoss().high() / TEN);
  }

  private void head() {
    paragraph(
        findings.study().studio().name()
            + ": what would help \""
            + findings.study().layout().title()
            + "\"?"
            + (findings.isFinished() ? "" : " - UNFINISHED"));
    text.append('\n');
    paragraph(words.answer());
    text.append('\n');
    paragraph(words.asItIs());
  }

  private void table() {
    List<MeasuredEffect> less = findings.deeds(Direction.LESS);
    List<MeasuredEffect> yardsticks = findings.yardsticks();
    if (less.isEmpty() && yardsticks.isEmpty()) {
      return;
    }
    text.append('\n').append(words.heading()).append("-".repeat(Wrap.WIDTH)).append('\n');
    less.forEach(this::row);
    if (!yardsticks.isEmpty()) {
      text.append(less.isEmpty() ? "" : "\n").append("For comparison, no deeds:\n");
      yardsticks.forEach(this::row);
    }
  }

  private void row(MeasuredEffect effect) {
    text.append(Wrap.lines("", "  ", findings.deed(effect).title())).append(words.figures(effect));
  }

  private void rest() {
    List<MeasuredEffect> more = findings.deeds(Direction.MORE);
    if (!more.isEmpty()) {
      text.append('\n');
      paragraph(
          "Makes it worse: "
              + more.stream().map(words::worse).collect(Collectors.joining("; "))
              + ".");
    }
    List<MeasuredEffect> none = findings.deeds(Direction.NOT_MEASURABLE);
    if (!none.isEmpty()) {
      text.append('\n');
      paragraph(
          "No effect could be measured: "
              + none.stream().map(words::without).collect(Collectors.joining("; "))
              + ".");
    }
    words.ties().ifPresent(this::spaced);
    List<NotPossible> leftOut = findings.study().found().leftOut();
    if (!leftOut.isEmpty()) {
      text.append("\nNot possible here:\n");
      leftOut.forEach(
          each -> text.append(Wrap.lines("  ", "    ", each.title() + ": " + each.why())));
    }
  }

  private void spaced(String sentence) {
    text.append('\n');
    paragraph(sentence);
  }

  private void assumptions() {
    List<Deed> told =
        findings.effects().ranked().stream()
            .filter(each -> each.direction() != Direction.NOT_MEASURABLE)
            .map(findings::deed)
            .filter(deed -> !deed.assumes().isEmpty())
            .toList();
    if (!told.isEmpty()) {
      text.append("\nTaken for granted beyond the file:\n");
      told.forEach(
          deed ->
              text.append(
                  Wrap.lines(
                      "  ", "    ", deed.title() + ": " + String.join(" ", deed.assumes()))));
    }
  }

  private void footer() {
    Effects effects = findings.effects();
    text.append('\n');
    if (findings.isMedian()) {
      paragraph("Rates that the file gives as ranges have their medians here.");
    }
    paragraph(
        String.format(
            Locale.ROOT,
            "What changes do, from %,d histories of each%s, which share their luck; seed %d. Ranges of differences"
                + " hold all together in %s %% of such studies, those of costs each by itself.",
            effects.histories(),
            effects.method() == Method.RARE ? ", biased towards losses" : "",
            findings.settings().seed(),
            Numbers.fixed(100 * findings.settings().confidence(), 0)));
    List<String> doubts = effects.base().doubts();
    doubts.forEach(this::paragraph);
    Optional<Estimate> cost = effects.base().cost().map(each -> each.total());
    if (cost.isEmpty()) {
      paragraph("The file prices nothing, so no change has a cost here.");
    }
  }

  private void paragraph(String sentences) {
    text.append(Wrap.lines("", "", sentences));
  }
}
