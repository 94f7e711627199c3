package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.Layout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every command prints of every demo, on pages of different widths, in colour and in ASCII.
 *
 * <p>Sabotage seen red: a rule of 80 dashes on a page of 60, a table without its narrow form, a
 * page that is printed without being put into ASCII, a heading that is coloured where nobody asked.
 */
class PageWidthsOfCommandsTest {

  private static final String ESCAPE = "\u001b";
  private static final List<Integer> WIDTHS = List.of(60, 80, 132, 200);

  private static List<String> line(String... words) {
    return List.of(words);
  }

  /** Few histories: what is said is not looked at, only how long its lines are. */
  static Stream<List<String>> lines() throws IOException {
    Stream<List<String>> demos = DemosTest.demos().stream().flatMap(demo -> of(demo).stream());
    return Stream.concat(demos, Stream.of(line("rates")));
  }

  private static List<List<String>> of(Path demo) {
    String file = demo.toString();
    if (file.endsWith(".csv")) {
      return List.of(line("fit", file), line("fit", file, "--details"));
    }
    return List.of(
        line("compare", file, "--histories", "100", "--method", "plain", "--worlds", "100"),
        line("inspect", file, "--all"),
        line("story", file, "--layout", layout(demo), "--histories", "300"));
  }

  private static String layout(Path demo) {
    try {
      List<Layout> layouts = ScenarioReader.read(demo).studio().layouts();
      return layouts.get(layouts.size() - 1).id();
    } catch (IOException | ScenarioException e) {
      throw new AssertionError(demo.toString(), e);
    }
  }

  private static String printed(
      boolean terminal, Map<String, String> environment, List<String> line, String... options) {
    return Ran.on(
            terminal,
            environment,
            Stream.concat(line.stream(), Stream.of(options)).toArray(String[]::new))
        .done();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void noLineIsWiderThanItsPage(List<String> line) {
    String plain = printed(false, Map.of(), line);
    for (int width : WIDTHS) {
      String letters = letters(line, width);
      // Never alone, and in a pipe as ever.
      assertThat(width != 80 || letters.equals(plain)).isTrue();
    }
    assertThat(printed(false, Map.of(), line, "--ascii").chars()).allMatch(c -> c < 128);
    assertThat(printed(true, Map.of("COLUMNS", "80", "NO_COLOR", "1"), line)).isEqualTo(plain);
    assertThat(printed(true, Map.of("COLUMNS", "60"), line))
        .isEqualTo(printed(false, Map.of(), line, "--width", "60", "--color", "always"));
  }

  /** Names that no ASCII has, in what each command prints. */
  @Test
  void inAsciiNoCharacterIsAbove127(@TempDir Path folder) throws IOException {
    String text = Files.readString(Path.of("..", "scenarios", "unwatched-mirror.yaml"));
    Path file =
        Files.writeString(
            folder.resolve("named.yaml"),
            text.replaceFirst("studio: .*", "studio: \"Caf\u00e9 \u5199\u771f\"")
                .replaceAll("title: .*", "title: \"\u00c9tag\u00e8re\""));
    String drives = Files.readString(Path.of("..", "scenarios", "records-of-a-studio.csv"));
    Path records =
        Files.writeString(
            folder.resolve("records.csv"), drives.replace("desk-8tb", "d\u00e9sk-8tb"));
    String name = file.toString();
    for (List<String> line :
        List.of(
            line("story", name, "--layout", layout(file), "--histories", "300"),
            line("levers", name, "--layout", layout(file), "--histories", "100"),
            line("inspect", name),
            line("fit", records.toString()))) {
      assertThat(printed(false, Map.of(), line).chars()).anyMatch(c -> c > 127);
      assertThat(printed(false, Map.of(), line, "--ascii").chars()).allMatch(c -> c < 128);
    }
  }

  /** They take longest, so a few demos do, on the narrowest page and in a pipe. */
  @ParameterizedTest
  @CsvSource({"harbour-mirror-or-far-copy, mirror", "malware-night, versions"})
  void noLineOfLeversIsWiderThanItsPage(String demo, String layout) {
    String file = Path.of("..", "scenarios", demo + ".yaml").toString();
    List<String> line =
        line("levers", file, "--layout", layout, "--histories", "200", "--method", "plain");
    String narrow = letters(line, 60);
    assertThat(narrow.lines().filter(each -> each.startsWith("  Fewer of "))).isNotEmpty();
    assertThat(letters(line, 80))
        .isEqualTo(printed(true, Map.of("NO_COLOR", "1", "COLUMNS", "80"), line));
    assertThat(printed(false, Map.of(), line, "--ascii").chars()).allMatch(c -> c < 128);
  }

  @Test
  void noLineOfAdviceIsWiderThanItsPage() {
    String file = Path.of("..", "scenarios", "what-to-buy-first.yaml").toString();
    List<String> line =
        line("advise", file, "--target", "5%", "--histories", "300", "--impossible");
    assertThat(letters(line, 60)).contains("Step by step:").contains("No valid layout:");
    assertThat(letters(line, 80))
        .isEqualTo(printed(true, Map.of("NO_COLOR", "1", "COLUMNS", "80"), line));
    assertThat(printed(false, Map.of(), line, "--ascii").chars()).allMatch(c -> c < 128);
  }

  /** A coloured page of a width, without its colours. */
  private static String letters(List<String> line, int width) {
    String page = printed(false, Map.of(), line, "--width", "" + width, "--color", "always");
    assertThat(page).contains(ESCAPE);
    String letters = page.replaceAll(ESCAPE + "\\[[0-9]*m", "");
    assertThat(letters.lines()).allMatch(each -> each.length() <= width);
    return letters;
  }
}
