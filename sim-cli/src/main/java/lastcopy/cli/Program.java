package lastcopy.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lastcopy.cli.advise.AdviseCommand;
import lastcopy.cli.ask.AskCommand;
import lastcopy.cli.ask.Inputs;
import lastcopy.cli.compare.CompareCommand;
import lastcopy.cli.fit.FitCommand;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.StandardStream;
import lastcopy.cli.inspect.InspectCommand;
import lastcopy.cli.levers.LeversCommand;
import lastcopy.cli.option.Converters;
import lastcopy.cli.prove.ProveCommand;
import lastcopy.cli.rates.RatesCommand;
import lastcopy.cli.story.StoryCommand;
import lastcopy.prove.Checks;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line with its streams given from outside; returns a status and never exits. */
public final class Program {

  private final Host host;

  public Program(Host host) {
    this.host = host;
  }

  /** Runs one command line and returns its {@link ExitStatus}. */
  public int run(String... args) {
    Failures failures = new Failures(host.err(), traced(args));
    CommandLine line =
        commands()
            .setOut(writer(host.out()))
            .setErr(writer(host.err()))
            .setUsageHelpWidth(80)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .registerConverter(Path.class, new Converters.FileName())
            .registerConverter(Long.class, new Converters.Whole())
            .registerConverter(long.class, new Converters.Whole())
            .setParameterExceptionHandler(failures::usage)
            .setExecutionExceptionHandler(failures::failed);
    int status;
    try {
      status = line.execute(args);
    } catch (StackOverflowError | OutOfMemoryError e) {
      status = failures.report(e);
    }
    return StandardStream.failure(host.out()).isEmpty() ? status : unwritten(failures, status);
  }

  /** Whoever closed the pipe knows that it did; anything else must not look like a success. */
  private int unwritten(Failures failures, int status) {
    failures.output(StandardStream.failure(host.out()).orElseThrow());
    return status == ExitStatus.DONE ? ExitStatus.FAILED : status;
  }

  /** The commands with their options: what completion and the manual are made from, too. */
  CommandLine commands() {
    return new CommandLine(new Root())
        .addSubcommand(new CompareCommand(host))
        .addSubcommand(new InspectCommand(host, InspectCommand::fromFile))
        .addSubcommand(new StoryCommand(host))
        .addSubcommand(new AskCommand(host, Inputs::open, this::run))
        .addSubcommand(new LeversCommand(host))
        .addSubcommand(new AdviseCommand(host))
        .addSubcommand(new FitCommand(host))
        .addSubcommand(new RatesCommand(host))
        .addSubcommand(new ProveCommand(host, Checks::all));
  }

  private static boolean traced(String[] args) {
    return List.of(args).contains("--trace");
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /** What is said without a command. */
  @Command(
      name = "lastcopy",
      mixinStandardHelpOptions = true,
      version = "lastcopy 0.1.0",
      synopsisSubcommandLabel = "COMMAND",
      description = "How likely a storage layout is to lose footage, how much, and why.",
      footer = {"", "Type 'lastcopy COMMAND --help' for the options of a command."})
  static final class Root implements Runnable {

    @Spec private CommandSpec spec;

    @Override
    public void run() {
      String names = String.join(", ", spec.subcommands().keySet());
      throw new ParameterException(
          spec.commandLine(), "which command? There is: " + names + " (see --help)");
    }
  }
}
