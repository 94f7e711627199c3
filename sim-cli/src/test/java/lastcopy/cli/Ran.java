package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;

/**
 * One run of the program without a process.
 *
 * @param status its exit status
 * @param out what it printed
 * @param err what it said
 */
public record Ran(int status, String out, String err) {

  /** The date of all that is made. */
  public static final LocalDate TODAY = LocalDate.of(2026, 1, 1);

  /** In a pipe. */
  public static Ran of(String... line) {
    return on(false, Map.of(), line);
  }

  /** In a pipe, by somebody who has asked to stop before it begins. */
  public static Ran interrupted(String... line) {
    Interruption interruption = new Interruption();
    interruption.ask();
    return of(false, Map.of(), interruption, line);
  }

  /** On a terminal or not, whose environment says so much. */
  public static Ran on(boolean terminal, Map<String, String> environment, String... line) {
    return of(terminal, environment, new Interruption(), line);
  }

  private static Ran of(
      boolean terminal,
      Map<String, String> environment,
      Interruption interruption,
      String... line) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            terminal,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> TODAY,
            interruption,
            environment);
    int status = new Program(host).run(line);
    return new Ran(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** What it printed, if it was done. */
  public String done() {
    assertThat(status).as(err).isZero();
    return out;
  }
}
