package lastcopy.cli.advise;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lastcopy.cli.edit.Candidate;
import lastcopy.cli.edit.Impossible;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.PriceWords;
import lastcopy.cli.output.Table;
import lastcopy.decide.Advice;
import lastcopy.outlook.Omissions;
import lastcopy.outlook.Unpriced;
import lastcopy.scenario.Studio;

/** An advice as text for a terminal or a pipe. */
final class AdviceText {

  private static final int INDENT = 2;
  private static final int COST = 34;
  private static final int LOSERS = 26;
  private static final int SAFEST_TOLD = 5;

  private final AdviceFindings findings;
  private final AdviceWords words;
  private final SelectionWords selection;
  private final Page page;

  private AdviceText(AdviceFindings findings, PageLook look) {
    this.findings = findings;
    words = AdviceWords.of(findings);
    selection = new SelectionWords(findings);
    page = new Page(look);
  }

  /**
   * Writes it.
   *
   * @param impossible whether combinations that are no layouts are told
   */
  static String of(AdviceFindings findings, boolean impossible, PageLook look) {
    AdviceText text = new AdviceText(findings, look);
    text.head();
    text.table();
    text.steps();
    text.counts(impossible);
    text.footer();
    return text.page.taken();
  }

  private void head() {
    Studio studio = findings.question().studio();
    page.heading(
        studio.name()
            + ": which layout, at what cost, over "
            + words.horizon()
            + "?"
            + (findings.advice().finished() ? "" : " - UNFINISHED"));
    for (String answer : words.answers()) {
      page.gap();
      page.heading(answer);
    }
    page.gap();
    page.paragraph(words.today());
    if (!findings.isPriced()) {
      page.paragraph("The file prices nothing, so only risk is compared.");
    }
  }

  private void table() {
    page.gap();
    page.paragraph(
        findings.isPriced()
            ? "The front: each costs more than the one above it and loses footage less often; all"
                + " other layouts cost as much as one of these and lose as often, or more."
            : "The safest, by their estimates:");
    Table table = table(page.look());
    page.add(table.head());
    rows().forEach(id -> row(table, id));
  }

  private Table table(PageLook look) {
    String currency =
        findings.question().studio().currency().map(name -> " (" + name + ")").orElse("");
    String losers = "Lose any, of " + words.outOf().number();
    return findings.isPriced()
        ? new Table(look, List.of("", "Cost" + currency, losers), INDENT, COST, LOSERS)
        : new Table(look, List.of("", losers), INDENT, LOSERS);
  }

  private List<String> rows() {
    if (findings.isPriced()) {
      return findings.advice().front();
    }
    return findings.advice().candidates().stream()
        .filter(each -> each.histories() > 0)
        .sorted((a, b) -> Double.compare(a.anyLoss().value(), b.anyLoss().value()))
        .limit(SAFEST_TOLD)
        .map(Advice.Candidate::id)
        .toList();
  }

  private void row(Table table, String id) {
    Advice.Candidate figures = findings.figures(id);
    page.lines("", "  ", findings.candidate(id).layout().title() + " (" + id + ")");
    String losers = Numbers.studios(figures.anyLoss(), words.outOf());
    String cost =
        figures.cost().map(each -> Numbers.money(each, Optional.empty())).orElse("not priced");
    page.add(findings.isPriced() ? table.row("", cost, losers) : table.row("", losers));
  }

  private void steps() {
    if (findings.isPriced() && !findings.advice().steps().isEmpty()) {
      page.gap();
      page.paragraph("Step by step:");
      words.steps().forEach(step -> page.lines("  ", "    ", step));
    }
  }

  private void counts(boolean impossible) {
    page.gap();
    page.paragraph(selection.counts());
    selection.open().ifPresent(page::paragraph);
    if (impossible && !findings.candidates().impossible().isEmpty()) {
      page.gap();
      page.paragraph("No valid layout:");
      findings.candidates().impossible().forEach(this::impossible);
    }
  }

  private void impossible(Impossible of) {
    String chosen =
        of.choices().stream().map(Candidate.Chosen::words).collect(Collectors.joining(", "));
    page.lines("  ", "    ", of.from() + " with " + chosen + ": found " + of.why());
  }

  private void footer() {
    page.gap();
    Studio all = findings.candidates().studio();
    OmissionWords.paragraph(Omissions.of(all), findings.candidates().all().size())
        .ifPresent(page::paragraph);
    if (findings.isPriced()) {
      PriceWords.sentence(Unpriced.of(all)).ifPresent(page::paragraph);
    }
    if (findings.isMedian()) {
      page.paragraph("Rates that the file gives as ranges have their medians here.");
    }
    page.paragraph(selection.guarantee());
    page.paragraph("A model is no guarantee; a copy counts only once restoring from it was tried.");
  }
}
