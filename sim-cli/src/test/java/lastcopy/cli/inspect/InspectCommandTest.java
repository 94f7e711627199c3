package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command without a process. */
class InspectCommandTest {

  private static final String SCENARIO =
      """
      lastcopy: 1
      studio: Quay Films
      years: 2
      footage:
        shoots: {every: 7 days, size: 72 GB}
      drives:
        d: {size: 4 TB, speed: 80 MB/s, fails: 2 %/year}
      layouts:
        pair:
          title: A drive and a far copy
          copies:
            main: {place: studio, drives: 1 x d}
            far:
              place: home
              drives: 1 x d
              feed: {from: main, every: 1 day, link: 0.5 Mbit/s}
      """;

  @TempDir private Path folder;
  private Path file;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void writeScenario() throws IOException {
    file = Files.writeString(folder.resolve("quay.yaml"), SCENARIO);
  }

  private int run(String... args) {
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            (studio, settings, progress) -> {
              throw new AssertionError("inspect never simulates");
            },
            () -> LocalDate.EPOCH,
            new Interruption());
    return new Program(host).run(args);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  /** 72 GB a week are 0.952 Mbit/s; the next hundredth keeps up. */
  @Test
  void tellsWhatIsSureInEightyColumns() {
    assertThat(run("inspect", file.toString())).isEqualTo(0);
    // Where a sentence wraps does not matter here.
    assertThat(printed().replaceAll("\\s+", " "))
        .contains("never catches up; it would at 0.96 Mbit/s")
        .contains("[feed-too-slow]")
        .contains("[run-at-shoot]")
        .contains("better: at: 1 h.")
        .contains("Defaults used because the file says nothing");
    assertThat(printed().lines()).allMatch(line -> line.length() <= 80);
  }

  /** Red if a default of one copy alone is told of every copy, or if one is told of none. */
  @Test
  void defaultsThatMatterComeFirstAndAllOfThemOnRequest() {
    assertThat(run("inspect", file.toString())).isEqualTo(0);
    String told = printed().substring(printed().indexOf("Defaults used")).replaceAll("\\s+", " ");
    assertThat(told)
        .contains("noticed: 0 h (a failure is seen at once): every copy")
        .contains("keeps_deleted: nothing (what is destroyed at its source goes here too): every")
        .contains("besides: ")
        .contains("restores_at: the feed's link (pair.far)");
    assertThat(told.indexOf("noticed: 0 h")).isLessThan(told.indexOf("keeps_deleted"));
    out.reset();
    assertThat(run("inspect", file.toString(), "--all")).isEqualTo(0);
    String all = printed().substring(printed().indexOf("Defaults used"));
    assertThat(all)
        .contains("\n  layouts.pair.main: noticed: 0 h (format default)\n")
        .contains("\n  layouts.pair.far: noticed: 0 h (format default)\n");
    // Each key that the long list names is in the short one.
    all.lines()
        .filter(line -> line.endsWith("(format default)"))
        .forEach(line -> assertThat(told).contains(line.replaceFirst(".*: ([a-z_]+: ).*", "$1")));
  }

  /** Red if a typical value passes for one of the owner's own. */
  @Test
  void typicalValuesAreNamedAsSuch() throws IOException {
    Files.writeString(
        file, SCENARIO.replace("fails: 2 %/year", "fails: {typical: solid-state, level: low}"));
    assertThat(run("inspect", file.toString())).isEqualTo(0);
    assertThat(printed().replaceAll("\\s+", " "))
        .contains("fails: solid-state, low (a typical value, so an assumption; lastcopy rates has")
        .contains("its source): d ");
  }

  @Test
  void anotherHorizonFillsTheDrives() {
    assertThat(run("inspect", file.toString(), "--years", "5")).isEqualTo(0);
    assertThat(printed().replaceAll("\\s+", " ")).contains("full after 1.07 years");
  }

  @Test
  void jsonIsAllOfStandardOutput() throws IOException {
    assertThat(run("inspect", file.toString(), "--json", "-")).isEqualTo(0);
    try (JsonParser parser = new JsonFactory().createParser(printed())) {
      while (parser.nextToken() != null) {
        parser.getText();
      }
    }
    assertThat(printed())
        .contains("\"format\" : \"lastcopy-inspect/1\"")
        .contains("\"usable_bytes\" : 4000000000000")
        .contains("\"never_catches_up\" : true");
  }

  @Test
  void jsonFileIsWrittenBesideTheText() throws IOException {
    Path json = folder.resolve("out.json");
    assertThat(run("inspect", file.toString(), "--json", json.toString())).isEqualTo(0);
    assertThat(Files.readString(json)).startsWith("{").endsWith("}\n");
    assertThat(printed()).startsWith("Quay Films");
  }

  @Test
  void wrongHorizonIsAWrongCommandLine() {
    assertThat(run("inspect", file.toString(), "--years", "0")).isEqualTo(2);
    assertThat(printed()).isEmpty();
  }

  @Test
  void theSchemaNeedsNoScenario() {
    assertThat(run("inspect", "--schema")).isEqualTo(0);
    assertThat(printed()).startsWith("{").contains("draft/2020-12").endsWith("}\n");
    assertThat(run("inspect")).isEqualTo(2);
  }
}
