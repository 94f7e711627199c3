package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/**
 * What needs no luck about a layout: room, ways, times and lags as long as nothing fails. Shoots
 * are taken as evenly spaced.
 *
 * @param layout which
 * @param room footage by year
 * @param copies one for each copy, in the order of the layout
 * @param warnings what its owner should know
 */
public record Outlook(
    Layout layout, List<Room.Year> room, List<CopyOutlook> copies, List<Warning> warnings) {

  /** Copies the lists. */
  public Outlook {
    room = List.copyOf(room);
    copies = List.copyOf(copies);
    warnings = List.copyOf(warnings);
  }

  /** The outlook of each layout of a studio, in its order. */
  public static List<Outlook> of(Studio studio) {
    ShootTable shoots = ShootTable.even(studio.footage(), studio.horizonHours());
    return studio.layouts().stream().map(layout -> of(studio, layout, shoots)).toList();
  }

  private static Outlook of(Studio studio, Layout layout, ShootTable shoots) {
    FeedForecast forecast = FeedForecast.of(studio, layout, shoots);
    Room room = new Room(studio, shoots);
    List<CopyOutlook> copies = new ArrayList<>();
    for (int i = 0; i < layout.copies().size(); i++) {
      copies.add(copy(studio, layout, i, shoots, forecast, room));
    }
    List<Warning> warnings = Warnings.of(studio, layout, copies, shoots, forecast);
    return new Outlook(layout, room.byYear(), copies, warnings);
  }

  private static CopyOutlook copy(
      Studio studio,
      Layout layout,
      int index,
      ShootTable shoots,
      FeedForecast forecast,
      Room room) {
    Copy copy = layout.copies().get(index);
    Optional<Route> feed = WayFinder.feed(layout, copy);
    double atEnd = room.footage(studio.horizonHours());
    Optional<Route> refill = WayFinder.refill(layout, copy, atEnd);
    List<Route> ways = new ArrayList<>();
    feed.ifPresent(ways::add);
    WayFinder.rebuild(copy).ifPresent(ways::add);
    refill.ifPresent(ways::add);
    OptionalDouble usable = optional(copy.driveSet().map(Medium.DriveSet::usableBytes));
    return new CopyOutlook(
        copy,
        usable,
        copy.driveSet().map(room::fills).orElse(OptionalDouble.empty()),
        optional(copy.driveSet().flatMap(set -> rebuildHours(copy, set, atEnd))),
        optional(refill.map(way -> RefillReckoner.hours(layout, copy, atEnd, way))),
        RefillReckoner.byHandHours(copy, atEnd),
        feed.map(
            way ->
                FeedReckoner.of(
                    studio, layout, copy, way, shoots, FeedReckoner.lines(forecast, index))),
        ways,
        RefillReckoner.comebacks(layout, copy, room.footage(0), atEnd));
  }

  private static Optional<Double> rebuildHours(Copy copy, Medium.DriveSet set, double inUse) {
    if (set.survives() == 0) {
      return Optional.empty();
    }
    if (set.rebuild().time() instanceof Rebuild.ByLaw byLaw) {
      return Optional.of(byLaw.law().mean());
    }
    double bytes =
        set.rebuild().reads() == Rebuild.Reads.ALL
            ? set.driveBytes()
            : inUse / set.arrangement().usableDrives(set.drives());
    return Optional.of(bytes / Ways.rebuild(copy) / Units.SECONDS_PER_HOUR);
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
