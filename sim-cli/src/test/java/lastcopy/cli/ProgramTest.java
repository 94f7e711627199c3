package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import lastcopy.cli.compare.SampleComparison;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.TerminalProgress;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgramTest {

  @TempDir Path directory;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final AtomicReference<Settings> settings = new AtomicReference<>();
  private final AtomicReference<Studio> studio = new AtomicReference<>();
  private Host.Engine engine;
  private ScenarioLoading.Reading loader;
  private String file;

  @BeforeEach
  void prepare() throws Exception {
    file = Files.writeString(directory.resolve("demo.yaml"), "any").toString();
    Path demo = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");
    Studio read = ScenarioReader.read(demo).studio();
    loader = path -> new ScenarioLoading.Loaded(read, List.of("The upload never catches up."));
    engine =
        (given, how, progress) -> {
          studio.set(given.central());
          settings.set(how);
          return SampleComparison.result(!progress.cancelled());
        };
  }

  @Test
  void doneIsZeroWithTheReportOnStandardOutput() {
    assertThat(run("compare", file)).isZero();
    assertThat(text(out)).contains("Harbour Lane Films").contains("The upload never catches up.");
    assertThat(text(err)).isEmpty();
    assertThat(settings.get().seed()).isEqualTo(1);
    assertThat(settings.get().confidence()).isEqualTo(0.95);
    assertThat(settings.get().precision()).isEqualTo(0.02);
    assertThat(settings.get().time()).contains(Duration.ofSeconds(60));
    assertThat(settings.get().histories()).isEmpty();
  }

  @Test
  void optionsReachTheEngine() {
    int status =
        run(
            "compare",
            file,
            "--years",
            "2.5",
            "--seed",
            "-7",
            "--confidence",
            "99%",
            "--precision",
            "5 %",
            "--time",
            "none",
            "--histories",
            "20,000",
            "--threads",
            "3",
            "--method",
            "rare");
    assertThat(status).isZero();
    assertThat(studio.get().years()).isEqualTo(2.5);
    assertThat(settings.get())
        .isEqualTo(
            new Settings(
                -7,
                0.99,
                0.05,
                java.util.OptionalLong.of(20_000),
                java.util.Optional.empty(),
                3,
                Method.RARE));
  }

  @Test
  void asManyWorldsAsAreAskedFor() {
    assertThat(run("compare", file, "--worlds", "100000")).isZero();
    assertThat(settings.get().worlds()).hasValue(100_000);
    assertThat(run("compare", file)).isZero();
    assertThat(settings.get().worlds()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "--precision, 2, needs a percent sign",
    "--precision, 0%, must be above 0%",
    "--precision, close, not a percentage",
    "--confidence, 100%, must be below 100%",
    "--time, soon, not a time such as",
    "--years, 0, not a number of years above 0",
    "--histories, 0, not a whole number of at least 1",
    "--method, guess, 'is not auto, plain or rare'",
    "--worlds, 100001, must be at most 100000",
    "--nonsense, 1, Unknown option",
  })
  void aWrongCommandLineIsTwoAndSaysWhy(String option, String value, String message) {
    assertThat(run("compare", file, option, value)).isEqualTo(2);
    assertThat(text(err)).contains(message).doesNotContain("\tat ");
    assertThat(text(out)).isEmpty();
  }

  @Test
  void noCommandAndNoFileAreTwo() {
    assertThat(run()).isEqualTo(2);
    assertThat(text(err)).contains("compare");
    assertThat(run("compare")).isEqualTo(2);
    assertThat(run("compare", file + ".not")).isEqualTo(2);
    assertThat(text(err)).contains("no such scenario file");
  }

  /** Each file that was written is named, and nothing else is; --quiet names none. */
  @Test
  void filesThatWereWrittenAreNamed() throws IOException {
    Path json = directory.resolve("r.json");
    Path csv = directory.resolve("tables");
    String[] asked = {"compare", file, "--json", json.toString(), "--csv", csv.toString()};
    assertThat(run(asked)).isZero();
    assertThat(text(err)).startsWith("lastcopy: wrote " + json + ", ");
    List<String> named = List.of(text(err).strip().substring(16).split(", "));
    try (var files = Files.list(csv)) {
      assertThat(files.map(Path::toString))
          .containsExactlyInAnyOrderElementsOf(named.subList(1, named.size()));
    }
    err.reset();
    assertThat(run("compare", file, "--json", json.toString(), "--quiet")).isZero();
    assertThat(text(err)).isEmpty();
  }

  /** A misspelt command is answered with the one that was meant. */
  @Test
  void aMisspeltCommandIsAnswered() {
    assertThat(run("compar", file)).isEqualTo(2);
    assertThat(text(err)).contains("no command is named 'compar'").contains("mean 'compare'?");
    err.reset();
    assertThat(run("xyzzy")).isEqualTo(2);
    assertThat(text(err)).contains("there is: compare, ").doesNotContain("Did you mean");
  }

  @Test
  void aWrongScenarioIsThreeAndWritesNothing() {
    loader =
        path -> {
          throw new WrongScenarioException(List.of("demo.yaml:1:1: found any"));
        };
    Path json = directory.resolve("new").resolve("r.json");
    assertThat(run("compare", file, "--json", json.toString())).isEqualTo(3);
    assertThat(text(err)).contains("demo.yaml:1:1: found any");
    assertThat(json.getParent()).doesNotExist();
  }

  @Test
  void aFailureIsOneWithATraceOnlyOnRequest() {
    engine =
        (given, how, progress) -> {
          throw new IllegalStateException("history 7 failed");
        };
    assertThat(run("compare", file)).isEqualTo(1);
    assertThat(text(err)).contains("history 7 failed").doesNotContain("\tat ");
    assertThat(run("compare", file, "--trace")).isEqualTo(1);
    assertThat(text(err)).contains("\tat ");
  }

  @Test
  void anInterruptedRunIsPrintedAsUnfinished() {
    Interruption interruption = new Interruption();
    interruption.ask();
    assertThat(run(interruption, "compare", file)).isEqualTo(130);
    assertThat(text(out)).contains("UNFINISHED");
  }

  @Test
  void jsonOnStandardOutputStandsAlone() {
    assertThat(run("compare", file, "--json", "-")).isZero();
    assertThat(text(out)).startsWith("{").endsWith("}\n");
    assertThat(text(err)).contains("The upload never catches up.");
    err.reset();
    assertThat(run("compare", file, "--json", "-", "--quiet")).isZero();
    assertThat(text(err)).isEmpty();
  }

  @Test
  void filesAreWrittenWhereAsked() throws IOException {
    String charts = directory.resolve("charts").toString();
    String csv = directory.resolve("csv").toString();
    String json = directory.resolve("r.json").toString();
    int status =
        run(
            "compare",
            file,
            "--json",
            json,
            "--csv",
            csv,
            "--charts",
            charts,
            "--chart-format",
            "svg");
    assertThat(status).isZero();
    assertThat(Path.of(json)).content().contains("lastcopy-result/1");
    assertThat(Path.of(csv, "summary.csv")).isNotEmptyFile();
    try (var files = Files.list(Path.of(charts))) {
      assertThat(files.map(path -> path.getFileName().toString()))
          .containsExactlyInAnyOrder("loss-curve.svg", "exceedance.svg");
    }
  }

  @Test
  void progressShowsAfterASecondOnATerminalAndClearsItself() {
    long[] now = {0};
    TerminalProgress progress =
        new TerminalProgress(stream(err), true, new Interruption(), this::title, () -> now[0]);
    progress.merged("mirror", 100, 0.5, 0.1);
    assertThat(text(err)).isEmpty();
    now[0] = 1_100_000_000L;
    progress.merged("mirror", 12_000, 0.051, 0.42);
    assertThat(text(err)).contains("42 %  Two drives: 12,000 histories, known to 5.1 %, 2 s left");
    progress.end();
    assertThat(text(err)).endsWith(" ".repeat(79) + "\r");
  }

  private String title(String layout) {
    return layout.equals("mirror")
        ? "Two drives"
        : "A drive, a copy in the other house and a service";
  }

  /** However long a title is, how far the run is stays on the line. */
  @Test
  void aLongTitleLeavesRoomForTheRest() {
    long[] now = {0};
    TerminalProgress progress =
        new TerminalProgress(stream(err), true, new Interruption(), this::title, () -> now[0]);
    now[0] = 1_100_000_000L;
    progress.merged("three", 12_000_000, 0.051, 0.42);
    assertThat(text(err))
        .contains("42 %  A drive, a copy in th...: 12,000,000 histories, known to 5.1 %, 2 s left");
  }

  private int run(String... args) {
    return run(new Interruption(), args);
  }

  private int run(Interruption interruption, String... args) {
    Host host =
        new Host(
            stream(out),
            stream(err),
            false,
            path -> loader.load(path),
            (given, how, progress) -> engine.run(given, how, progress),
            () -> LocalDate.of(2026, 3, 14),
            interruption);
    return new Program(host).run(args);
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
