package lastcopy.cli.host;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;
import java.util.Set;
import lastcopy.charts.ChartException;
import lastcopy.cli.scenario.yaml.Printable;
import lastcopy.cli.scenario.yaml.Spelling;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.history.report.GivenUpException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into a message and a status; a stack trace only if asked for. */
public final class Failures {

  /** How the system calls a pipe that nobody reads any more. */
  private static final String CLOSED_PIPE = "Broken pipe";

  public static final String NO_MEMORY =
      "out of memory; a larger heap such as java -Xmx512m would do, or fewer threads, layouts or"
          + " shoots";

  private final PrintStream err;
  private final boolean trace;

  public Failures(PrintStream err, boolean trace) {
    this.err = err;
    this.trace = trace;
  }

  /** The command line is wrong. */
  public int usage(ParameterException e, String[] args) {
    say(unknownCommand(e).orElse(e.getMessage()));
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    err.println("Type '" + command + " --help' for the options.");
    traceOf(e);
    return ExitStatus.USAGE;
  }

  /** A first word that is no command, with the one that was probably meant. */
  private static Optional<String> unknownCommand(ParameterException e) {
    if (!(e instanceof UnmatchedArgumentException wrong)
        || e.getCommandLine().getParent() != null
        || wrong.getUnmatched().isEmpty()
        || wrong.getUnmatched().get(0).startsWith("-")) {
      return Optional.empty();
    }
    Set<String> names = e.getCommandLine().getSubcommands().keySet();
    String word = wrong.getUnmatched().get(0);
    String near = Spelling.nearest(word, names);
    return Optional.of(
        "no command is named '"
            + word
            + "'; there is: "
            + String.join(", ", names)
            + "."
            + (near.isEmpty() ? "" : " Did you mean '" + near + "'?"));
  }

  /** A command failed. */
  public int failed(Exception e, CommandLine line, ParseResult parsed) {
    return report(e);
  }

  /** Says what failed and returns the status. */
  public int report(Throwable e) {
    if (e instanceof WrongScenarioException wrong) {
      say(wrong.lines().get(0));
      wrong.lines().stream().skip(1).map(Printable::of).forEach(err::println);
      traceOf(e);
      return ExitStatus.SCENARIO;
    }
    say(message(e));
    traceOf(e);
    if (e instanceof GivenUpException
        || (e instanceof NothingSimulatedException nothing && nothing.cancelled())) {
      return ExitStatus.INTERRUPTED;
    }
    return e instanceof RefusedException ? ExitStatus.USAGE : ExitStatus.FAILED;
  }

  /** Standard output could not be written; a pipe that was closed is told by nobody. */
  public void output(IOException e) {
    if (!String.valueOf(e.getMessage()).contains(CLOSED_PIPE)) {
      say("cannot write to standard output: " + e.getMessage());
    }
  }

  /** What is said of a name that this system cannot give a file. */
  public static String notAName(String name) {
    return "this system cannot name a file '"
        + name
        + "'; in a locale without other letters than English ones, set LC_ALL=C.UTF-8";
  }

  private void say(String message) {
    err.println("lastcopy: " + Printable.of(message));
  }

  private void traceOf(Throwable e) {
    if (trace) {
      e.printStackTrace(err);
    }
  }

  private static String message(Throwable e) {
    if (e instanceof IOException io) {
      return file(io);
    }
    if (e instanceof GivenUpException) {
      return "interrupted before the history was simulated: there is nothing to show";
    }
    if (e instanceof OutOfMemoryError || e.getCause() instanceof OutOfMemoryError) {
      return NO_MEMORY;
    }
    boolean told =
        e instanceof RefusedException
            || e instanceof ChartException
            || e instanceof NothingSimulatedException
            || e instanceof UnsupportedOperationException;
    return told && e.getMessage() != null ? e.getMessage() : unexpected(e);
  }

  private static String unexpected(Throwable e) {
    return "failed unexpectedly: " + e + " (--trace shows where)";
  }

  /** Java's messages of these are a bare path. */
  private static String file(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "no such file or directory: " + e.getMessage();
    }
    if (e instanceof AccessDeniedException denied) {
      return denied.getReason() == null
          ? "no permission for " + denied.getFile()
          : denied.getFile() + " " + denied.getReason();
    }
    if (e instanceof FileSystemLoopException) {
      return "a circle of links: " + e.getMessage();
    }
    if (e instanceof FileSystemException other && other.getReason() != null) {
      return other.getFile() + ": " + other.getReason();
    }
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return "not a directory: " + e.getMessage();
    }
    return e.getMessage() == null ? e.toString() : e.getMessage();
  }
}
