package lastcopy.cli.option;

import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.scenario.PossibleStudios;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How far a command looks ahead. */
public final class YearsOption {

  @Option(
      names = "--years",
      paramLabel = "YEARS",
      converter = Converters.Years.class,
      description = "How far to look ahead (default: the scenario's years).")
  private Double years;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /**
   * The studio, in each possible world, over the years asked for, if any were.
   *
   * @throws ParameterException if so many years are absurdly much to compute
   */
  public PossibleStudios over(PossibleStudios studios) {
    if (years == null) {
      return studios;
    }
    PossibleStudios over = studios.withYears(years);
    ScenarioReader.excess(over)
        .ifPresent(
            excess -> {
              throw new ParameterException(
                  command.commandLine(), "--years is too far ahead for " + excess);
            });
    return over;
  }
}
