package lastcopy.outlook.room;

import java.util.List;
import java.util.Optional;
import lastcopy.outlook.Route;

/**
 * What a way would do without the part that limits it.
 *
 * @param way the way, with the part that limits it
 * @param without the rate in bytes per second; infinite if the file names no other part
 * @param next what would limit it then; empty if the file names no other part
 */
public record WayLimit(Route way, double without, Optional<Route.Part> next) {

  /** Of a way: parts of one name, such as the drives at both ends, are removed together. */
  static WayLimit of(Route way) {
    // A rate that is stated is taken as it is, also where a part on the way cannot do it.
    if (way.overstated()) {
      return new WayLimit(way, way.bytesPerSecond(), Optional.of(way.parts().get(0)));
    }
    List<Route.Part> others =
        way.parts().stream().filter(part -> !part.name().equals(way.slowest().name())).toList();
    if (others.isEmpty()) {
      return new WayLimit(way, Double.POSITIVE_INFINITY, Optional.empty());
    }
    Route.Part next = Route.slowestOf(others);
    // What daily work takes of a rebuild it would take then too.
    double share = way.bytesPerSecond() / way.slowest().bytesPerSecond();
    return new WayLimit(way, next.bytesPerSecond() * share, Optional.of(next));
  }

  /** Whether the way would be faster. */
  public boolean helps() {
    return without > way.bytesPerSecond() * (1 + 1e-9);
  }
}
