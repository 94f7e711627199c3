package lastcopy.interval;

/**
 * A figure with its confidence interval: the one value that engine, tables and charts carry.
 *
 * @param value the estimate
 * @param low lower end of the interval, at most the value
 * @param high upper end, at least the value
 * @param seen false if the event was never seen: the value is 0, low is 0 and high is a one-sided
 *     upper limit ("at most")
 */
public record Estimate(double value, double low, double high, boolean seen) {

  /** A single count has an exact upper end of under six times itself. */
  private static final double WIDE = 20;

  /** Checks the order. */
  public Estimate {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "an interval must hold its estimate: " + low + " <= " + value + " <= " + high);
    }
  }

  /** The same with its interval cut to what the figure can be at all; so is the value. */
  public Estimate within(double least, double most) {
    return new Estimate(
        Math.max(least, Math.min(most, value)),
        Math.max(least, Math.min(most, low)),
        Math.max(least, Math.min(most, high)),
        seen);
  }

  /** An exact figure. */
  public static Estimate exact(double value) {
    return new Estimate(value, value, value, true);
  }

  /**
   * Whether only the upper end says anything: the event was never seen, or what was seen of it is
   * too little to bound it within a factor of 20, as weights that cannot be trusted leave it.
   */
  public boolean onlyAtMost() {
    return !seen || high > WIDE * Math.abs(value);
  }

  /** The same with an upper end that is higher by an amount, at least 0. */
  public Estimate upTo(double more) {
    return new Estimate(value, low, high + more, seen);
  }

  /** The same of the figure with its sign changed, as of a difference seen from the other side. */
  public Estimate negated() {
    return new Estimate(-value, -high, -low, seen);
  }

  /** Half the width over the value, the precision reached; infinite where nothing was seen. */
  public double relativeHalfWidth() {
    if (!seen) {
      return Double.POSITIVE_INFINITY;
    }
    return high == low ? 0 : (high - low) / 2 / Math.abs(value);
  }
}
