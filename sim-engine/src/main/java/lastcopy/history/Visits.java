package lastcopy.history;

import lastcopy.scenario.Periodic;

/**
 * When a rotated drive stands at its source's place, by the clock.
 *
 * @param due when visits start
 * @param hours how long one lasts
 */
record Visits(Periodic due, double hours) {

  /** The start of the last visit due before a time; negative infinity before the first. */
  double lastBefore(double time) {
    return due.before(time);
  }

  /** Whether one is going on just before a time. */
  boolean goingOn(double time) {
    return time <= lastBefore(time) + hours;
  }

  /** The next instant after a time at which a visit starts or ends. */
  double nextChange(double time) {
    double end = due.upTo(time) + hours;
    double next = due.after(time);
    return end > time ? Math.min(end, next) : next;
  }
}
