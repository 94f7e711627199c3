package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.compare.CsvResult;
import lastcopy.cli.compare.SampleComparison;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.StandardStream;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code --json} and the folders may replace, and what becomes of a failed write. */
class OutputNamesTest {

  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir Path directory;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private OutputStream out = new ByteArrayOutputStream();
  private String file;

  @BeforeEach
  void copyTheDemo() throws IOException {
    file = Files.copy(DEMO, directory.resolve("demo.yaml")).toString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare", "inspect"})
  void theScenarioItselfIsNeverReplaced(String command) throws IOException {
    Path link = Files.createSymbolicLink(directory.resolve("link.json"), Path.of("demo.yaml"));
    for (String name : List.of(file, directory + "/./demo.yaml", link.toString())) {
      assertThat(run(command, file, "--json", name, "--force")).isEqualTo(2);
    }
    assertThat(text()).contains("the scenario itself");
    assertThat(Path.of(file)).hasSameTextualContentAs(DEMO);
  }

  @Test
  void anotherFileIsReplacedOnlyByForce() throws IOException {
    Path other = Files.writeString(directory.resolve("book.txt"), "my novel");
    assertThat(run("compare", file, "--json", other.toString())).isEqualTo(2);
    assertThat(text()).contains("did not write").contains("--force");
    assertThat(other).hasContent("my novel");
    assertThat(run("compare", file, "--json", other.toString(), "--force")).isZero();
    assertThat(other).content().contains("lastcopy-result/1");
    assertThat(run("inspect", file, "--json", other.toString())).isZero();
    assertThat(other).content().contains("lastcopy-inspect/1");
  }

  @Test
  void linksAreFollowed() throws IOException {
    Path real = Files.createFile(directory.resolve("real.json"));
    Path link = Files.createSymbolicLink(directory.resolve("a.json"), Path.of("b.json"));
    Files.createSymbolicLink(directory.resolve("b.json"), Path.of("real.json"));
    Path toNothing = Files.createSymbolicLink(directory.resolve("c.json"), Path.of("new.json"));
    Path circle = Files.createSymbolicLink(directory.resolve("d.json"), Path.of("d.json"));
    assertThat(run("compare", file, "--json", link.toString())).isZero();
    assertThat(run("compare", file, "--json", toNothing.toString())).isZero();
    assertThat(link).isSymbolicLink();
    assertThat(real).content().contains("lastcopy-result/1");
    assertThat(directory.resolve("new.json")).content().contains("lastcopy-result/1");
    assertThat(run("compare", file, "--json", circle.toString())).isEqualTo(1);
    assertThat(text()).contains("a circle of links");
  }

  @Test
  void aReadOnlyFileStays() throws IOException {
    Path kept = Files.writeString(directory.resolve("kept.json"), "{\"format\": \"lastcopy-x\"}");
    assumeTrue(Files.getFileStore(kept).supportsFileAttributeView("posix"), "needs permissions");
    Files.setPosixFilePermissions(kept, PosixFilePermissions.fromString("r--r--r--"));
    assertThat(run("compare", file, "--json", kept.toString())).isEqualTo(1);
    assertThat(text()).contains("is read-only");
    assertThat(kept).hasContent("{\"format\": \"lastcopy-x\"}");
  }

  @Test
  void aDeviceIsWrittenToAndStays() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device), "needs a device");
    assertThat(run("compare", file, "--json", device.toString())).isZero();
    assertThat(Files.isRegularFile(device)).isFalse();
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "needs a full device");
    assertThat(run("compare", file, "--json", full.toString())).isEqualTo(1);
    assertThat(text()).contains("No space left");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", ".", "/dev"})
  void aDirectoryIsNoFile(String name) {
    assertThat(run("compare", file, "--json", name)).isEqualTo(1);
    assertThat(text()).contains("is a directory");
  }

  @Test
  void aBlankNameIsNoName() {
    assertThat(run("compare", file, "--json", "")).isEqualTo(2);
  }

  @Test
  void aScenarioNamedAsAResultIsSafeInItsFolder() throws IOException {
    Path named = Files.copy(DEMO, directory.resolve("summary.csv"));
    assertThat(run("compare", named.toString(), "--csv", directory.toString())).isEqualTo(2);
    assertThat(named).hasSameTextualContentAs(DEMO);
    assertThat(run("compare", file, "--csv", directory.toString(), "--force")).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare", "inspect", "story", "--help"})
  void whatCannotBePrintedIsAFailure(String command) {
    out = failing("No space left on device");
    List<String> line =
        command.equals("--help")
            ? List.of(command)
            : command.equals("story")
                ? List.of(command, file, "--layout", "mirror", "--history", "1")
                : List.of(command, file);
    assertThat(run(line.toArray(String[]::new))).isEqualTo(1);
    assertThat(text())
        .isEqualTo("lastcopy: cannot write to standard output: No space left on device\n");
  }

  @Test
  void aClosedPipeIsQuiet() {
    out = failing("Broken pipe");
    assertThat(run("compare", file, "--json", "-", "--quiet")).isEqualTo(1);
    assertThat(text()).isEmpty();
  }

  @Test
  void whatASpreadsheetWouldRunIsMadeText() {
    assertThat(CsvResult.text("=1+1")).isEqualTo("'=1+1");
    assertThat(CsvResult.text("+a")).isEqualTo("'+a");
    assertThat(CsvResult.text("-a")).isEqualTo("'-a");
    assertThat(CsvResult.text("@a")).isEqualTo("'@a");
    assertThat(CsvResult.text("mirror")).isEqualTo("mirror");
    assertThat(CsvResult.text("")).isEmpty();
  }

  @Test
  void atMostFiftyProblemsAreShown() throws IOException {
    Path wrong = directory.resolve("wrong.yaml");
    Files.writeString(wrong, "lastcopy: 1\n" + "a: 1\nb: 1\n".repeat(1_000));
    assertThatThrownBy(() -> ScenarioLoading.fromFile(wrong))
        .isInstanceOf(WrongScenarioException.class)
        .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(51))
        .hasMessageEndingWith("more like these");
  }

  @Test
  void whatCannotBeSeenIsWrittenOut() {
    assertThat(run("compare", "a\u001b[2Jb\u202ec")).isEqualTo(2);
    assertThat(text()).contains("a\\x1B[2Jb\\u202Ec").doesNotContain("\u001b");
  }

  private int run(String... args) {
    Host host =
        new Host(
            new StandardStream(out),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            path -> new ScenarioLoading.Loaded(demo().orElseThrow(), List.of()),
            (given, how, progress) -> SampleComparison.result(true),
            () -> LocalDate.of(2026, 3, 14),
            new Interruption());
    return new Program(host).run(args);
  }

  private static Optional<Studio> demo() {
    try {
      return Optional.of(ScenarioReader.read(DEMO).studio());
    } catch (Exception e) {
      return Optional.empty();
    }
  }

  private static OutputStream failing(String why) {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(why);
      }
    };
  }

  private String text() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
