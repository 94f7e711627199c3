package lastcopy.cli.ask;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import picocli.CommandLine;

/** The command with answers from a text. */
final class Asked {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final List<String> ran = new ArrayList<>();
  private boolean person;

  /** As if somebody sat at a terminal that cannot move a cursor. */
  Asked person() {
    person = true;
    return this;
  }

  int run(String answers, String... options) {
    out.reset();
    err.reset();
    ByteArrayInputStream in = new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8));
    PrintStream errors = new PrintStream(err, true, StandardCharsets.UTF_8);
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            errors,
            person,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.EPOCH,
            new Interruption());
    AskCommand command =
        new AskCommand(
            host,
            with -> new PlainInput(in, with.out(), person),
            line -> {
              ran.addAll(List.of(line));
              return 0;
            });
    return new CommandLine(command)
        .setExecutionExceptionHandler(new Failures(errors, false)::failed)
        .execute(options);
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  /** The command line that was run afterwards; empty if none was. */
  List<String> ran() {
    return List.copyOf(ran);
  }
}
