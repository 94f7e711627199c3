package lastcopy.cli;

import lastcopy.scenario.Studio;
import picocli.CommandLine.Option;

/** How far a command looks ahead. */
final class YearsOption {

  @Option(
      names = "--years",
      paramLabel = "YEARS",
      converter = Converters.Years.class,
      description = "How far to look ahead (default: the scenario's years).")
  private Double years;

  /** The studio over the years asked for, if any were. */
  Studio over(Studio studio) {
    return years == null ? studio : studio.withYears(years);
  }
}
