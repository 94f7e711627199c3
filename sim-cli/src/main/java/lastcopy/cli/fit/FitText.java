package lastcopy.cli.fit;

import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.cli.scenario.yaml.Printable;
import lastcopy.fit.Fitted;
import lastcopy.fit.LogRank;
import lastcopy.words.PercentWords;

/** What records say as a page, for a layman first. */
final class FitText {

  private static final int GROUP = 26;
  private static final int COUNT = 9;
  private static final int TIME = 13;
  private static final int CHANCE = 22;
  private static final int LAW = 26;
  private static final int PARAMETERS = 30;
  private static final int AIC = 21;

  private final FitResult result;
  private final FitWords words;
  private final boolean details;
  private final Page page;

  private FitText(FitResult result, boolean details, PageLook look) {
    page = new Page(look);
    this.result = result;
    this.details = details;
    this.words = new FitWords(result.unit(), result.confidence());
  }

  /** The page. */
  static String of(FitResult result, boolean details, PageLook look) {
    FitText text = new FitText(result, details, look);
    text.write();
    return text.page.taken();
  }

  private void write() {
    Fitted all = result.all().fitted();
    page.heading("Drive records: " + Printable.of(result.file()));
    page.paragraph(words.watched(all.lives()));
    page.paragraph(words.howLittle(all));
    words.typical(result.all()).ifPresent(page::paragraph);
    if (!result.groups().isEmpty()) {
      groups();
    }
    if (all.lives().failures() > 0) {
      page.gap();
      page.add(new AgeTable(all, result.unit(), result.confidence(), page.look()).text());
      page.gap();
      words.ageing(all).ifPresent(page::paragraph);
      if (details) {
        laws(all);
      }
    }
    page.gap();
    lines();
    page.gap();
    page.paragraph(words.caution(all));
    page.paragraph(
        String.format(
            Locale.ROOT,
            "In brackets: %s %% intervals. A fitted law is no guarantee.",
            PercentWords.of(result.confidence())));
  }

  private void groups() {
    page.gap();
    List<String> heads =
        List.of("Group", "drives", "drive-years", "failures", "of 100 fail in a year");
    Table table = new Table(page.look(), heads, GROUP, COUNT, TIME, COUNT + 1, CHANCE);
    page.add(table.head());
    for (GroupFit group : result.groups()) {
      page.add(
          table.row(
              Printable.of(group.name()),
              String.format(Locale.ROOT, "%,d", group.fitted().lives().records()),
              Yearly.number(group.fitted().lives().timeAtRisk() / result.unit().year(), 3),
              String.format(Locale.ROOT, "%,d", group.fitted().lives().failures()),
              Yearly.ofHundred(words.chance(group.fitted().rate()))));
    }
    page.gap();
    page.paragraph(result.comparison().map(FitText::compared).orElse(uncompared()));
  }

  private String uncompared() {
    return result.all().fitted().lives().failures() == 0
        ? "Nothing failed in any group, so they cannot be compared."
        : "The groups are not compared: that needs the ages at failure, and some failures were"
            + " found at checks.";
  }

  private static String compared(LogRank test) {
    String figures =
        String.format(
            Locale.ROOT,
            "log-rank test: chi-square %s, %d %s of freedom, p = %s",
            Yearly.number(test.chiSquare(), 3),
            test.degreesOfFreedom(),
            test.degreesOfFreedom() == 1 ? "degree" : "degrees",
            test.p() < 1e-4 ? "below 0.0001" : Yearly.number(test.p(), 2));
    if (test.degreesOfFreedom() == 0) {
      return "The groups were never at risk at the same ages, so they cannot be compared.";
    }
    return (test.p() < 0.01
            ? "The groups do not fail alike: luck alone would hardly part them so far ("
            : test.p() < 0.05
                ? "The groups may differ: luck alone would seldom part them so far ("
                : "The groups may well fail alike: luck alone often parts them so far (")
        + figures
        + ").";
  }

  private void laws(Fitted fitted) {
    page.gap();
    List<String> heads = List.of("Law", "parameters", "AIC (less is better)");
    Table table = new Table(page.look(), heads, LAW, PARAMETERS, AIC);
    page.add(table.head());
    fitted
        .exponential()
        .ifPresent(
            fit ->
                page.add(
                    table.row(
                        "constant", "mean " + words.age(fit.mean().value()), aic(fit.aic()))));
    fitted
        .weibull()
        .ifPresent(
            fit ->
                page.add(
                    table.row(
                        "Weibull",
                        "shape "
                            + Yearly.number(fit.shape().value(), 3)
                            + ", scale "
                            + words.age(fit.scale().value()),
                        aic(fit.aic()))));
    fitted
        .lognormal()
        .ifPresent(
            fit ->
                page.add(
                    table.row(
                        "lognormal",
                        "sigma "
                            + Yearly.number(fit.sigma().value(), 3)
                            + ", median "
                            + words.age(fit.median().value()),
                        aic(fit.aic()))));
    fitted
        .piecewise()
        .ifPresent(
            fit ->
                page.add(
                    table.row(
                        "constant by year of age",
                        fit.parameters() + (fit.parameters() == 1 ? " rate" : " rates"),
                        aic(fit.aic()))));
    page.gap();
    page.paragraph("A scenario has no lognormal law; the others can be written there.");
  }

  private static String aic(double aic) {
    return String.format(Locale.ROOT, "%,.2f", aic);
  }

  private void lines() {
    page.paragraph("To paste below a model of drives in a scenario:");
    line(result.all(), result.groups().isEmpty() ? "" : "all groups together, ");
    for (GroupFit group : result.groups()) {
      line(group, group.name() + ", ");
    }
    page.gap();
    String of = result.groups().isEmpty() ? "" : "All groups together: ";
    result.all().line().ifPresent(line -> page.paragraph(of + line.why()));
    if (result.all().line().isPresent()) {
      page.paragraph(
          "The range is from the 5th to the 95th percentile of what the rate may be; compare takes"
              + " all of it into account.");
    }
  }

  private void line(GroupFit group, String label) {
    page.gap();
    String origin =
        label
            + String.format(
                Locale.ROOT,
                "%,d %s in %s of %s",
                group.fitted().lives().failures(),
                group.fitted().lives().failures() == 1 ? "failure" : "failures",
                words.driveYears(group.fitted().lives()),
                Printable.of(result.file()));
    if (group.line().isEmpty()) {
      page.lines("    # ", "    # ", origin + ": no rate can be told");
      return;
    }
    FailsLine line = group.line().get();
    page.lines("    # ", "    # ", origin);
    page.lines("    fails: ", "      ", line.range());
    page.lines("    # one value alone: ", "    #   ", "fails: " + line.law());
  }
}
