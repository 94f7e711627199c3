package lastcopy.history.plan;

import java.util.Optional;
import lastcopy.scenario.Carried;
import lastcopy.scenario.DailyHours;

/**
 * What is special about the link of a feed: hours of the day, others that share it, or a drive that
 * may be carried instead.
 *
 * @param hours when it may be used; empty for always
 * @param uplink the number of the uplink that it shares with others, −1 if with none
 * @param carried how what it brings may be carried by hand, if so
 */
public record FeedLink(Optional<DailyHours> hours, int uplink, Optional<Carried> carried) {

  /** Of a link of its own, always open, beside which nothing is carried. */
  public static final int NOT_SHARED = -1;

  /** Whether it is like any other: then it is not spoken of. */
  boolean isPlain() {
    return hours.isEmpty() && uplink == NOT_SHARED && carried.isEmpty();
  }

  /** Whether it may be used from a time on. */
  public boolean isOpen(double time) {
    return hours.isEmpty() || hours.get().isOpen(time);
  }

  /** When a run that starts at a time and takes so many hours of the whole link would end. */
  public double end(double start, double workHours) {
    return hours.isEmpty() ? start + workHours : hours.get().end(start, workHours);
  }

  /** The next instant after a time at which it opens or closes; infinite if never. */
  public double changeAfter(double time) {
    return hours.map(daily -> daily.changeAfter(time)).orElse(Double.POSITIVE_INFINITY);
  }
}
