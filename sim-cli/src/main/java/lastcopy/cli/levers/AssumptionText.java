package lastcopy.cli.levers;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lastcopy.cli.levers.AssumptionWords.Swing;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.Table;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Flip;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;

/** Which assumption matters, as a section of a page. */
final class AssumptionText {

  private static final int INDENT = 2;
  private static final int COLUMN = 26;

  private final AssumptionWords words;
  private final AssumptionStudy study;
  private final Page page;

  AssumptionText(AssumptionWords words, Page page) {
    this.words = words;
    this.study = words.study();
    this.page = page;
  }

  /** Writes the whole section. */
  void section() {
    page.gap();
    page.heading("Which assumption matters");
    page.gap();
    List<Swing> swings = words.swings();
    List<Swing> told = swings.stream().filter(Swing::isMeasurable).toList();
    page.paragraph(
        told.isEmpty()
            ? "None of the numbers that this layout takes for granted moves its chance of loss"
                + " measurably at half or at double."
            : "What is assumed at half and at double: of "
                + words.outOf().words()
                + ", so many lose any footage then, and so many more or fewer:");
    if (!told.isEmpty()) {
      page.gap();
      table(told);
    }
    String others =
        swings.stream()
            .filter(swing -> !swing.isMeasurable())
            .map(swing -> swing.assumption().title())
            .collect(Collectors.joining("; "));
    if (!others.isEmpty() && !told.isEmpty()) {
      page.gap();
      page.paragraph("No effect could be measured of: " + others + ".");
    }
    if (study.first().isPresent() && study.second().isPresent()) {
      page.gap();
      flips();
    }
    page.gap();
    page.paragraph(
        String.format(
            Locale.ROOT,
            "What is assumed, from %,d histories of each%s.",
            study.effects().histories(),
            study.effects().method() == Method.RARE ? ", biased towards losses" : ""));
  }

  private void table(List<Swing> told) {
    Table table =
        new Table(page.look(), List.of("", "At half", "At double"), INDENT, COLUMN, COLUMN);
    page.add(table.head());
    for (Swing swing : told) {
      Assumption of = swing.assumption();
      page.lines(
          "", "  ", AssumptionWords.capital(of.title()) + ": " + AssumptionWords.value(of, 1));
      page.add(table.row("", words.cell(swing.half()), words.cell(swing.twice())));
    }
  }

  /** Where the order of the first two layouts turns round. */
  private void flips() {
    List<Flip> found = study.flips().stream().filter(f -> f.factor().isPresent()).toList();
    String pair =
        "\"" + study.first().get().title() + "\" or \"" + study.second().get().title() + "\"?";
    page.paragraph(pair);
    found.forEach(flip -> told(sentence(flip)));
    long late = study.flips().size() - looked();
    if (found.isEmpty() && late == 0) {
      told("No value between a tenth and ten times flips which is safer.");
    } else if (looked() > found.size()) {
      long rest = looked() - found.size();
      String others =
          String.format(
              Locale.ROOT,
              "Of %,d%s number%s no value between a tenth and ten times does.",
              rest,
              found.isEmpty() ? "" : " other",
              rest == 1 ? "" : "s");
      told(others);
    }
    if (late > 0) {
      told(
          String.format(
              Locale.ROOT,
              "Of %,d it could not be told whether any value flips which is safer: too few"
                  + " histories, too rare losses or too little time.",
              late));
    }
  }

  private void told(String sentence) {
    page.lines("  ", "    ", sentence);
  }

  private long looked() {
    return study.flips().stream().filter(Flip::isLooked).count();
  }

  private static String sentence(Flip flip) {
    Estimate factor = flip.factor().orElseThrow();
    Assumption of = flip.assumption();
    return String.format(
        Locale.ROOT,
        "Which is safer turns round at %s (between %s and %s), %s: it is %s now.",
        AssumptionWords.value(of, factor.value()),
        AssumptionWords.value(of, factor.low()),
        AssumptionWords.value(of, factor.high()),
        of.title(),
        AssumptionWords.value(of, 1));
  }
}
