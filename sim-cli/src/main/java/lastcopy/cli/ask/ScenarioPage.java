package lastcopy.cli.ask;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Answers as a scenario with comments, for a person to change. */
final class ScenarioPage {

  private static final int NONE = 0;
  private static final int SECOND = 2;
  private static final int THIRD = 4;

  private final Answers answers;

  private ScenarioPage(Answers answers) {
    this.answers = answers;
  }

  /** A part of the file with lines of its own. */
  record Part(String id, List<String> lines) {
    Part {
      lines = List.copyOf(lines);
    }
  }

  /** A layout; its title is quoted by the template. */
  record LayoutPart(String id, String title, List<String> costs, List<Part> copies) {
    LayoutPart {
      costs = List.copyOf(costs);
      copies = List.copyOf(copies);
    }
  }

  /** A place and what strikes it. */
  record PlacePart(String id, String site) {}

  /** All that the template shows; it quotes what is not in three braces. */
  record View(
      String studio,
      String years,
      String currency,
      String work,
      List<String> footage,
      List<PlacePart> places,
      List<String> desk,
      List<String> uplinks,
      List<Part> drives,
      List<LayoutPart> layouts) {}

  /**
   * The text of the file.
   *
   * @throws IOException if the template cannot be read
   */
  static String of(Answers answers, List<LayoutSketch> layouts) throws IOException {
    try (InputStream in = ScenarioPage.class.getResourceAsStream("scenario.yaml");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      Template template = Mustache.compiler().withEscaper(YamlText::quoted).compile(reader);
      return template.execute(new ScenarioPage(answers).view(layouts));
    }
  }

  private View view(List<LayoutSketch> layouts) {
    return new View(
        answers.text("studio"),
        answers.text("years"),
        answers.text("currency"),
        work(),
        footage(),
        places(layouts),
        lines(SECOND).answer("typical", answers.text("desk"), "desk").all(),
        lines(SECOND).answer("line", "{speed: " + answers.text("uplink") + "}", "uplink").all(),
        List.of(
            new Part(CopySketch.OWNED, DriveLines.owned(answers)),
            new Part(CopySketch.NEW, DriveLines.bought(answers))),
        layouts.stream().map(this::layout).toList());
  }

  private Lines lines(int indent) {
    return new Lines(answers, indent);
  }

  private String work() {
    String price = answers.text("hour") + " per h";
    String remark =
        "price "
            + (answers.isOwn("hour") ? "(your answer)" : "(as suggested)")
            + ", times (assumption)";
    return lines(NONE)
        .remark("work", "{price: " + price + ", repair: 2 h, trial: 1 h}", remark)
        .all()
        .get(0);
  }

  private List<String> footage() {
    String shoots =
        "{per_year: "
            + answers.text("shoots")
            + ", size: "
            + answers.text("size")
            + ", spacing: random}";
    Lines lines =
        lines(SECOND)
            .answer("on_hand", answers.text("on-hand"), "on-hand")
            .answer("shoots", shoots, "size");
    if (!answers.is("keep", QuestionTable.FOR_GOOD)) {
      lines.answer("keep_for", answers.text("keep"), "keep");
    }
    return lines.answer("worth", answers.text("worth") + " per shoot", "worth").all();
  }

  private List<PlacePart> places(List<LayoutSketch> layouts) {
    return layouts.stream()
        .flatMap(layout -> layout.copies().stream())
        .filter(copy -> copy.form() != CopySketch.Form.SERVICE)
        .map(CopySketch::place)
        .distinct()
        .map(id -> new PlacePart(id, id.equals(QuestionTable.STUDIO) ? "business" : "home"))
        .toList();
  }

  private LayoutPart layout(LayoutSketch layout) {
    List<String> costs =
        layout.watched()
            ? lines(THIRD)
                .remark("costs", "{once: " + answers.text("price") + "}", "the spare drive")
                .all()
            : List.of();
    return new LayoutPart(
        layout.id(),
        layout.title(),
        costs,
        layout.copies().stream()
            .map(copy -> new Part(copy.id(), CopyLines.of(answers, copy, layout.watched())))
            .toList());
  }
}
