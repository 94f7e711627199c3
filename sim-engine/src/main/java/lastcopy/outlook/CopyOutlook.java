package lastcopy.outlook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.scenario.Copy;

/**
 * What is sure about one copy.
 *
 * @param copy which
 * @param usableBytes its room; empty for a service, which has as much as is paid for
 * @param fillsAtYears when the footage first exceeds its room; empty if not by the horizon
 * @param rebuildHours the mean time that a replaced drive of a surviving set takes, the whole drive
 *     or, where only the part in use is read, what is in use at the horizon; empty where nothing
 *     survives a failed drive
 * @param refillHours all footage of the horizon: into the working copy from the copy that is
 *     soonest, from its return on; into a fed copy by its feed, from the start of its first run on,
 *     or from the first opening of its hours, as if it had an uplink to itself; infinite if never,
 *     empty if there is no other copy
 * @param byHandHours the same, carried by hand; empty if its feed does not say how
 * @param feed its feed; empty for the working copy
 * @param ways each way into it
 * @param comebacks each route by which its footage comes back if it was gone
 */
public record CopyOutlook(
    Copy copy,
    OptionalDouble usableBytes,
    OptionalDouble fillsAtYears,
    OptionalDouble rebuildHours,
    OptionalDouble refillHours,
    OptionalDouble byHandHours,
    Optional<FeedOutlook> feed,
    List<Route> ways,
    List<Comeback> comebacks) {

  /** Copies the lists. */
  public CopyOutlook {
    ways = List.copyOf(ways);
    comebacks = List.copyOf(comebacks);
  }

  /** The way of a kind, if there is one. */
  public Optional<Route> way(Route.Kind kind) {
    return ways.stream().filter(way -> way.kind() == kind).findFirst();
  }
}
