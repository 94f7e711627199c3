package lastcopy.outlook.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.outlook.Ethernet;
import lastcopy.outlook.Route;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** Works out what a working copy takes in and gives out. */
final class TimeReckoner {

  private final Studio studio;
  private final OptionalDouble stream;

  TimeReckoner(Studio studio, OptionalDouble streamBytesPerSecond) {
    this.studio = studio;
    this.stream = streamBytesPerSecond;
  }

  Optional<Offload> offload(Layout layout) {
    return slowest(layout.workingCopy()).map(this::offload);
  }

  private Offload offload(Route.Part slowest) {
    double end = studio.horizonHours();
    double now = ShootTable.sizeAt(studio.footage(), 0);
    double last =
        Math.max(
            ShootTable.sizeAt(studio.footage(), Math.max(0, end - Units.HOURS_PER_YEAR)),
            ShootTable.sizeAt(studio.footage(), end));
    double perHour = slowest.bytesPerSecond() * Units.SECONDS_PER_HOUR;
    return new Offload(slowest, now, now / perHour, last, last / perHour);
  }

  Optional<Streams> streams(Layout layout) {
    if (stream.isEmpty()) {
      return Optional.empty();
    }
    return parts(layout.workingCopy()).stream()
        .map(TimeReckoner::asFramesCarry)
        .reduce((a, b) -> b.bytesPerSecond() < a.bytesPerSecond() ? b : a)
        .map(part -> new Streams(stream.getAsDouble(), part));
  }

  /** A box whose speed is that on its network port gives less. */
  private static Route.Part asFramesCarry(Route.Part part) {
    return Ethernet.linePromisedBy(part.bytesPerSecond())
        .filter(line -> part.name().startsWith("box "))
        .map(line -> new Route.Part(part.name(), Ethernet.ceilingWithTimestamps(line)))
        .orElse(part);
  }

  private static Optional<Route.Part> slowest(Copy copy) {
    List<Route.Part> parts = parts(copy);
    return parts.isEmpty() ? Optional.empty() : Optional.of(Route.slowestOf(parts));
  }

  private static List<Route.Part> parts(Copy copy) {
    return Route.hardware(copy);
  }
}
