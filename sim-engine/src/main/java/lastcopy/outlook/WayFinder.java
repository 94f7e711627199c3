package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rebuild;
import lastcopy.scenario.Units;
import lastcopy.scenario.Ways;

/** Names the parts of each way into a copy and finds the slowest. Rates are bytes per second. */
final class WayFinder {

  private WayFinder() {}

  static Optional<Route> feed(Layout layout, Copy target) {
    return target
        .feed()
        .map(
            feed -> {
              Copy source = layout.copies().get(layout.indexOf(feed.from()));
              double rate = Ways.feed(source, target);
              return between(
                  Route.Kind.FEED, source, target, rate, "link", feed.bytesPerSecond().isPresent());
            });
  }

  /**
   * The way by which a copy that was gone is filled again: of a fed copy its feed, else from the
   * copy that refills the target with so many bytes soonest, the first of equals.
   */
  static Optional<Route> refill(Layout layout, Copy target, double bytes) {
    if (target.feed().isPresent()) {
      return feed(layout, target).map(way -> way.as(Route.Kind.REFILL));
    }
    Copy best = null;
    for (Copy source : layout.copies()) {
      boolean better = best == null || givesSooner(source, best, target, bytes);
      if (!source.equals(target) && better) {
        best = source;
      }
    }
    return Optional.ofNullable(best).map(source -> refill(source, target));
  }

  private static boolean givesSooner(Copy source, Copy than, Copy target, double bytes) {
    double waits = Ways.restoresIn(source) - Ways.restoresIn(than);
    double rate = Ways.refill(source, target);
    double other = Ways.refill(than, target);
    return waits == 0
        ? rate > other
        : waits * Units.SECONDS_PER_HOUR + bytes / rate < bytes / other;
  }

  static Route refill(Copy source, Copy target) {
    boolean restore = source.restoresAt().isPresent();
    boolean link = source.feed().map(feed -> feed.bytesPerSecond().isPresent()).orElse(false);
    String name = restore ? "restores_at" : "link";
    double rate = Ways.refill(source, target);
    return between(Route.Kind.REFILL, source, target, rate, name, restore || link);
  }

  /** For a set that survives a failure and rebuilds by rate. */
  static Optional<Route> rebuild(Copy copy) {
    Optional<Medium.DriveSet> set = copy.driveSet().filter(s -> s.survives() > 0);
    if (set.isEmpty() || !(set.get().rebuild().time() instanceof Rebuild.ByRate byRate)) {
      return Optional.empty();
    }
    List<Route.Part> parts = new ArrayList<>();
    OptionalDouble stated = byRate.bytesPerSecond();
    stated.ifPresent(rate -> parts.add(new Route.Part("rebuild rate", rate)));
    parts.addAll(Route.hardware(copy));
    // The share that daily work takes is no part of the way: it does not make a rate overstated.
    return Optional.of(
        Route.over(Route.Kind.REBUILD, copy.id(), Ways.rebuild(copy), parts, stated.isPresent()));
  }

  private static Route between(
      Route.Kind kind, Copy source, Copy target, double rate, String name, boolean stated) {
    List<Route.Part> parts = new ArrayList<>();
    if (stated) {
      parts.add(new Route.Part(name, rate));
    }
    parts.addAll(Route.hardware(source));
    parts.addAll(Route.hardware(target));
    if (parts.isEmpty()) {
      parts.add(new Route.Part("network", rate));
    }
    return Route.over(kind, source.id(), rate, parts, stated);
  }
}
