package lastcopy.history.plan;

import lastcopy.scenario.Periodic;

/**
 * When a rotated drive stands at its source's place, by the clock.
 *
 * @param due when visits start
 * @param hours how long one lasts
 */
public record Visits(Periodic due, double hours) {

  /** The start of the last visit due before a time; negative infinity before the first. */
  public double lastBefore(double time) {
    return due.before(time);
  }

  /** Whether one is going on just before a time. */
  public boolean goingOn(double time) {
    return time <= lastBefore(time) + hours;
  }

  /** Hours of visits by the clock up to a time. */
  public double hoursBefore(double time) {
    double begun = due.countBefore(time);
    return begun == 0
        ? 0
        : (begun - 1) * Math.min(hours, due.every()) + Math.min(hours, time - due.before(time));
  }

  /** The next instant after a time at which a visit starts or ends. */
  public double nextChange(double time) {
    double end = due.upTo(time) + hours;
    double next = due.after(time);
    return end > time ? Math.min(end, next) : next;
  }
}
