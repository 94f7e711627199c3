package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
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

  /** What so many visits do not bring is never brought. */
  private static final int MOST_VISITS = 100_000;

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
        usable.isPresent() ? room.fills(usable.getAsDouble()) : OptionalDouble.empty(),
        optional(copy.driveSet().flatMap(set -> rebuildHours(copy, set, atEnd))),
        optional(refill.map(way -> refillHours(layout, copy, atEnd, way))),
        byHandHours(copy, atEnd),
        feed.map(
            way ->
                FeedReckoner.of(
                    studio, layout, copy, way, shoots, FeedReckoner.lines(forecast, index))),
        ways);
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

  private static double refillHours(Layout layout, Copy copy, double bytes, Route way) {
    Copy source = layout.copies().get(layout.indexOf(way.from()));
    return hours(copy, bytes, way) + Ways.restoresIn(source);
  }

  /**
   * Hours that an amount takes into a copy, carried by hand; empty if its feed does not say how.
   */
  static OptionalDouble byHandHours(Copy copy, double bytes) {
    return optional(copy.feed().flatMap(Feed::carried).map(carried -> carried.hours(bytes)));
  }

  /** Hours that an amount takes into a copy; of one that visits, from its first visit on. */
  static double hours(Copy copy, double bytes, Route way) {
    double hours = hours(bytes, way);
    Optional<DailyHours> between = copy.feed().flatMap(Feed::between);
    if (copy.rotation().isPresent()) {
      return inVisits(copy.feed().orElseThrow(), copy.rotation().get(), hours);
    }
    return between.map(daily -> inHours(copy.feed().get(), daily, hours)).orElse(hours);
  }

  /** From the opening of its hours on; where runs come at one time of day only, from then on. */
  private static double inHours(Feed feed, DailyHours daily, double hours) {
    boolean everyDay =
        feed.schedule() instanceof Feed.Every every
            && every.everyHours() % Units.HOURS_PER_DAY == 0;
    double at = everyDay ? ((Feed.Every) feed.schedule()).atHours() : daily.opens();
    return daily.end(at, hours) - daily.openFrom(at);
  }

  private static double inVisits(Feed feed, Copy.Rotation rotation, double hours) {
    double visit = feed.visitHours();
    double round = rotation.turns() * rotation.everyHours();
    if (feed.between().isEmpty()) {
      double full = Math.max(0, Math.ceil(hours / visit) - 1);
      return full * round + hours - full * visit;
    }
    double first = feed.schedule() instanceof Feed.Every every ? every.atHours() : 0;
    double left = hours;
    for (int turn = 0; turn < MOST_VISITS; turn++) {
      double comes = first + turn * round;
      double used = feed.between().get().within(comes, comes + visit);
      if (used >= left) {
        return feed.between().get().end(comes, left) - first;
      }
      left -= used;
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Hours that an amount takes on a way. */
  static double hours(double bytes, Route way) {
    return bytes / way.bytesPerSecond() / Units.SECONDS_PER_HOUR;
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
