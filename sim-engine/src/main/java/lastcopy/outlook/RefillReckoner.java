package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** How long an amount takes into a copy, by each route. Hours and bytes. */
final class RefillReckoner {

  /** What so many visits do not bring is never brought. */
  private static final int MOST_VISITS = 100_000;

  private RefillReckoner() {}

  /**
   * Each route by which a copy that was gone may come back; for two amounts, now and at the end.
   */
  static List<Comeback> comebacks(Layout layout, Copy copy, double now, double atEnd) {
    List<Comeback> routes = new ArrayList<>();
    if (copy.feed().isEmpty()) {
      for (Copy source : layout.copies()) {
        if (!source.equals(copy)) {
          Route way = WayFinder.refill(source, copy);
          routes.add(route(layout, copy, Comeback.By.RESTORE, way, now, atEnd));
        }
      }
      return routes;
    }
    Route way = WayFinder.feed(layout, copy).orElseThrow();
    routes.add(route(layout, copy, Comeback.By.FEED, way, now, atEnd));
    copy.feed()
        .flatMap(Feed::carried)
        .ifPresent(
            carried ->
                routes.add(
                    new Comeback(
                        way.from(),
                        Comeback.By.HAND,
                        carried.bytesPerSecond(),
                        carried.hours(now),
                        carried.hours(atEnd))));
    return routes;
  }

  private static Comeback route(
      Layout layout, Copy copy, Comeback.By by, Route way, double now, double atEnd) {
    return new Comeback(
        way.from(),
        by,
        way.bytesPerSecond(),
        hours(layout, copy, now, way),
        hours(layout, copy, atEnd, way));
  }

  /** Hours that an amount takes from the order of it on. */
  static double hours(Layout layout, Copy copy, double bytes, Route way) {
    Copy source = layout.copies().get(layout.indexOf(way.from()));
    return hours(copy, bytes, way) + Ways.restoresIn(source);
  }

  /**
   * Hours that an amount takes into a copy, carried by hand; empty if its feed does not say how.
   */
  static OptionalDouble byHandHours(Copy copy, double bytes) {
    return copy.feed()
        .flatMap(Feed::carried)
        .map(carried -> OptionalDouble.of(carried.hours(bytes)))
        .orElse(OptionalDouble.empty());
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

  /** Hours that an amount takes on a way. */
  static double hours(double bytes, Route way) {
    return bytes / way.bytesPerSecond() / Units.SECONDS_PER_HOUR;
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
}
