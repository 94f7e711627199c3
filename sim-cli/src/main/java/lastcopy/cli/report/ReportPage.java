package lastcopy.cli.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lastcopy.charts.ChartException;
import lastcopy.charts.ChartFiles;
import lastcopy.charts.ExceedanceChart;
import lastcopy.charts.LossCurveChart;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.OmissionWords;
import lastcopy.cli.sentence.Answer;
import lastcopy.cli.sentence.CostSteps;
import lastcopy.cli.sentence.Horizon;
import lastcopy.cli.sentence.PairSentences;
import lastcopy.cli.sentence.Remarks;
import lastcopy.cli.sentence.WorldWords;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.outlook.Outlook;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.words.OutOf;
import lastcopy.words.PercentWords;

/** A comparison as one page that argues the decision, and needs nothing but itself. */
public final class ReportPage {

  /** So many squares can be seen; of more, nobody has a picture. */
  private static final long MOST_SQUARES = 10_000;

  /** More layouts than so many are printed smaller, so that two sheets hold them. */
  private static final int MANY = 3;

  private final Comparison result;
  private final Studio studio;
  private final Remarks remarks;
  private final Made made;
  private final OutOf outOf;

  private ReportPage(Comparison result, Studio studio, Remarks remarks, Made made) {
    this.result = result;
    this.studio = studio;
    this.remarks = remarks;
    this.made = made;
    outOf =
        OutOf.showingSmallest(result.layouts().stream().map(LayoutResult::anyLoss).toList())
            .atMost(MOST_SQUARES);
  }

  /**
   * How to make the same page again.
   *
   * @param date on which it was made
   * @param version of the program
   * @param file the scenario's name, without its folders
   * @param hash of its bytes, SHA-256 in hexadecimal digits
   */
  public record Made(LocalDate date, String version, String file, String hash) {}

  /**
   * Which copies of a layout are left after each mishap.
   *
   * @param title of the layout
   * @param heads the names of its copies
   * @param rows a mishap each
   */
  record Unprotected(String title, List<String> heads, List<ThreatRows.Row> rows) {
    Unprotected {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }
  }

  /** All that the template shows; what it does not escape are the charts alone. */
  record View(
      String studio,
      boolean many,
      boolean unfinished,
      String horizon,
      String studios,
      String answer,
      List<String> notCountedAbove,
      List<String> stakes,
      List<LayoutCard> cards,
      List<String> pairs,
      String matters,
      boolean priced,
      List<CostSteps.Row> costs,
      List<String> steps,
      String curve,
      String amounts,
      List<Unprotected> unprotected,
      List<String> notCountedBelow,
      List<String> assumed,
      List<WorldWords.Said> worlds,
      List<String> warnings,
      String planned,
      List<Errands.Errand> errands,
      String confidence,
      long seed,
      Made made) {}

  /**
   * Writes the page.
   *
   * @param studio that was simulated
   * @throws ChartException if this system cannot draw
   * @throws IOException if it cannot be written
   */
  public static void write(
      Comparison result, Studio studio, Remarks remarks, Made made, OutputStream out)
      throws ChartException, IOException {
    View view = new ReportPage(result, studio, remarks, made).view();
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    template().execute(view, writer);
    writer.flush();
  }

  /** Escapes all that it is given, but for what stands in three braces. */
  private static Template template() throws IOException {
    try (InputStream in = ReportPage.class.getResourceAsStream("report.html");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return Mustache.compiler().escapeHTML(true).compile(reader);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private View view() throws ChartException, IOException {
    LayoutResult anchor = Answer.anchor(result);
    List<Outlook> outlooks = Outlook.of(studio);
    Outlook planned =
        outlooks.stream()
            .filter(o -> o.layout().id().equals(anchor.id()))
            .findFirst()
            .orElseThrow();
    return new View(
        result.studio(),
        result.layouts().size() > MANY,
        !result.finished(),
        Horizon.of(result),
        outOf.words(),
        Answer.of(result, outOf).orElse(alone(anchor)),
        notCounted(true),
        Stakes.of(studio, planned.room(), result),
        cards(anchor),
        PairSentences.of(result, outOf, false),
        WorldWords.mattersMost(result),
        result.layouts().stream().anyMatch(layout -> layout.cost().isPresent()),
        CostSteps.rows(result, outOf),
        CostSteps.sentences(result, outOf),
        ChartFiles.element(() -> LossCurveChart.of(result, made.date()), "curve-"),
        ChartFiles.element(() -> ExceedanceChart.of(result, made.date()), "amounts-"),
        unprotected(),
        notCounted(false),
        assumed(),
        WorldWords.sentences(result, outOf),
        remarks.warnings(),
        anchor.title(),
        Errands.of(planned, made.date()),
        PercentWords.of(result.confidence()),
        result.seed(),
        made);
  }

  /** One layout is no choice: what it does is the answer. */
  private String alone(LayoutResult layout) {
    return String.format(
        Locale.ROOT,
        "With %s, %s of %s like yours lose footage within %s.",
        PairSentences.quoted(layout),
        Numbers.studiosAlone(layout.anyLoss(), outOf),
        outOf.words(),
        Horizon.of(result));
  }

  /** Above the figures where they leave out so much that they would be misread. */
  private List<String> notCounted(boolean above) {
    return OmissionWords.comeFirst(remarks.omissions()) == above
        ? OmissionWords.paragraph(remarks.omissions(), result.layouts().size()).stream().toList()
        : List.of();
  }

  private List<LayoutCard> cards(LayoutResult anchor) {
    boolean shown = Answer.isSafest(result, anchor);
    List<LayoutCard> cards = new ArrayList<>();
    for (LayoutResult layout : result.layouts()) {
      boolean safest = shown && layout.equals(anchor);
      cards.add(LayoutCard.of(result, layout, cards.size(), safest, outOf));
    }
    return cards;
  }

  private List<Unprotected> unprotected() {
    List<Unprotected> all = new ArrayList<>();
    for (Layout layout : studio.layouts()) {
      all.add(
          new Unprotected(layout.title(), ThreatRows.heads(layout), ThreatRows.of(studio, layout)));
    }
    return all;
  }

  private List<String> assumed() {
    return Stream.concat(assumedOfLayouts().stream(), remarks.cautions().stream()).toList();
  }

  private List<String> assumedOfLayouts() {
    Optional<String> ofAll = remarks.assumptionOfAll();
    if (ofAll.isPresent()) {
      return List.of("Each layout " + ofAll.get() + ".");
    }
    return result.layouts().stream()
        .flatMap(
            layout ->
                remarks.assumption(layout.id()).stream()
                    .map(words -> PairSentences.quoted(layout) + " " + words + "."))
        .toList();
  }
}
