package lastcopy.history;

/**
 * Instants at + k·every, k from 0, each as its product rounds: what falls on one is on it, though
 * the quotient that finds k may round up or down.
 *
 * @param at the first, in hours
 * @param every from one to the next in hours, above 0
 */
record Periodic(double at, double every) {

  /** The first that is not before a time. */
  double from(double time) {
    double k = Math.max(0, Math.ceil((time - at) / every));
    if (k > 0 && instant(k - 1) >= time) {
      k--; // the quotient rounded up
    }
    return instant(k) < time ? instant(k + 1) : instant(k);
  }

  /** The first after a time. */
  double after(double time) {
    return from(Math.nextUp(time));
  }

  /** The last before a time; negative infinity if there is none. */
  double before(double time) {
    double k = Math.ceil((time - at) / every) - 1;
    if (instant(k) >= time) {
      k--; // the quotient rounded up
    } else if (instant(k + 1) < time) {
      k++; // the quotient rounded down
    }
    return k < 0 ? Double.NEGATIVE_INFINITY : instant(k);
  }

  private double instant(double k) {
    return at + k * every;
  }
}
