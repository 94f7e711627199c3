package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What inspect prints for somebody who starts: a scenario that works as it is. */
class TemplateTest {

  @TempDir Path directory;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void theTemplateCanBeInspectedAndCompared() throws IOException {
    Path file = template();
    assertThat(run("inspect", file.toString(), "--all"))
        .contains("My Studio", "layouts.mirror.main");
    assertThat(run("compare", file.toString(), "--histories", "500"))
        .contains("One external drive", "Two drives mirrored in one box");
  }

  /** A rate or a delay that nobody knows must not look like a fact. */
  @Test
  void whatIsAGuessIsMarked() throws IOException {
    Pattern guess = Pattern.compile("(?m)^ *[^# ]*.*(rate|noticed|wait|read_errors|strain): .*$");
    Matcher line = guess.matcher(Files.readString(template()).replaceAll("(?m)^ *#.*$", ""));
    int lines = 0;
    for (; line.find(); lines++) {
      assertThat(line.group()).contains("# (assumption)");
    }
    assertThat(lines).isGreaterThan(20);
  }

  @Test
  void theKeysArePrinted() {
    assertThat(run("inspect", "--keys")).startsWith("# Every key").contains("`keeps_deleted`");
  }

  private Path template() throws IOException {
    return Files.writeString(directory.resolve("mine.yaml"), run("inspect", "--template"));
  }

  private String run(String... arguments) {
    out.reset();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.EPOCH,
            new Interruption());
    assertThat(new Program(host).run(arguments)).as(err.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }
}
