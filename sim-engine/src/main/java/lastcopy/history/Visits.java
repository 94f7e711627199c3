package lastcopy.history;

/**
 * When a rotated drive stands at its source's place, by the clock: from at + k·period for some
 * hours.
 *
 * @param atHours the first visit
 * @param periodHours from one visit to the next
 * @param hours how long one lasts
 */
record Visits(double atHours, double periodHours, double hours) {

  /** The start of the last visit due before a time; negative infinity before the first. */
  double lastBefore(double time) {
    return new Periodic(atHours, periodHours).before(time);
  }

  /** Whether one is going on just before a time. */
  boolean goingOn(double time) {
    return time <= lastBefore(time) + hours;
  }

  /** The next instant after a time at which a visit starts or ends. */
  double nextChange(double time) {
    double k = Math.max(0, Math.floor((time - atHours) / periodHours));
    for (double j = k; ; j++) {
      double start = atHours + j * periodHours;
      if (start > time) {
        return start;
      }
      double end = start + hours;
      if (end > time) {
        return Math.min(end, atHours + (j + 1) * periodHours);
      }
    }
  }
}
