package lastcopy.oracle;

import java.util.Comparator;
import java.util.PriorityQueue;

/** What happens next. */
final class Clock {

  /** The order at one instant. */
  enum Order {
    FAILURE,
    RETURN,
    LOOK,
    EXPIRY,
    RUN,
    OFFLOAD
  }

  private record Event(double at, Order order, long number, Runnable action) {}

  private final PriorityQueue<Event> events =
      new PriorityQueue<>(
          Comparator.comparingDouble(Event::at)
              .thenComparing(Event::order)
              .thenComparingLong(Event::number));
  private final double horizon;
  private long number;
  private double now;

  Clock(double horizon) {
    this.horizon = horizon;
  }

  double now() {
    return now;
  }

  double horizon() {
    return horizon;
  }

  void at(double time, Order order, Runnable action) {
    if (time <= horizon) {
      events.add(new Event(Math.max(now, time), order, number++, action));
    }
  }

  void in(double hours, Order order, Runnable action) {
    at(now + hours, order, action);
  }

  /** Again and again, as a Poisson process. */
  void poisson(double perHour, Luck luck, Runnable action) {
    if (perHour > 0) {
      in(
          luck.exponential() / perHour,
          Order.FAILURE,
          () -> {
            action.run();
            poisson(perHour, luck, action);
          });
    }
  }

  /** The time of the next event, or the horizon. */
  double next() {
    return events.isEmpty() ? horizon : events.peek().at();
  }

  /**
   * Does the next thing, if there is one.
   *
   * @param before done first, when the clock shows the time already
   */
  boolean step(Runnable before) {
    Event event = events.poll();
    now = event == null ? horizon : event.at();
    before.run();
    if (event != null) {
      event.action().run();
    }
    return event != null;
  }
}
