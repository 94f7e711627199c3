package lastcopy.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import lastcopy.cli.Written;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.outlook.Omission;
import lastcopy.outlook.Omission.Kind;
import lastcopy.outlook.Outlook;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the page says, of a studio made for it: every figure is the result's own. */
class ReportPageTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);
  private static final String YAML =
      """
      lastcopy: 1
      studio: "Heron <b>&\\" Films"
      years: 5
      currency: EUR
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 20 GB}, worth: 500 per shoot}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}, theft: {rate: 1 %/year}, water: {rate: 1 %/year}}}
      desk: {deletion: {rate: 5 %/year, size: 1 shoots, noticed: 3 days}}
      drives:
        disk: {size: 8 TB, price: 100, age: 1 year, fails: 5 %/year}
      layouts:
        one:
          title: One <i>drive</i>
          copies:
            main: {place: studio, drives: 1 x disk, noticed: {checked_every: 30 days}, wait: 2 days, replace_at: 3 years}
        two:
          title: A drive and a copy
          copies:
            main: {place: studio, drives: 1 x disk, noticed: 0 h, wait: 2 days}
            far:
              drives: 1 x disk
              noticed: 1 day
              wait: 2 days
              keeps_deleted: 30 days
              spoils: {rate: 2 %/year, tried_every: 90 days}
              feed: {from: main, every: 1 day, at: 2 h, link: 100 Mbit/s}
      """;

  private static Studio studio;
  private static Comparison result;
  private static String page;

  @BeforeAll
  static void make() throws Exception {
    studio = Written.of(YAML).studio();
    Settings settings =
        new Settings(1, 0.95, 0.5, OptionalLong.of(4_096), Optional.empty(), 1, Method.PLAIN);
    result = Simulation.run(studio, settings, Progress.SILENT);
    page = page(result);
  }

  private static String page(Comparison of) throws Exception {
    return page(of, List.of());
  }

  private static String page(List<Omission> omissions) throws Exception {
    return page(result, omissions);
  }

  private static String page(Comparison of, List<Omission> omissions) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPage.Made made = new ReportPage.Made(TODAY, "lastcopy 9.9", "heron.yaml", "abc123");
    ReportPage.write(
        of,
        studio,
        new Remarks(omissions, Map.of(), List.of(), List.of("Mind that.")).andCaution("Guessed."),
        made,
        out);
    return out.toString(StandardCharsets.UTF_8);
  }

  /** Red if a name is shown as it is given. */
  @Test
  void namesAreEscaped() {
    assertThat(page)
        .contains("Heron &lt;b&gt;&amp;&quot; Films", "One &lt;i&gt;drive&lt;/i&gt;")
        .doesNotContain("<b>", "<i>drive");
  }

  /** Nothing is asked of a network, and nothing runs. */
  @Test
  void thePageStandsAlone() {
    String names = page.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
    assertThat(names.replace("xmlns:xlink=\"http://www.w3.org/1999/xlink\"", ""))
        .doesNotContain("://", "<script", "@import", "<link", "src=", "Optional[", "null");
  }

  /** Red where the head of a column takes a row's words. */
  @Test
  void costStandsBesideRisk() {
    assertThat(page)
        .contains("<th scope=\"col\">Lose footage, of 1,000 studios</th>", "<td>the cheapest</td>")
        .contains("Nothing dearer than &quot;A drive and a copy&quot; is shown to lose footage");
  }

  /** By hand: the chance times a thousand, in the number, in words and in squares. */
  @Test
  void figuresAreTheResultsOwn() {
    for (int i = 0; i < 2; i++) {
      double chance = result.layouts().get(i).anyLoss().value();
      long rounded = Math.round(1000 * chance);
      assertThat(page).contains(">" + rounded + " of 1,000</p>");
      assertThat(page).contains(rounded + " of 1,000 studios drawn as squares, " + rounded);
      long rows = rounded / 50;
      assertThat(page).contains("height=\"" + rows * 10 + "\" fill=\"url(#icons" + i + "-lost)\"");
    }
    assertThat(page)
        .contains("1 TB of footage today, 6.2 TB after 5 years")
        .contains("a shoot of 20 GB every 7 days on average")
        .contains("EUR 500 for each shoot that is lost")
        .contains("One &lt;i&gt;drive&lt;/i&gt; costs EUR ")
        .contains("<li>Mind that.</li>", "<li>Guessed.</li>")
        .contains("lastcopy 9.9, 2026-03-14, seed 1, scenario heron.yaml")
        .contains("<code>abc123</code>");
  }

  @Test
  void theAnswerComesFirst() {
    assertThat(page.indexOf("Safest here: &quot;A drive and a copy&quot;"))
        .isPositive()
        .isLessThan(page.indexOf("<h2"));
    assertThat(matches("class=\"safest\"")).hasSize(1);
  }

  /**
   * As a partner asks: the decision, the risk, when, how much, why, for how much, and then what.
   */
  @Test
  void sectionsStandInTheOrderOfAnArgument() {
    assertThat(matches("<h2>(.*?)</h2>"))
        .containsExactly(
            "What is at stake",
            "Of 1,000 studios like yours, so many lose footage within 5 years",
            "When",
            "How much",
            "Why",
            "What it costs, and which step is worth it",
            "How long work stops, and until all is back",
            "What stays unprotected",
            "What is assumed, and how sure it is",
            "What to beware of",
            "What to do from Monday on, with &quot;A drive and a copy&quot;",
            "How to make this page again");
    // What is lost is told where "how much" is asked, and cost where cost is.
    assertThat(page.indexOf("Lost on average")).isGreaterThan(page.indexOf("<h2>How much"));
    assertThat(page.indexOf("&lt;/i&gt; costs EUR "))
        .isGreaterThan(page.indexOf("<h2>What it costs"));
  }

  /** By hand: 6.2 TB in shoots of 20 GB are 310, worth 500 each. */
  @Test
  void whatIsLostIsToldInShootsToo() {
    assertThat(page)
        .contains("as large as 310 shoots in all", "EUR 155,000 for all of them")
        .contains(", in shoots " + Numbers.figure(result.layouts().get(0).shootsLost()) + "</p>");
  }

  /** Where nothing is said of the desk the figures would be misread, so it is told above them. */
  @Test
  void whatIsNotCountedStandsWhereItMatters() throws Exception {
    String below = page(List.of(omission(Kind.BATCH)));
    assertThat(below.indexOf("Not counted")).isGreaterThan(below.indexOf("What stays unprotected"));
    String above = page(List.of(omission(Kind.DELETION), omission(Kind.MALWARE)));
    assertThat(above.indexOf("Not counted")).isBetween(1, above.indexOf("What is at stake"));
    assertThat(page).doesNotContain("Not counted");
  }

  @Test
  void anInterruptedRunSaysSoOnThePage() throws Exception {
    assertThat(page).doesNotContain("Unfinished");
    Comparison part =
        new Comparison(
            result.studio(),
            result.years(),
            result.currency(),
            result.seed(),
            result.confidence(),
            false,
            result.layouts(),
            result.pairs());
    assertThat(page(part)).contains("Unfinished: the simulation was interrupted");
  }

  /** Both charts stand in one page: no id twice, and headings go down a step at a time. */
  @Test
  void aReaderOfAScreenFindsItsWay() {
    List<String> ids = matches("\\bid=\"([^\"]+)\"");
    assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
    List<String> headings = matches("<h([1-6])");
    assertThat(headings.get(0)).isEqualTo("1");
    for (int i = 1; i < headings.size(); i++) {
      assertThat(Integer.parseInt(headings.get(i)))
          .isLessThanOrEqualTo(Integer.parseInt(headings.get(i - 1)) + 1);
    }
    assertThat(page).contains("<html lang=\"en\"");
    assertThat(matches("<svg [^>]*role=\"img\"")).hasSize(4);
    assertThat(matches("<th scope=\"(?:col|row)\"")).hasSameSizeAs(matches("<th\\b"));
  }

  /** By the scenario and the calendar: 90 days from March 14 is June 12; two years are 730 days. */
  @Test
  void whatIsToBeDoneHasItsDate() {
    List<Outlook> outlooks = Outlook.of(studio);
    assertThat(Errands.of(outlooks.get(1), TODAY))
        .containsExactly(
            new Errands.Errand(
                LocalDate.of(2026, 6, 12),
                "try to restore a shoot from far, and again every 90 days from then on"));
    assertThat(Errands.of(outlooks.get(0), TODAY))
        .containsExactly(
            new Errands.Errand(
                LocalDate.of(2026, 4, 13),
                "look at every drive of main, and again every 30 days from then on"),
            new Errands.Errand(
                LocalDate.of(2028, 3, 13), "replace each disk of main by a new one"));
    assertThat(page).contains("<time datetime=\"2026-06-12\">2026-06-12</time>");
  }

  @Test
  void whatStaysUnprotectedIsTold() {
    assertThat(ThreatRows.of(studio, studio.layouts().get(1)))
        .extracting(ThreatRows.Row::threat, row -> row.left().words(), ThreatRows.Row::counted)
        .containsExactly(
            tuple("A drive of one copy fails", "the others", true),
            tuple("fire, theft or water at studio", "far", true),
            tuple("Fire, theft or water where far stands", "main", false),
            tuple("Footage is deleted by mistake", "far", true),
            tuple("Malware destroys what it reaches", "far", false));
    assertThat(page)
        .contains("Malware destroys what it reaches (not counted: the file gives no rate)");
  }

  /** Where a thousand squares would show nothing, ten thousand do; by hand. */
  @Test
  void squaresAreFilledRowByRow() {
    IconArray some = IconArray.of("a", 0.0824, 1_000);
    assertThat(some.lost()).isEqualTo(82);
    assertThat(some.fullHeight()).isEqualTo(10);
    assertThat(some.restWidth()).isEqualTo(320);
    assertThat(some.width() * some.height()).isEqualTo(1_000 * 100);
    IconArray many = IconArray.of("b", 1, 10_000);
    assertThat(many.fullHeight()).isEqualTo(many.height());
    assertThat(many.rest()).isFalse();
  }

  private static Omission omission(Kind kind) {
    return new Omission(kind, List.of());
  }

  private static List<String> matches(String pattern) {
    List<String> found = new ArrayList<>();
    Pattern.compile(pattern)
        .matcher(page)
        .results()
        .map((MatchResult match) -> match.groupCount() > 0 ? match.group(1) : match.group())
        .forEach(found::add);
    return found;
  }
}
