package lastcopy.exact;

/** Checks of arguments: the message names the rule and the value, and NaN fails. */
final class Parameters {

  private Parameters() {}

  static void that(boolean holds, String rule, double value) {
    if (!holds) {
      throw new IllegalArgumentException(rule + ": " + value);
    }
  }

  static void above(double value, String what) {
    that(value > 0 && Double.isFinite(value), what + " must be above 0", value);
  }

  static void atLeastZero(double value, String what) {
    that(value >= 0 && Double.isFinite(value), what + " must be at least 0", value);
  }
}
