package lastcopy.oracle;

import java.util.Optional;
import lastcopy.scenario.Carried;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Uplink;

/** The line of one feed: whether it is open now, by a clock that opens and closes it every day. */
final class Line {

  private static final double DAY = 24;

  private final Optional<DailyHours> hours;
  private final Optional<Carried> carried;

  /** The name of the uplink that it shares; empty for a line of its own. */
  final String uplink;

  boolean open;

  Line(World world, Feed feed) {
    hours = feed.between();
    carried = feed.carried();
    uplink = feed.uplink().map(Uplink::id).orElse("");
    open =
        hours.map(h -> (h.closes() < h.opens() && h.closes() > 0) || h.opens() == 0).orElse(true);
    hours.ifPresent(
        h -> {
          daily(world, h.opens(), true);
          if (h.closes() != h.opens() + DAY) {
            daily(world, h.closes(), false);
          }
        });
  }

  /** Whether another is the same uplink. */
  boolean isShared(Line other) {
    return other != null && !uplink.isEmpty() && uplink.equals(other.uplink);
  }

  private void daily(World world, double time, boolean opens) {
    world.clock.at(
        time,
        Clock.Order.RETURN,
        () -> {
          open = opens;
          daily(world, time + DAY, opens);
        });
  }

  /** When a use of the line that starts now would be over, going from one opening to the next. */
  double over(double now, double use) {
    if (hours.isEmpty() || hours.get().closes() - hours.get().opens() == DAY) {
      return now + use;
    }
    double day = Math.floor(now / DAY) * DAY - DAY;
    double left = use;
    while (true) {
      double opens = day + hours.get().opens();
      double closes = day + hours.get().closes();
      closes += closes <= opens ? DAY : 0;
      double room = closes - Math.max(now, opens);
      if (room >= left) {
        return Math.max(now, opens) + left;
      }
      left -= Math.max(0, room);
      day += DAY;
    }
  }

  /** When a drive with so many bytes would be there, if that is before the line is through. */
  double byHand(double now, double bytes, double through) {
    double there =
        carried
            .map(c -> now + c.takesHours() + bytes / c.bytesPerSecond() / 3_600)
            .orElse(Double.POSITIVE_INFINITY);
    return there < through ? there : Double.POSITIVE_INFINITY;
  }
}
