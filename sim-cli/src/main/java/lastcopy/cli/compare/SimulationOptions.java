package lastcopy.cli.compare;

import java.util.OptionalLong;
import lastcopy.cli.option.Converters;
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.YearsOption;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options of every command that simulates. */
final class SimulationOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private YearsOption years;

  @Mixin private LuckOptions luck;

  @Option(
      names = "--confidence",
      paramLabel = "PERCENT",
      defaultValue = "95%",
      converter = Converters.Percent.class,
      description = "Confidence of every interval (default: 95%%).")
  private double confidence;

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
    if (!(confidence < 1)) {
      throw new ParameterException(
          command.commandLine(), "Invalid value for option '--confidence': must be below 100%");
    }
    return new Settings(
        luck.seed(),
        confidence,
        precision,
        histories == null ? OptionalLong.empty() : OptionalLong.of(histories),
        time.duration(),
        luck.threads(),
        method);
  }

  /** The studio over the years asked for, if any were. */
  Studio over(Studio studio) {
    return years.over(studio);
  }
}
