package lastcopy.cli.prove;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Table;
import lastcopy.interval.Estimate;
import lastcopy.prove.Finding;
import lastcopy.prove.Proof;
import lastcopy.prove.Reference;

/** A proof as a table, line by line as it is done. */
final class ProveText {

  private static final int WHAT = 28;
  private static final int REFERENCE = 17;
  private static final int OURS = 29;
  private static final int VERDICT = 6;

  /** Numbers below it are shown with a power of ten. */
  private static final double SMALL = 1e-3;

  /** Digits shown of a figure that has more. */
  private static final int DIGITS = 8;

  /** Digits shown of a printed value that has more: so many fit. */
  private static final int MOST_DIGITS = 9;

  private final Page page;
  private final Table table;
  private String topic = "";
  private String source = "";

  ProveText(PageLook look) {
    page = new Page(look);
    List<String> heads = List.of("What", "Reference", "Ours (95 % interval)", "");
    table = new Table(look, heads, WHAT, REFERENCE, OURS, VERDICT);
  }

  /** The head of the table. */
  String head() {
    page.add(table.head());
    return page.taken();
  }

  /** The lines of the next finding, below its topic and source where they are new. */
  String next(Finding finding) {
    finding(finding);
    return page.taken();
  }

  /** What is below the table. */
  String end(Proof proof, List<Finding> findings, int checks) {
    summary(proof, findings, checks);
    return page.taken();
  }

  private void finding(Finding finding) {
    if (!finding.check().topic().equals(topic)) {
      page.add(topic.isEmpty() ? "" : "\n");
      topic = finding.check().topic();
      source = "";
      page.heading(topic);
    }
    if (!finding.check().source().equals(source)) {
      source = finding.check().source();
      page.lines(" [", "  ", source + "]");
    }
    String row =
        row(
            finding.check().what(),
            mark(finding.reference()) + reference(finding.reference()),
            ours(finding),
            finding.holds() ? "holds" : "FAILS");
    page.add(finding.holds() ? row : page.look().warning(row));
    if (finding.reference().kind() == Reference.Kind.APPROXIMATION) {
      page.lines("      ", "      ", deviation(finding));
    }
  }

  /** What is too long for its column stands on lines alone. */
  private String row(String what, String reference, String ours, String verdict) {
    return what.length() > WHAT - 3
        ? page.look().lines("  ", "    ", what) + table.row("", reference, ours, verdict)
        : table.row("  " + what, reference, ours, verdict);
  }

  private static String mark(Reference reference) {
    return switch (reference.kind()) {
      case PUBLISHED -> "  ";
      case EXACT -> "= ";
      case APPROXIMATION -> "~ ";
    };
  }

  private static String reference(Reference reference) {
    if (reference.text().isEmpty()) {
      return number(reference.value(), DIGITS);
    }
    int digits = new BigDecimal(reference.text()).precision();
    return withZeros(reference.value(), Math.min(digits, MOST_DIGITS));
  }

  private static String ours(Finding finding) {
    Estimate ours = finding.ours();
    if (finding.from() == finding.to()) {
      return number(ours.value(), DIGITS);
    }
    double half = (ours.high() - ours.low()) / 2;
    return rounded(ours.value(), half)
        + " ("
        + rounded(ours.low(), half)
        + " to "
        + rounded(ours.high(), half)
        + ")";
  }

  /** To two digits of the interval's half width; to one where a power of ten takes room. */
  private static String rounded(double value, double half) {
    int first = (int) Math.floor(Math.log10(Math.abs(value)));
    int last = (int) Math.floor(Math.log10(half));
    int more = Math.abs(value) < SMALL ? 1 : 2;
    return withZeros(value, Math.max(1, first - last + more));
  }

  private static String deviation(Finding finding) {
    Reference reference = finding.reference();
    return String.format(
        Locale.ROOT,
        "deviates by %+.3g %%; to be expected: %+.3g to %+.3g %%",
        100 * finding.deviation(),
        100 * (reference.low() / reference.value() - 1),
        100 * (reference.high() / reference.value() - 1));
  }

  /** A number to so many digits, without idle zeros. */
  private static String number(double value, int digits) {
    String text = withZeros(value, digits);
    return text.contains(".") ? text.replaceFirst("\\.?0+(e|$)", "$1") : text;
  }

  /** A number to so many digits, with a power of ten where it would be long without. */
  private static String withZeros(double value, int digits) {
    double size = Math.abs(value);
    if (size > 0 && (size < SMALL || size >= 1e12)) {
      return String.format(Locale.ROOT, "%." + (digits - 1) + "e", value)
          .replaceFirst("e([-+])0", "e$1");
    }
    int decimals = new BigDecimal(value).round(new MathContext(digits)).scale();
    return String.format(Locale.ROOT, "%,." + Math.max(0, Math.min(decimals, 12)) + "f", value);
  }

  private void summary(Proof proof, List<Finding> findings, int checks) {
    long held = findings.stream().filter(Finding::holds).count();
    page.gap();
    if (findings.size() < checks) {
      page.paragraph(
          "Unfinished: it was interrupted after " + findings.size() + " of " + checks + " lines.");
    }
    page.paragraph(
        held == findings.size()
            ? "All " + held + " lines hold."
            : (findings.size() - held) + " of " + findings.size() + " lines FAIL.");
    page.paragraph(
        "Without a mark: a printed value, to the digits printed. = is an exact value solved"
            + " here by a closed form or a Markov chain. ~ is an approximation: exact values"
            + " deviate from it, and the line holds if they do so by what is to be expected.");
    page.paragraph(
        String.format(
            Locale.ROOT,
            "A simulated line (with an interval) fails if its reference lies outside of an"
                + " interval so wide that a sound engine fails any line with at most %s of all"
                + " seeds. Seed %d.",
            "1 of " + Numbers.fixed(1 / Proof.ALARM_RATE, 0),
            proof.seed()));
  }
}
