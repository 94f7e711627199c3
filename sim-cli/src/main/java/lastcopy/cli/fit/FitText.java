package lastcopy.cli.fit;

import java.util.Locale;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.scenario.Printable;
import lastcopy.fit.Fitted;
import lastcopy.fit.LogRank;

/** What records say as a page for a terminal of 80 columns, for a layman first. */
final class FitText {

  private static final int GROUP = 26;
  private static final int COUNT = 9;
  private static final int TIME = 13;
  private static final int LAW = 26;

  private final FitResult result;
  private final FitWords words;
  private final boolean details;
  private final StringBuilder text = new StringBuilder();

  private FitText(FitResult result, boolean details) {
    this.result = result;
    this.details = details;
    this.words = new FitWords(result.unit(), result.confidence());
  }

  /** The page. */
  static String of(FitResult result, boolean details) {
    FitText page = new FitText(result, details);
    page.write();
    return page.text.toString();
  }

  private void write() {
    Fitted all = result.all().fitted();
    paragraph("Drive records: " + Printable.of(result.file()));
    paragraph(words.watched(all.lives()));
    paragraph(words.howLittle(all));
    words.typical(result.all()).ifPresent(this::paragraph);
    if (!result.groups().isEmpty()) {
      groups();
    }
    if (all.lives().failures() > 0) {
      blank();
      text.append(new AgeTable(all, result.unit(), result.confidence()).text());
      blank();
      words.ageing(all).ifPresent(this::paragraph);
      if (details) {
        laws(all);
      }
    }
    blank();
    lines();
    blank();
    paragraph(words.caution(all));
    paragraph(
        String.format(
            Locale.ROOT,
            "In brackets: %s %% intervals. A fitted law is no guarantee.",
            Yearly.number(100 * result.confidence(), 3)));
  }

  private void groups() {
    blank();
    row("Group", "drives", "drive-years", "failures", "of 100 fail in a year");
    text.append("-".repeat(Wrap.WIDTH)).append('\n');
    for (GroupFit group : result.groups()) {
      row(
          Printable.of(group.name()),
          String.format(Locale.ROOT, "%,d", group.fitted().lives().records()),
          Yearly.number(group.fitted().lives().timeAtRisk() / result.unit().year(), 3),
          String.format(Locale.ROOT, "%,d", group.fitted().lives().failures()),
          Yearly.ofHundred(words.chance(group.fitted().rate())));
    }
    blank();
    paragraph(result.comparison().map(FitText::compared).orElse(uncompared()));
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

  private void row(String group, String drives, String time, String failures, String chance) {
    String line =
        Wrap.column(group, GROUP)
            + Wrap.column(drives, COUNT)
            + Wrap.column(time, TIME)
            + Wrap.column(failures, COUNT + 1)
            + chance;
    text.append(line.stripTrailing()).append('\n');
  }

  private void laws(Fitted fitted) {
    blank();
    law("Law", "parameters", "AIC (less is better)");
    text.append("-".repeat(Wrap.WIDTH)).append('\n');
    fitted
        .exponential()
        .ifPresent(fit -> law("constant", "mean " + words.age(fit.mean().value()), aic(fit.aic())));
    fitted
        .weibull()
        .ifPresent(
            fit ->
                law(
                    "Weibull",
                    "shape "
                        + Yearly.number(fit.shape().value(), 3)
                        + ", scale "
                        + words.age(fit.scale().value()),
                    aic(fit.aic())));
    fitted
        .lognormal()
        .ifPresent(
            fit ->
                law(
                    "lognormal",
                    "sigma "
                        + Yearly.number(fit.sigma().value(), 3)
                        + ", median "
                        + words.age(fit.median().value()),
                    aic(fit.aic())));
    fitted
        .piecewise()
        .ifPresent(
            fit ->
                law(
                    "constant by year of age",
                    fit.parameters() + (fit.parameters() == 1 ? " rate" : " rates"),
                    aic(fit.aic())));
    blank();
    paragraph("A scenario has no lognormal law; the others can be written there.");
  }

  private void law(String name, String parameters, String aic) {
    String line = Wrap.column(name, LAW) + Wrap.column(parameters, 30) + aic;
    text.append(line.stripTrailing()).append('\n');
  }

  private static String aic(double aic) {
    return String.format(Locale.ROOT, "%,.2f", aic);
  }

  private void lines() {
    paragraph("To paste below a model of drives in a scenario:");
    line(result.all(), result.groups().isEmpty() ? "" : "all groups together, ");
    for (GroupFit group : result.groups()) {
      line(group, group.name() + ", ");
    }
    blank();
    String of = result.groups().isEmpty() ? "" : "All groups together: ";
    result.all().line().ifPresent(line -> paragraph(of + line.why()));
    if (result.all().line().isPresent()) {
      paragraph(
          "The range is from the 5th to the 95th percentile of what the rate may be; compare takes"
              + " all of it into account.");
    }
  }

  private void line(GroupFit group, String label) {
    blank();
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
      text.append(Wrap.lines("    # ", "    # ", origin + ": no rate can be told"));
      return;
    }
    FailsLine line = group.line().get();
    text.append(Wrap.lines("    # ", "    # ", origin));
    text.append(Wrap.lines("    fails: ", "      ", line.range()));
    text.append(Wrap.lines("    # one value alone: ", "    #   ", "fails: " + line.law()));
  }

  private void paragraph(String sentence) {
    text.append(Wrap.lines("", "", sentence));
  }

  private void blank() {
    text.append('\n');
  }
}
