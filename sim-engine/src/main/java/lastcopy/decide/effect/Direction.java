package lastcopy.decide.effect;

import lastcopy.interval.Estimate;

/** Which way a change moves the chance of a loss. */
public enum Direction {
  LESS("less"),
  MORE("more"),
  NOT_MEASURABLE("not measurable");

  private final String id;

  Direction(String id) {
    this.id = id;
  }

  /** A stable id. */
  public String id() {
    return id;
  }

  /** The direction of a difference, unless its interval holds 0. */
  public static Direction of(Estimate difference) {
    if (difference.high() < 0) {
      return LESS;
    }
    return difference.low() > 0 ? MORE : NOT_MEASURABLE;
  }
}
