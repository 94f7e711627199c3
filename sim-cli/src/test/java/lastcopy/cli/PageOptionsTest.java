package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lastcopy.cli.compare.SampleComparison;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Width, colour and characters of what a command prints, on a terminal and in a pipe. */
class PageOptionsTest {

  private static final String ESCAPE = "\u001b";
  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(
      boolean terminal, Map<String, String> environment, Host.Engine engine, String... args) {
    out.reset();
    err.reset();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            terminal,
            ScenarioLoading::fromFile,
            engine,
            () -> LocalDate.EPOCH,
            new Interruption(),
            environment);
    return new Program(host).run(args);
  }

  private String printed(boolean terminal, Map<String, String> environment, String... args) {
    Host.Engine sample = (studio, settings, progress) -> SampleComparison.result(true);
    assertThat(run(terminal, environment, sample, args)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Map<String, String> environment(String variables) {
    return Stream.of(variables.split(" "))
        .filter(each -> each.contains("="))
        .collect(
            Collectors.toMap(
                each -> each.substring(0, each.indexOf('=')),
                each -> each.substring(each.indexOf('=') + 1)));
  }

  /** NO_COLOR turns off what is on by itself, and not what is asked for; empty it says nothing. */
  @ParameterizedTest
  @CsvSource({
    "false, COLUMNS=80,            auto,   false",
    "false, COLUMNS=80,            always, true",
    "false, COLUMNS=80 NO_COLOR=1, always, true",
    "true,  COLUMNS=80,            auto,   true",
    "true,  COLUMNS=80 NO_COLOR=1, auto,   false",
    "true,  COLUMNS=80 NO_COLOR=,  auto,   true",
    "true,  COLUMNS=80 TERM=dumb,  auto,   false",
    "true,  COLUMNS=80 NO_COLOR=1, always, true",
    "true,  COLUMNS=80,            never,  false",
  })
  void colourIsForTerminalsAndForThoseWhoAsk(
      boolean terminal, String variables, String color, boolean coloured) {
    for (String command : List.of("compare", "inspect")) {
      String page =
          printed(terminal, environment(variables), command, DEMO.toString(), "--color", color);
      assertThat(page.contains(ESCAPE)).as(command).isEqualTo(coloured);
      // Never alone: without it the page says the same.
      assertThat(page.replaceAll(ESCAPE + "\\[[0-9]*m", ""))
          .isEqualTo(printed(false, Map.of(), command, DEMO.toString()));
    }
  }

  /** A pipe gets 80 columns whatever its terminal has, so that what is stored stays the same. */
  @Test
  void theWidthIsTheTerminalsAndEightyInAPipe() {
    String[] compare = {"compare", DEMO.toString()};
    assertThat(longest(printed(false, Map.of("COLUMNS", "150"), compare))).isEqualTo(80);
    assertThat(longest(printed(true, Map.of("COLUMNS", "150"), compare))).isBetween(90, 150);
    assertThat(longest(printed(true, Map.of("COLUMNS", "20"), compare))).isBetween(50, 60);
    assertThat(printed(true, Map.of("COLUMNS", "9999", "NO_COLOR", "1"), compare))
        .isEqualTo(printed(false, Map.of(), "compare", DEMO.toString(), "--width", "200"));
    assertThat(
            longest(
                printed(
                    true,
                    Map.of("COLUMNS", "80"),
                    "compare",
                    DEMO.toString(),
                    "--width",
                    "60",
                    "--color",
                    "never")))
        .isLessThanOrEqualTo(60);
  }

  private static int longest(String page) {
    return page.replaceAll(ESCAPE + "\\[[0-9]*m", "")
        .lines()
        .mapToInt(String::length)
        .max()
        .orElse(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"59", "201", "wide", "-80", "80.5"})
  void aWidthThatNoPageHasGivesOneMessage(String width) {
    assertThat(run(false, Map.of(), null, "compare", DEMO.toString(), "--width=" + width))
        .isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("'" + width + "' is not a number of columns, 60 to 200");
    assertThat(run(false, Map.of(), null, "compare", DEMO.toString(), "--color=sometimes"))
        .isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("auto, always, never");
  }

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "scenarios"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** With names that no ASCII has, and at both ends of what a page may be wide. */
  @ParameterizedTest
  @MethodSource("demos")
  void inAsciiNoCharacterIsAbove127(Path demo) throws IOException {
    String text =
        Files.readString(demo)
            .replaceFirst(
                "studio: .*",
                "studio: \"Caf\u00e9 \u00d8st \u2013 \u5199\u771f \u201cFilms\u201d\"")
            .replaceFirst(
                "title: .*", "title: \"\u00c9tag\u00e8re \u2013 \u00fcber \ud83d\ude00\"");
    Path file = Files.writeString(folder.resolve("named.yaml"), text);
    for (String width : List.of("60", "200")) {
      List<String> args =
          new ArrayList<>(List.of("compare", file.toString(), "--plot", "--details"));
      args.addAll(
          List.of(
              "--ascii",
              "--width",
              width,
              "--histories",
              "100",
              "--method",
              "plain",
              "--worlds",
              "100"));
      assertThat(run(false, Map.of(), WorldSimulation::run, args.toArray(String[]::new)))
          .as(err.toString(StandardCharsets.UTF_8))
          .isZero();
      String page = out.toString(StandardCharsets.UTF_8);
      assertThat(page.chars().allMatch(c -> c < 128)).isTrue();
      assertThat(page).startsWith("Cafe Ost - ?? \"Films\"\n").contains("Etagere - uber ?");
      assertThat(page.lines()).allMatch(line -> line.length() <= Integer.parseInt(width));
    }
    assertThat(
            printed(false, Map.of(), "inspect", file.toString(), "--ascii", "--all")
                .chars()
                .allMatch(c -> c < 128))
        .isTrue();
    assertThat(printed(false, Map.of(), "inspect", file.toString())).contains("Caf\u00e9");
  }
}
