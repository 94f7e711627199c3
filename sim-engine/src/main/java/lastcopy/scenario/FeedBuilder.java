package lastcopy.scenario;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes a {@link Feed} with the defaults of the scenario file. Mutable; made by one thread. */
public final class FeedBuilder {

  private final String from;
  private Feed.Schedule schedule;
  private OptionalDouble bytesPerSecond = OptionalDouble.empty();
  private Rate stops = Rate.NONE;
  private OptionalDouble checkedEveryHours = OptionalDouble.empty();
  private double visitHours = Feed.DEFAULT_VISIT_HOURS;

  private Optional<DailyHours> between = Optional.empty();
  private Optional<Uplink> uplink = Optional.empty();
  private Optional<Carried> carried = Optional.empty();

  FeedBuilder(String from) {
    this.from = from;
  }

  /** When runs are due; required. */
  public FeedBuilder schedule(Feed.Schedule when) {
    schedule = Objects.requireNonNull(when, "schedule");
    return this;
  }

  /** A run whenever there is something to copy. */
  public FeedBuilder continuous() {
    return schedule(new Feed.Continuous());
  }

  /** Runs at 0 h and every so many hours, above 0. */
  public FeedBuilder every(double hours) {
    return every(hours, 0);
  }

  /** Runs at so many hours, at least 0, and every so many hours, above 0, from there on. */
  public FeedBuilder every(double hours, double atHours) {
    return schedule(new Feed.Every(hours, atHours));
  }

  /** The rate of the link, above 0; otherwise the slowest drive or box on the way. */
  public FeedBuilder link(double rateBytesPerSecond) {
    bytesPerSecond = OptionalDouble.of(rateBytesPerSecond);
    uplink = Optional.empty();
    return this;
  }

  /** The line that it shares with all feeds of its layout that name it. */
  public FeedBuilder over(Uplink line) {
    bytesPerSecond = OptionalDouble.of(line.bytesPerSecond());
    uplink = Optional.of(line);
    return this;
  }

  /** The hours of the day, from 0 to 24, at which its link may be used; otherwise always. */
  public FeedBuilder between(double opens, double closes) {
    between = Optional.of(new DailyHours(opens, closes));
    return this;
  }

  /**
   * Its first fill, and what brings back its copy, may be carried by hand.
   *
   * @param takesHours hours on the way, at least 0
   * @param atBytesPerSecond rate at which the drive is filled and read, above 0
   */
  public FeedBuilder carried(double takesHours, double atBytesPerSecond) {
    carried = Optional.of(new Carried(takesHours, atBytesPerSecond));
    return this;
  }

  /** How often it stops without anybody seeing it; otherwise never. */
  public FeedBuilder stops(Rate rate) {
    stops = Objects.requireNonNull(rate, "stops");
    return this;
  }

  /** How often somebody looks whether it runs, in hours above 0; otherwise nobody does. */
  public FeedBuilder checkedEvery(double hours) {
    checkedEveryHours = OptionalDouble.of(hours);
    return this;
  }

  /** How long a rotated drive visits, in hours above 0; otherwise 24. */
  public FeedBuilder visits(double hours) {
    visitHours = hours;
    return this;
  }

  /**
   * The feed.
   *
   * @throws IllegalArgumentException if a value is out of its range
   * @throws NullPointerException if there is no schedule
   */
  public Feed build() {
    return new Feed(
        from,
        schedule,
        bytesPerSecond,
        stops,
        checkedEveryHours,
        visitHours,
        between,
        uplink,
        carried);
  }
}
