package lastcopy.cli.inspect;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.cli.option.Converters;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Option;

/** How far drives may be filled, and what those who edit read. */
final class RoomOptions {

  @Option(
      names = "--fill",
      paramLabel = "PERCENT",
      defaultValue = "80%",
      converter = Converters.Fill.class,
      description = "How full drives may be (default: 80%%; common practice, no source).")
  private double fill;

  @Option(
      names = "--stream",
      paramLabel = "RATE",
      converter = Converters.Rate.class,
      description = "Tell how many can edit at once who read RATE each, such as 400Mbit/s.")
  private Double stream;

  /** Room and time of a studio. */
  RoomAndTime of(Studio studio, List<Outlook> outlooks) {
    OptionalDouble rate = stream == null ? OptionalDouble.empty() : OptionalDouble.of(stream);
    return RoomAndTime.of(studio, outlooks, fill, rate);
  }
}
