package lastcopy.law;

/** Checks of constructor arguments: the message names the rule and the value, and NaN fails. */
final class Domain {

  private Domain() {}

  static void that(boolean holds, String rule, double value) {
    if (!holds) {
      throw new IllegalArgumentException(rule + ": " + value);
    }
  }

  static void above(double value, double bound, String what) {
    that(value > bound && Double.isFinite(value), what + " must be above " + bound, value);
  }

  static void atLeast(double value, double bound, String what) {
    that(value >= bound && Double.isFinite(value), what + " must be at least " + bound, value);
  }
}
