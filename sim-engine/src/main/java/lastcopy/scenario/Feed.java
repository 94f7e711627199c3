package lastcopy.scenario;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a copy is fed from another.
 *
 * @param from id of the source copy
 * @param schedule when runs are due
 * @param bytesPerSecond rate of the link as stated, taken as it is; empty for the slowest of the
 *     drives and boxes on the way; of a feed over an uplink the uplink's speed
 * @param stops how often a running feed stops without anybody seeing it
 * @param checkedEveryHours how often somebody looks whether it still runs, if at all
 * @param visitHours how long a rotated drive stands at the source's place from the start of its run
 * @param between hours of the day at which its link may be used, if not always
 * @param uplink the line that it shares with other feeds, if any
 * @param carried how its first fill, and what brings back its copy, may be carried by hand, if so
 */
public record Feed(
    String from,
    Schedule schedule,
    OptionalDouble bytesPerSecond,
    Rate stops,
    OptionalDouble checkedEveryHours,
    double visitHours,
    Optional<DailyHours> between,
    Optional<Uplink> uplink,
    Optional<Carried> carried) {

  /** How long a rotated drive is visiting where the scenario does not say: 24 h. */
  public static final double DEFAULT_VISIT_HOURS = 24;

  /** Checks the ranges. */
  public Feed {
    Require.text(from, "from");
    Require.present(schedule, "schedule");
    Require.present(stops, "stops");
    Require.present(between, "between");
    Require.present(uplink, "uplink");
    Require.present(carried, "carried");
    bytesPerSecond.ifPresent(rate -> Require.above(rate, 0, "link"));
    double rate = bytesPerSecond.orElse(0);
    Require.that(
        uplink.map(line -> line.bytesPerSecond() == rate).orElse(true),
        "a feed over an uplink has its speed, not " + rate);
    checkedEveryHours.ifPresent(hours -> Require.above(hours, 0, "checked_every"));
    Require.above(visitHours, 0, "visits");
  }

  /** Makes a feed from the copy of that id with the defaults of the scenario file. */
  public static FeedBuilder from(String copy) {
    return new FeedBuilder(copy);
  }

  /** When runs are due. */
  public sealed interface Schedule permits Continuous, Every {}

  /** A run whenever there is something to copy. */
  public record Continuous() implements Schedule {}

  /**
   * Runs due by the clock, at {@code atHours}, {@code atHours + everyHours} and so on from time 0.
   *
   * @param everyHours above 0
   * @param atHours at least 0
   */
  public record Every(double everyHours, double atHours) implements Schedule {
    /** Checks the ranges. */
    public Every {
      Require.above(everyHours, 0, "every");
      Require.atLeast(atHours, 0, "at");
    }

    /** When runs are due. */
    public Periodic due() {
      return new Periodic(atHours, everyHours);
    }
  }
}
