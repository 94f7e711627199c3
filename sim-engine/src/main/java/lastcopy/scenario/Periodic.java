package lastcopy.scenario;

/**
 * Instants at + k·every, k from 0, each as its product rounds: what falls on one is on it, though
 * the quotient that finds k may round up or down. All that comes by the clock is reckoned here.
 *
 * @param at the first, in hours, at least 0
 * @param every from one to the next in hours, above 0
 */
public record Periodic(double at, double every) {

  /** Checks the ranges. */
  public Periodic {
    Require.atLeast(at, 0, "at");
    Require.above(every, 0, "every");
  }

  /** The first that is not before a time. */
  public double from(double time) {
    return instant(countBefore(time));
  }

  /** How many are before a time, a whole number. */
  public double countBefore(double time) {
    double k = Math.max(0, Math.ceil((time - at) / every));
    if (k > 0 && instant(k - 1) >= time) {
      k--; // the quotient rounded up
    }
    return instant(k) < time ? k + 1 : k;
  }

  /** The first after a time. */
  public double after(double time) {
    return from(Math.nextUp(time));
  }

  /** The last before a time; negative infinity if there is none. */
  public double before(double time) {
    double k = Math.ceil((time - at) / every) - 1;
    if (instant(k) >= time) {
      k--; // the quotient rounded up
    } else if (instant(k + 1) < time) {
      k++; // the quotient rounded down
    }
    return k < 0 ? Double.NEGATIVE_INFINITY : instant(k);
  }

  /** The last that is not after a time; negative infinity if there is none. */
  public double upTo(double time) {
    return before(Math.nextUp(time));
  }

  private double instant(double k) {
    return at + k * every;
  }
}
