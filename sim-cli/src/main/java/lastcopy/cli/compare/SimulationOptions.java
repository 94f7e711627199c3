package lastcopy.cli.compare;

import java.util.OptionalLong;
import lastcopy.cli.option.ConfidenceOption;
import lastcopy.cli.option.Converters;
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.YearsOption;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options of every command that simulates. */
final class SimulationOptions {

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
      names = "--method",
      paramLabel = "METHOD",
      defaultValue = "auto",
      converter = Converters.MethodName.class,
      description = "How losses are estimated: auto, plain or rare (default: auto).")
  private Method method;

  /** The settings asked for. */
  Settings settings() {
    return new Settings(
        luck.seed(),
        confidence.value(),
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
