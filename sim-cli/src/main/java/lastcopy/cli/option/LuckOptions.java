package lastcopy.cli.option;

import picocli.CommandLine.Option;

/** The options of every command that simulates anything. */
public final class LuckOptions {

  private static final int MOST_THREADS = 1024;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Where random numbers begin; the same gives the same result (default: 1).")
  private long seed;

  @Option(
      names = "--threads",
      paramLabel = "N",
      converter = Converters.Count.class,
      description = "Threads to use (default: all processors); results do not depend on it.")
  private Long threads;

  public long seed() {
    return seed;
  }

  public int threads() {
    return threads == null
        ? Runtime.getRuntime().availableProcessors()
        : Math.toIntExact(Math.min(threads, MOST_THREADS));
  }
}
