package lastcopy.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;
import java.util.Set;
import lastcopy.charts.ChartException;
import lastcopy.cli.scenario.Spelling;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into a message and a status; a stack trace only if asked for. */
final class Failures {

  private final PrintStream err;
  private final boolean trace;

  Failures(PrintStream err, boolean trace) {
    this.err = err;
    this.trace = trace;
  }

  /** The command line is wrong. */
  int usage(ParameterException e, String[] args) {
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
  int failed(Exception e, CommandLine line, ParseResult parsed) {
    return report(e);
  }

  /** Says what failed and returns the status. */
  int report(Throwable e) {
    say(message(e));
    traceOf(e);
    return e instanceof WrongScenarioException ? ExitStatus.SCENARIO : ExitStatus.FAILED;
  }

  private void say(String message) {
    err.println("lastcopy: " + message);
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
    if (e instanceof OutOfMemoryError) {
      return "out of memory; fewer threads or fewer layouts need less";
    }
    boolean told =
        e instanceof WrongScenarioException
            || e instanceof ChartException
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
    if (e instanceof AccessDeniedException) {
      return "no permission for " + e.getMessage();
    }
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return "not a directory: " + e.getMessage();
    }
    return e.getMessage() == null ? e.toString() : e.getMessage();
  }
}
