package lastcopy.scenario;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks of constructor arguments; each message names the rule and the value, and NaN fails. */
final class Require {

  private Require() {}

  static void that(boolean condition, String message) {
    if (!condition) {
      throw new IllegalArgumentException(message);
    }
  }

  /** Nothing that a record holds may be missing. */
  static void present(Object value, String what) {
    if (value == null) {
      throw new NullPointerException(what + " must not be null");
    }
  }

  static void text(String value, String what) {
    that(value != null && !value.isBlank(), what + " must not be blank");
  }

  static void above(double value, double bound, String what) {
    if (!(value > bound && Double.isFinite(value))) {
      throw refused(what + " must be above " + bound, value);
    }
  }

  static void atLeast(double value, double bound, String what) {
    if (!(value >= bound && Double.isFinite(value))) {
      throw refused(what + " must be at least " + bound, value);
    }
  }

  static void within(double value, double low, double high, String what) {
    if (!(value >= low && value <= high)) {
      throw refused(what + " must be from " + low + " to " + high, value);
    }
  }

  /**
   * Words are put together only where something is wrong: most records are made again and again.
   */
  private static IllegalArgumentException refused(String rule, double value) {
    return new IllegalArgumentException(rule + ": " + value);
  }

  static void unique(List<String> ids, String what) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      that(seen.add(id), what + " named twice: " + id);
    }
  }
}
