package lastcopy.cli.option;

import picocli.CommandLine.Option;

/** Whether a failure shows where it came from. */
public final class TraceOption {

  @Option(names = "--trace", description = "Show where a failure came from.")
  // Failures look for it among the arguments, since those may be what is wrong.
  @SuppressWarnings("UnusedVariable")
  private boolean trace;
}
