package lastcopy.cli.compare;

import java.util.OptionalInt;
import java.util.OptionalLong;
import lastcopy.cli.option.ConfidenceOption;
import lastcopy.cli.option.Converters;
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.YearsOption;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options of every command that simulates. */
final class SimulationOptions {

  private static final long MOST_WORLDS = 100_000;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private YearsOption years;

  @Mixin private LuckOptions luck;

  @Mixin private ConfidenceOption confidence;

  @Option(
      names = "--precision",
      paramLabel = "PERCENT",
      defaultValue = "2%",
      converter = Converters.Percent.class,
      description = "Stop when the chance of loss is known that closely (default: 2%%).")
  private double precision;

  @Option(
      names = "--time",
      paramLabel = "TIME",
      defaultValue = "60s",
      converter = Converters.Time.class,
      description = "Stop after that time, such as 10s or 5min, or none (default: 60s).")
  private Converters.TimeCap time;

  @Option(
      names = "--histories",
      paramLabel = "N",
      converter = Converters.Count.class,
      description = "Stop after that many histories of each layout.")
  private Long histories;

  @Option(
      names = "--worlds",
      paramLabel = "N",
      converter = Converters.Count.class,
      description = "So many possible worlds where rates are ranges (default: up to 2,048).")
  private Long worlds;

  @Option(
      names = "--method",
      paramLabel = "METHOD",
      defaultValue = "auto",
      converter = Converters.MethodName.class,
      description = "How losses are estimated: auto, plain or rare (default: auto).")
  private Method method;

  /**
   * The settings asked for.
   *
   * @throws ParameterException if an option is out of range
   */
  Settings settings() {
    if (worlds != null && worlds > MOST_WORLDS) {
      throw new ParameterException(
          command.commandLine(),
          "Invalid value for option '--worlds': must be at most " + MOST_WORLDS);
    }
    return new Settings(
        luck.seed(),
        confidence.value(),
        precision,
        histories == null ? OptionalLong.empty() : OptionalLong.of(histories),
        time.duration(),
        luck.threads(),
        method,
        worlds == null ? OptionalInt.empty() : OptionalInt.of(worlds.intValue()));
  }

  /** The studio, in each possible world, over the years asked for, if any were. */
  PossibleStudios over(PossibleStudios studios) {
    return years.over(studios);
  }
}
