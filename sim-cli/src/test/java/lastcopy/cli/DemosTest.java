package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each demo has its stored output beside it, to the byte what the README's command prints; one
 * without fails. It proves "unchanged", not "right".
 *
 * <p>The README's command has the usual cap on time, which it does not come near; here there is
 * none, so that a slow machine gives the same: when a layout stops hangs on counts alone.
 *
 * <p>{@link #RENEW} writes them all anew after a change that is meant; read the diff.
 */
class DemosTest {

  private static final String RENEW =
      "mvn -o -pl sim-cli -am test -Dtest=DemosTest -Dsurefire.failIfNoSpecifiedTests=false"
          + " -Ddemos=renew";

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "scenarios"))) {
      return files.filter(file -> file.toString().matches(".*\\.(yaml|csv)")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void aDemoGivesItsStoredOutput(Path demo) throws IOException {
    String[] args =
        demo.toString().endsWith(".csv")
            ? new String[] {"fit", demo.toString()}
            : new String[] {"compare", demo.toString(), "--precision", "5%", "--time", "none"};
    gives(demo.toString().replaceFirst("(yaml|csv)$", "txt"), args);
  }

  /** What is left open is weighed, under the limits that the demo names. */
  @Test
  void theDemoOfAdviceGivesItsStoredOutput() throws IOException {
    String demo = Path.of("..", "scenarios", "what-to-buy-first.yaml").toString();
    String[] limits = {"--target", "5%", "--budget", "1000"};
    String[] args = {"advise", demo, limits[0], limits[1], limits[2], limits[3], "--time", "none"};
    assertThat(Files.readString(Path.of(demo))).contains(String.join(" ", limits));
    gives(demo.replaceFirst("yaml$", "advice.txt"), args);
  }

  private static void gives(String name, String... args) throws IOException {
    Path stored = Path.of(name);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            System.err,
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.of(2026, 1, 1),
            new Interruption());
    int status = new Program(host).run(args);
    assertThat(status).isZero();
    String printed = out.toString(StandardCharsets.UTF_8);
    if (System.getProperty("demos", "").equals("renew")) {
      Files.writeString(stored, printed);
    }
    assertThat(stored).as("its output; to write all: " + RENEW).exists();
    assertThat(printed).as("if the change is meant: " + RENEW).isEqualTo(Files.readString(stored));
  }
}
