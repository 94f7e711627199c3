package lastcopy.outlook;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DailyHours;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Units;
import lastcopy.scenario.Uplink;

/**
 * Reckons the time of a feed's link: a fluid that comes evenly, over a day of which some hours may
 * be used, each of them shared equally by all feeds of the uplink that may use it.
 */
final class LinkReckoner {

  private static final double DAY = Units.HOURS_PER_DAY;
  private static final DailyHours ALWAYS = new DailyHours(0, DAY);

  private final DailyHours own;
  private final List<DailyHours> all;
  private final double rate;

  private LinkReckoner(DailyHours own, List<DailyHours> all, double rate) {
    this.own = own;
    this.all = all;
    this.rate = rate;
  }

  /** The link of a fed copy of a layout, of a rate in bytes per second. */
  static LinkReckoner of(Layout layout, Copy copy, double rate) {
    Feed feed = copy.feed().orElseThrow();
    Optional<String> uplink = feed.uplink().map(Uplink::id);
    List<DailyHours> all = uplink.isEmpty() ? List.of(hours(feed)) : hoursOn(layout, uplink.get());
    return new LinkReckoner(hours(feed), all, rate);
  }

  private static List<DailyHours> hoursOn(Layout layout, String uplink) {
    return layout.copies().stream()
        .flatMap(copy -> copy.feed().stream())
        .filter(feed -> feed.uplink().filter(line -> line.id().equals(uplink)).isPresent())
        .map(LinkReckoner::hours)
        .toList();
  }

  private static DailyHours hours(Feed feed) {
    return feed.between().orElse(ALWAYS);
  }

  /** What it needs for so many bytes per second, shot at the start and at the end. */
  LinkTime time(double shotNow, double shotAtEnd) {
    return new LinkTime(own.length(), sharing(), need(shotNow), need(shotAtEnd));
  }

  /** How many feeds may use the link at some of its hours. */
  private int sharing() {
    return (int) all.stream().filter(other -> overlap(other) > 0).count();
  }

  private double overlap(DailyHours other) {
    double[] ends = ends();
    double both = 0;
    for (int i = 0; i + 1 < ends.length; i++) {
      boolean open = own.isOpen(ends[i]) && other.isOpen(ends[i]);
      both += open ? ends[i + 1] - ends[i] : 0;
    }
    return both;
  }

  private LinkTime.Need need(double shot) {
    double needed = rateFor(shot);
    return new LinkTime.Need(needed <= rate, own.length() * (needed / rate), needed);
  }

  /** The rate at which it surely carries so many bytes per second. */
  double rateFor(double shot) {
    return shot * (DAY / share());
  }

  /** Whether so many bytes per second are surely more than it ever carries. */
  boolean neverCarries(double shot) {
    double most = isSharedAlike() ? share() : own.length();
    return shot * (DAY / most) > rate;
  }

  /** Whether each other feed may use the uplink at the same hours, or at none of them. */
  private boolean isSharedAlike() {
    return all.stream()
        .allMatch(
            other -> {
              double both = overlap(other);
              boolean same = own.isOpen(other.opens()) && other.isOpen(own.opens());
              return both == 0 || (same && own.length() == other.length());
            });
  }

  /** Hours of a day, each divided by the feeds that may use it. */
  private double share() {
    double[] ends = ends();
    double hours = 0;
    for (int i = 0; i + 1 < ends.length; i++) {
      double from = ends[i];
      long open = all.stream().filter(each -> each.isOpen(from)).count();
      hours += own.isOpen(from) ? (ends[i + 1] - from) / open : 0;
    }
    return hours;
  }

  private double[] ends() {
    DoubleStream changes =
        all.stream().flatMapToDouble(each -> DoubleStream.of(each.opens(), each.closes()));
    return DoubleStream.concat(DoubleStream.of(0, DAY), changes).sorted().distinct().toArray();
  }
}
