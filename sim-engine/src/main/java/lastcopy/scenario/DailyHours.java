package lastcopy.scenario;

/**
 * Hours of the day at which a link may be used, every day alike; time 0 is midnight by the studio's
 * clock. Where they close before they open they go on over midnight: from 20 to 6 is the night, of
 * which its last six hours are at the start of time.
 *
 * @param opens when they begin, in hours from midnight, from 0 to below 24
 * @param closes when they end, in hours from midnight, from 0 to 24, another than {@code opens}; 0
 *     and 24 are one instant
 */
public record DailyHours(double opens, double closes) {

  private static final double DAY = Units.HOURS_PER_DAY;

  /** Checks the ranges. */
  public DailyHours {
    Require.that(opens >= 0 && opens < DAY, "between must open from 0 h to below 24 h: " + opens);
    Require.that(closes >= 0 && closes <= DAY, "between must close from 0 h to 24 h: " + closes);
    Require.that(opens != closes, "between needs two different hours: " + opens);
  }

  /** How long they are, above 0 and at most 24. */
  public double length() {
    return closes > opens ? closes - opens : DAY - opens + closes;
  }

  /** Whether they are the whole day. */
  public boolean always() {
    return length() == DAY;
  }

  /** Whether the link may be used from a time on, in hours, at least 0. */
  public boolean isOpen(double time) {
    double opened = openings().upTo(time);
    double closed = closings().upTo(time);
    return always() || opened > closed || (opened == closed && closes < opens);
  }

  /** The first instant at a time or after it at which they open or close; infinite if never. */
  public double changeFrom(double time) {
    return always()
        ? Double.POSITIVE_INFINITY
        : Math.min(openings().from(time), closings().from(time));
  }

  /** The same, but after a time. */
  public double changeAfter(double time) {
    return changeFrom(Math.nextUp(time));
  }

  /** The first instant at a time or after it from which on the link may be used. */
  public double openFrom(double time) {
    return isOpen(time) ? time : openings().from(time);
  }

  /**
   * When so much use of the link has come to its end.
   *
   * @param start when it begins, or waits for the next opening
   * @param hours for how long it is used, at least 0
   */
  public double end(double start, double hours) {
    double from = openFrom(start);
    double rest = always() ? Double.POSITIVE_INFINITY : closings().after(from) - from;
    if (hours <= rest) {
      return from + hours;
    }
    double days = Math.ceil((hours - rest) / length()) - 1; // in which all hours are used
    double last = hours - rest - days * length();
    return openings().after(from) + days * DAY + last;
  }

  /** For how long the link may be used from one time to another. */
  public double within(double from, double to) {
    return to <= from ? 0 : upTo(to) - upTo(from);
  }

  private double upTo(double time) {
    double days = Math.floor(time / DAY);
    double since = time - days * DAY;
    double today =
        closes > opens
            ? Math.min(since, closes) - Math.min(since, opens)
            : Math.min(since, closes) + Math.max(0, since - opens);
    return days * length() + today;
  }

  private Periodic openings() {
    return new Periodic(opens, DAY);
  }

  private Periodic closings() {
    return new Periodic(closes, DAY);
  }
}
