package lastcopy.history.plan;

import java.util.Optional;
import lastcopy.scenario.Periodic;

/**
 * How a copy is fed.
 *
 * @param source the copy that it is fed from
 * @param due when runs are due; empty for a continuous feed
 * @param bytesPerHour rate of the way, above 0
 * @param link what is special about its link; null if nothing is
 */
public record Way(int source, Optional<Periodic> due, double bytesPerHour, FeedLink link) {

  /** A way whose link is like any other. */
  public Way(int source, Optional<Periodic> due, double bytesPerHour) {
    this(source, due, bytesPerHour, null);
  }

  /** Whether a run starts whenever there is something to copy. */
  public boolean continuous() {
    return due.isEmpty();
  }

  /** The first run that is due at a time or after it. */
  public double dueFrom(double time) {
    return continuous() ? time : due.get().from(time);
  }

  /** The first run that is due after a time; of a continuous feed at once. */
  public double dueAfter(double time) {
    return continuous() ? time : due.get().after(time);
  }

  /** Hours from one run to the next; 0 for a continuous feed. */
  public double everyHours() {
    return due.map(Periodic::every).orElse(0.0);
  }
}
