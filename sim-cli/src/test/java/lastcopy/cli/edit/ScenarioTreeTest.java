package lastcopy.cli.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.PossibleStudios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Edits of a scenario, and the file that is written of them. */
class ScenarioTreeTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final List<String> NOTICED =
      List.of("layouts", "box", "copies", "main", "noticed");

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}}
      drives:
        d: {size: 8 TB, fails: 2 %/year}   # a comment
      layouts:
        box:
          title: Box
          copies:
            main: {drives: 2 x d, arrangement: mirror, noticed: {checked_every: 30 days}}
        far:
          copies:
            main: {drives: 1 x d}
            far:
              drives: 1 x d
              feed: {from: main, every: 1 day, stops: 0.2..0.8 per year}
              spoils: {rate: 1..4 %/year}
      """;

  private static ScenarioTree tree() throws ScenarioException {
    return ScenarioTree.parse("a.yaml", STUDIO);
  }

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void whatIsWrittenReadsBackAsTheSameStudio(Path demo) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ScenarioTree.read(demo).writeTo(out, List.of("Written by a test."));

    String page = out.toString(StandardCharsets.UTF_8);
    PossibleStudios written = ScenarioReader.parse("written", page).studios();
    PossibleStudios read = ScenarioReader.read(demo).studios();

    assertThat(page).startsWith("# Written by a test.\n");
    assertThat(written.central()).isEqualTo(read.central());
    assertThat(written.unknowns()).isEqualTo(read.unknowns());
    assertThat(written.atAll(1)).isEqualTo(read.atAll(1));
  }

  @Test
  void textsAreThoseOfTheFileInOneLine() throws Exception {
    assertThat(tree().text(NOTICED)).contains("{checked_every: 30 days}");
    assertThat(tree().text(List.of("layouts", "far", "copies", "main")))
        .contains("{drives: 1 x d}");
    assertThat(tree().text(List.of("layouts", "box", "copies", "main", "wait"))).isEmpty();
    assertThat(tree().keys(List.of("layouts", "far", "copies"))).containsExactly("main", "far");
    assertThat(tree().keys(List.of("layouts", "none"))).isEmpty();
  }

  @Test
  void anEditGivesALayoutOfItsOwnAndLeavesTheBase() throws Exception {
    ScenarioTree tree = tree();
    List<Change> changes =
        List.of(
            tree.change(NOTICED, "1 day"),
            tree.change(List.of("layouts", "box", "copies", "main", "spoils", "rate"), "2 %/year"),
            tree.change(List.of("layouts", "box", "copies", "main", "arrangement"), "stripe"));
    LayoutEdit edit = new LayoutEdit("box", "box-seen", "Seen: at once", changes);

    ScenarioTree edited = edit.in(tree);

    assertThat(changes.get(0)).isEqualTo(new Change(NOTICED, "{checked_every: 30 days}", "1 day"));
    assertThat(changes.get(0).key()).isEqualTo("layouts.box.copies.main.noticed");
    assertThat(edited.layouts()).containsExactly("box", "far", "box-seen");
    assertThat(edited.withLayouts(List.of("far", "box")).scenario().studio().layouts())
        .isEqualTo(tree.withLayouts(List.of("far", "box")).scenario().studio().layouts());
    String written =
        STUDIO
            .replace("Box", "'Seen: at once'")
            .replace("box:", "box-seen:")
            .replace("mirror, noticed: {checked_every: 30 days}", "stripe, noticed: 1 day")
            .replace("noticed: 1 day", "noticed: 1 day, spoils: {rate: 2 %/year}");
    assertThat(edited.withLayouts(List.of("box-seen", "far")).scenario().studio())
        .isEqualTo(ScenarioReader.parse("b", written).studio());
    assertThat(edit.isWithinLayout()).isTrue();
  }

  @Test
  void whatIsTakenOutIsNotThere() throws Exception {
    Change out = new Change(NOTICED, "{checked_every: 30 days}", "");
    ScenarioTree edited = new LayoutEdit("box", "b", "B", List.of(out)).in(tree());

    assertThat(edited.keys(List.of("layouts", "b", "copies", "main")))
        .containsExactly("drives", "arrangement");
    assertThat(tree().without(List.of("layouts", "box", "none", "none")).page())
        .isEqualTo(tree().page());
  }

  @Test
  void aCombinationThatIsNotValidGivesTheReadersReason() throws Exception {
    List<String> drives = List.of("layouts", "box", "copies", "main", "drives");

    assertThat(tree().with(drives, "1 x d").mistake())
        .hasValueSatisfying(why -> assertThat(why).contains("mirror").contains("at least 2"));
    assertThat(tree().with(drives, "3 x d").mistake()).isEmpty();
  }

  /** A copied layout is in the same world; were each range an unknown, there would be four. */
  @Test
  void aRangeIsOneUnknownInEachCopyOfItsLayout() throws Exception {
    ScenarioTree edited = new LayoutEdit("far", "far2", "Far", List.of()).in(tree());
    PossibleStudios inMemory = edited.scenario().studios();
    PossibleStudios written = ScenarioReader.parse("w", edited.page()).studios();

    assertThat(inMemory.unknowns()).hasSize(2).isEqualTo(tree().scenario().studios().unknowns());
    assertThat(written.unknowns()).isEqualTo(inMemory.unknowns());
    assertThat(written.atAll(1)).isEqualTo(inMemory.atAll(1));
    assertThat(edited.page()).contains("&").doesNotContain("# a comment");
  }
}
