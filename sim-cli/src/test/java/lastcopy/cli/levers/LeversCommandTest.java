package lastcopy.cli.levers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command levers from its options to its outputs. */
class LeversCommandTest {

  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir Path directory;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Interruption interruption = new Interruption();

  @Test
  void theTextAnswersFirstWithinTheLine() {
    assertThat(run("--layout", "mirror", "--histories", "4000")).isZero();
    String text = text(out);

    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    String words = text.replaceAll("\\s+", " ");
    assertThat(words)
        .contains("what would help \"Two drives mirrored in one box\"?")
        .contains("What helps most: deleted files kept 90 days. Of 1,000 studios like yours,")
        .contains("It costs nothing more, by the prices of the file.")
        .contains("For comparison, no deeds: Half as much shot")
        .contains("A second copy, at a service")
        .contains("not priced")
        .contains("Double parity: no copy has single parity")
        .contains("The drive costs what the file says for a desk-8tb, EUR 180.")
        .contains("What changes do, from 4,000 histories of each, which share their luck; seed 1.")
        .contains("hold all together in 95 % of such studies");
    assertThat(text.indexOf("What helps most")).isLessThan(text.indexOf("As it is"));
    assertThat(text(err)).isEmpty();
  }

  /** The figures of a lever are, to the last digit, those of compare on the file it writes. */
  @Test
  void compareOnTheWrittenFileGivesTheSameFigures() throws IOException {
    Path written = directory.resolve("levers.yaml");
    String levers = json("levers", DEMO, "--layout", "mirror", "--write", written.toString());
    JsonNode study = new ObjectMapper().readTree(levers);
    JsonNode compared = new ObjectMapper().readTree(json("compare", written));
    Map<String, JsonNode> layouts = new HashMap<>();
    compared.get("layouts").forEach(layout -> layouts.put(layout.get("id").asText(), layout));
    Map<String, JsonNode> pairs = new HashMap<>();
    compared
        .get("comparisons")
        .forEach(
            pair -> {
              if (pair.get("a").asText().equals("mirror")) {
                pairs.put(pair.get("b").asText(), pair);
              }
            });

    same(study.get("base"), layouts.get("mirror"));
    int deeds = 0;
    for (JsonNode lever : study.get("levers")) {
      if (!lever.get("yardstick").asBoolean()) {
        String id = lever.get("id").asText();
        same(lever, layouts.get(id));
        assertThat(lever.get("difference").get("value").asDouble())
            .isCloseTo(-pairs.get(id).get("difference").asDouble(), within(1e-12));
        deeds++;
      }
    }
    assertThat(layouts).hasSize(deeds + 1);
    assertThat(deeds).isGreaterThan(5);
  }

  private static void same(JsonNode lever, JsonNode layout) {
    for (String figure : List.of("any_loss", "bytes_lost", "money_lost")) {
      assertThat(lever.get(figure)).isEqualTo(layout.get(figure));
    }
    for (String end : List.of("total", "low", "high")) {
      assertThat(lever.get("cost").get(end)).isEqualTo(layout.get("cost").get(end));
    }
  }

  private String json(String command, Path file, String... more) {
    List<String> args =
        new ArrayList<>(List.of(command, file.toString(), "--json", "-", "--histories", "3000"));
    args.addAll(List.of("--method", "plain", "--quiet"));
    args.addAll(List.of(more));
    out.reset();
    assertThat(program(args.toArray(String[]::new))).isZero();
    return text(out);
  }

  @Test
  void theJsonHasTheFieldsOfItsFormat() throws IOException {
    JsonNode study = new ObjectMapper().readTree(json("levers", DEMO, "--layout", "mirror"));

    assertThat(study.get("format").asText()).isEqualTo("lastcopy-levers/1");
    assertThat(study.get("scenario").asText()).isEqualTo("Tern Street Films");
    assertThat(study.get("layout").asText()).isEqualTo("mirror");
    assertThat(study.get("years").asDouble()).isEqualTo(5);
    assertThat(study.get("seed").asLong()).isEqualTo(1);
    assertThat(study.get("confidence").asDouble()).isEqualTo(0.95);
    JsonNode seen = null;
    for (JsonNode lever : study.get("levers")) {
      assertThat(lever.get("effect").asText()).isIn("less", "more", "not measurable");
      double low = lever.get("difference").get("low").asDouble();
      double high = lever.get("difference").get("high").asDouble();
      String effect = high < 0 ? "less" : low > 0 ? "more" : "not measurable";
      assertThat(lever.get("effect").asText()).isEqualTo(effect);
      assertThat(lever.has("bytes_difference")).isTrue();
      assertThat(lever.has("cost_difference")).isTrue();
      seen = lever.get("id").asText().equals("seen-at-once") ? lever : seen;
    }
    assertThat(seen.get("changes").toString())
        .isEqualTo(
            "[{\"key\":\"layouts.mirror.copies.main.noticed\",\"from\":\"1 day\",\"to\":\"0 h\"}]");
    assertThat(study.get("left_out").get(0).get("why").asText()).isNotEmpty();
  }

  @Test
  void anotherFileIsOnlyReplacedIfToldSo() throws IOException {
    Path other = Files.writeString(directory.resolve("mine.yaml"), "lastcopy: 1\n");

    assertThat(run("--layout", "mirror", "--histories", "50", "--write", other.toString()))
        .isEqualTo(2);
    assertThat(text(err)).contains("there is a file already").contains("--force replaces it");
    assertThat(other).hasContent("lastcopy: 1\n");
    err.reset();
    String[] forced = {
      "--layout", "mirror", "--histories", "50", "--write", other.toString(), "--force"
    };
    assertThat(run(forced)).isZero();
    assertThat(other).content().contains("levers found").contains("deleted-kept-90-days:");
    assertThat(text(err)).contains("wrote").contains("mine.yaml");
  }

  /**
   * Ctrl-C: what was simulated so far is told and marked; nothing yet is a message. Which of them
   * hangs on whether a thread has done its first chunk by then.
   */
  @Test
  void anInterruptionIsMarked() {
    interruption.ask();
    assertThat(run("--layout", "mirror")).isEqualTo(130);
    assertThat(text(out).isEmpty() ? text(err) : text(out).replaceAll("\\s+", " "))
        .containsAnyOf("interrupted", "in one box\"? - UNFINISHED");
  }

  /** However short the time, one chunk is simulated, and what there was no time for is said. */
  @Test
  void aShortTimeStillTellsSomething() {
    assertThat(run("--layout", "mirror", "--time", "10ms")).isZero();
    assertThat(text(out))
        .contains("What helps most")
        .contains("Which assumption matters")
        .contains("could not be told whether any value")
        .doesNotContain("UNFINISHED");
  }

  /** {@code --years} is in the written file too. */
  @Test
  void yearsAreThoseAskedFor() throws IOException {
    Path written = directory.resolve("two.yaml");
    String[] args = {
      "--layout", "mirror", "--histories", "50", "--years", "2", "--write", written.toString()
    };
    assertThat(run(args)).isZero();
    assertThat(text(out)).contains("within 2 years");
    assertThat(written).content().contains("\nyears: 2");
  }

  @ParameterizedTest
  @CsvSource({
    "'', which layout?",
    "--layout mirrors, Did you mean 'mirror'?",
    "--layout mirror --histories 0, histories",
    "--layout mirror --write ../scenarios/harbour-mirror-or-far-copy.yaml, the scenario itself"
  })
  void aWrongCommandLineSaysWhy(String options, String message) {
    assertThat(run(options.isEmpty() ? new String[0] : options.split(" ", -1))).isEqualTo(2);
    assertThat(text(err)).contains(message);
  }

  private int run(String... options) {
    List<String> args = new ArrayList<>(List.of("levers", DEMO.toString()));
    args.addAll(List.of(options));
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

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
