package lastcopy.cli.prove;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.Program;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.prove.Check;
import lastcopy.prove.Checks;
import lastcopy.prove.Figure;
import lastcopy.prove.Reference;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command without a process. */
class ProveCommandTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final Interruption interruption = new Interruption();

  /**
   * The whole list against the real engine; a sound one fails for 1 of 10,000 seeds, and the seed
   * was not chosen. Red if a published value is off in its last digit, or the engine anywhere.
   */
  @Test
  void everyLineHolds(@TempDir Path folder) throws IOException {
    Path json = folder.resolve("proof.json");
    assertThat(new Program(host()).run("prove", "--json", json.toString())).isZero();
    assertThat(printed()).contains("0.03327115").contains("lines hold").doesNotContain("FAIL");
    assertThat(printed().lines()).allMatch(line -> line.length() <= 80);
    JsonNode proof = new ObjectMapper().readTree(json.toFile());
    assertThat(proof.path("format").asText()).isEqualTo("lastcopy-prove/1");
    assertThat(proof.path("holds").asBoolean()).isTrue();
    assertThat(proof.path("checks")).hasSize(Checks.all().size());
  }

  /** What is computed is quick; a line that fails warns. */
  @Test
  void onNarrowAndWidePages() {
    Check right = Checks.all().get(0);
    List<Check> checks =
        new ArrayList<>(
            Checks.all().stream().filter(c -> c.figure() instanceof Figure.Computed).toList());
    checks.add(new Check("t", "s", "wrong", () -> Reference.published("226"), right.figure()));
    for (int width : List.of(60, 80, 132, 200)) {
      out.reset();
      assertThat(run(checks, "--width", "" + width, "--color", "always"))
          .isEqualTo(ExitStatus.FAILED);
      assertThat(printed()).contains("\u001b[1mMean time to data loss as the literature");
      assertThat(printed().lines().filter(line -> line.contains("\u001b[33m")))
          .allMatch(line -> line.contains("FAILS") || line.endsWith("wrong\u001b[0m"))
          .isNotEmpty();
      assertThat(printed().replaceAll("\u001b\\[[0-9]*m", "").lines())
          .allMatch(line -> line.length() <= width);
    }
    out.reset();
    assertThat(run(checks, "--ascii")).isEqualTo(ExitStatus.FAILED);
    assertThat(printed().chars()).allMatch(c -> c < 128);
  }

  /** An unrepaired pair of 150 h lasts 225 h, not 226. */
  @Test
  void aWrongPublishedValueIsOne() {
    Check right = Checks.all().get(0);
    Check wrong =
        new Check("t", "s", "sabotaged", () -> Reference.published("226"), right.figure());
    assertThat(right.figure()).isInstanceOf(Figure.Computed.class);
    assertThat(run(List.of(right))).isZero();
    assertThat(run(List.of(right, wrong))).isEqualTo(ExitStatus.FAILED);
    assertThat(printed()).contains("1 of 2 lines FAIL");
  }

  /** Each line is there before the next check begins. Red if the table waits for its end. */
  @Test
  void linesAreShownAsTheyAreDone() {
    Check right = Checks.all().get(0);
    List<String> before = new ArrayList<>();
    Check looks =
        new Check(
            "t",
            "s",
            "looks back",
            () -> {
              before.add(printed());
              return right.reference().get();
            },
            right.figure());
    assertThat(run(List.of(right, looks))).isZero();
    assertThat(before.get(0)).contains(right.source().substring(0, 20)).contains("holds");
    assertThat(before.get(0)).doesNotContain("lines hold");
  }

  /** Red if the proof goes on, or ends as if every line had been looked at. */
  @Test
  void anInterruptionEndsItWithWhatThereIs() {
    Check right = Checks.all().get(0);
    Check interrupts =
        new Check(
            "t",
            "s",
            "interrupts",
            () -> {
              interruption.ask();
              return right.reference().get();
            },
            right.figure());
    assertThat(run(List.of(right, interrupts, right))).isEqualTo(ExitStatus.INTERRUPTED);
    assertThat(printed()).contains("Unfinished: it was interrupted after 1 of 3 lines.");
    assertThat(printed()).doesNotContain("interrupts");
  }

  private int run(List<Check> checks, String... options) {
    return new CommandLine(new ProveCommand(host(), () -> checks)).execute(options);
  }

  private Host host() {
    return new Host(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        System.err,
        false,
        ScenarioLoading::fromFile,
        WorldSimulation::run,
        () -> LocalDate.EPOCH,
        interruption);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }
}
