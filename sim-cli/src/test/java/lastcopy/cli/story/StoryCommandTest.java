package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StoryCommandTest {

  private static final String DEMO =
      Path.of("src", "test", "resources", "lastcopy", "cli", "rare-losses.yaml").toString();

  @TempDir Path directory;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Interruption interruption = new Interruption();

  @ParameterizedTest
  @ValueSource(
      strings = {"", "--first-loss", "--typical", "--near-miss", "--history 5", "--all --quiet"})
  void everyChoiceTellsAStoryWithinTheLine(String options) {
    assertThat(story("far", options)).isZero();
    assertThat(text(out).lines()).allMatch(line -> line.length() <= 80);
    assertThat(text(out))
        .contains("It begins.")
        .contains("The story ends.")
        .contains("not a forecast")
        .contains("restoring from it was tried");
    assertThat(text(err)).isEmpty();
  }

  @Test
  void aFirstLossIsToldWithItsReasonAndWhatWouldHaveSavedIt() {
    assertThat(story("drive-and-far-copy", "--first-loss")).isZero();
    String first = text(out);
    assertThat(first)
        .contains("LOST FOR GOOD")
        .contains("Why: ")
        .contains("Behind at the time: far")
        .contains("worth");
    String number = first.replaceAll("(?s).*--history (\\d+) .*", "$1");
    out.reset();
    assertThat(story("drive-and-far-copy", "--history " + number)).isZero();
    assertThat(after(text(out), "Year 1")).isEqualTo(after(first, "Year 1"));
  }

  @Test
  void aSearchThatFindsNothingSaysSoWithABound() {
    assertThat(story("drive-and-far-copy", "--first-loss --histories 50")).isZero();
    // 1 - 0.05^(1/50) is 58.2 of 1,000, rounded up to the safe side.
    assertThat(text(out).replaceAll("\\s+", " "))
        .contains("None of 50 histories loses anything")
        .contains("at most 59 of 1,000 studios ")
        .contains("--near-miss")
        .contains("told from a biased history")
        .containsPattern(
            "any footage over [0-9]+ years? is 1 in [0-9]+ \\(1 in [0-9]+ to 1 in [0-9]+, 95 % sure\\)")
        .contains("LOST FOR GOOD");
  }

  @Test
  void aBiasedHistoryIsToldAgainByItsNumberAndSaysSoInJson() throws IOException {
    assertThat(story("drive-and-far-copy", "--first-loss --histories 50")).isZero();
    String first = text(out);
    String number = first.replaceAll("(?s).*--history (\\d+) --biased.*", "$1");
    out.reset();
    assertThat(story("drive-and-far-copy", "--biased --history " + number)).isZero();
    assertThat(after(text(out), "It was drawn")).isEqualTo(after(first, "It was drawn"));
    out.reset();
    assertThat(story("drive-and-far-copy", "--json - --biased --history " + number)).isZero();
    JsonNode json = new ObjectMapper().readTree(text(out));
    assertThat(json.get("biased").asBoolean()).isTrue();
    assertThat(json.get("weight").asDouble()).isBetween(0.0, 1.0).isPositive();
    assertThat(json.at("/chance/low").asDouble())
        .isPositive()
        .isLessThan(json.at("/chance/probability").asDouble());
    assertThat(json.at("/chance/high").asDouble())
        .isGreaterThan(json.at("/chance/probability").asDouble());
    assertThat(json.at("/outcome/lost").asBoolean()).isTrue();
  }

  @Test
  void anInterruptedSearchIsMarkedAndIs130() {
    interruption.ask();
    assertThat(story("drive-and-far-copy", "--typical")).isEqualTo(130);
    assertThat(text(out)).contains("UNFINISHED").contains("Unfinished: the search was interrupted");
  }

  @Test
  void datesAreToldWhereThereIsAStart() {
    assertThat(story("mirror", "--history 0 --start 2026-01-01")).isZero();
    assertThat(text(out)).contains("\n2026\n").contains("  1 Jan 00:00");
  }

  @ParameterizedTest
  @CsvSource({
    "miror, --typical, Did you mean 'mirror'?",
    "nothing-like-it, --typical, 'there is: one-drive, mirror, drive-and-far-copy.'",
    "mirror, --history -1, must be at least 0",
    "mirror, --biased --first-loss, goes with --history",
    "mirror, --history 1 --typical, mutually exclusive",
    "mirror, --start soon, --start",
    "mirror, --histories 0, not a whole number of at least 1",
  })
  void aWrongCommandLineIsTwoAndSaysWhy(String layout, String options, String message) {
    assertThat(run(layout, options)).isEqualTo(2);
    assertThat(text(err)).contains(message).doesNotContain("\tat ");
    assertThat(text(out)).isEmpty();
  }

  @Test
  void withoutALayoutTheOnesThatThereAreAreNamed() {
    assertThat(program("story", DEMO)).isEqualTo(2);
    assertThat(text(err)).contains("which layout?").contains("one-drive, mirror");
    assertThat(program("story", DEMO + ".not", "--layout", "mirror")).isEqualTo(2);
  }

  @Test
  void jsonHasEveryKeyAndUnroundedNumbers() throws IOException {
    Path file = directory.resolve("story.json");
    assertThat(story("drive-and-far-copy", "--first-loss --json " + file)).isZero();
    out.reset();
    assertThat(story("drive-and-far-copy", "--first-loss --start 2026-01-01 --json -")).isZero();
    JsonNode json = new ObjectMapper().readTree(text(out));
    assertThat(keys(json))
        .containsExactly(
            "format",
            "scenario",
            "years",
            "layout",
            "seed",
            "history",
            "selector",
            "searched",
            "finished",
            "how",
            "weight",
            "biased",
            "chance",
            "copies",
            "events",
            "outcome");
    assertThat(keys(json.at("/events/1")))
        .containsExactly(
            "hours",
            "date",
            "kind",
            "copy",
            "drive",
            "bytes",
            "until",
            "subject",
            "sentence",
            "shot",
            "lost",
            "held");
    assertThat(keys(json.get("outcome")))
        .containsExactly(
            "lost",
            "loss_events",
            "bytes_lost",
            "shoots_lost",
            "everything_lost",
            "causes",
            "sentence",
            "why");
    assertThat(json.at("/events/1/hours").asText()).contains(".").hasSizeGreaterThan(10);
    assertThat(json.at("/events/1/held")).hasSize(2);
    JsonNode undated = new ObjectMapper().readTree(Files.readString(file));
    assertThat(undated.at("/events/1/hours")).isEqualTo(json.at("/events/1/hours"));
    assertThat(undated.at("/events/1").has("date")).isFalse();
  }

  private int story(String layout, String options) {
    return run(layout.equals("far") ? "drive-and-far-copy" : layout, options);
  }

  private int run(String layout, String options) {
    List<String> args = new ArrayList<>(List.of("story", DEMO, "--layout", layout));
    args.addAll(options.isEmpty() ? List.of() : List.of(options.split(" ", -1)));
    return program(args.toArray(String[]::new));
  }

  private int program(String... args) {
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.of(2026, 1, 1),
            interruption);
    return new Program(host).run(args);
  }

  private static String after(String text, String mark) {
    return text.substring(text.indexOf(mark));
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
