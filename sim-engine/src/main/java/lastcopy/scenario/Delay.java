package lastcopy.scenario;

import lastcopy.law.Fixed;
import lastcopy.law.Law;

/** How long something goes unnoticed: a delay that follows a law, or looks by the clock. */
public sealed interface Delay permits Delay.Lawful, Delay.Looks {

  /** Seen at once. */
  static Delay none() {
    return new Lawful(new Fixed(0));
  }

  /**
   * A delay that follows a law.
   *
   * @param law in hours
   */
  record Lawful(Law law) implements Delay {
    /** Checks that it is there. */
    public Lawful {
      Require.present(law, "delay");
    }
  }

  /**
   * Somebody looks at P, 2P, 3P ... by the clock; a look at the very instant sees it.
   *
   * @param periodHours P in hours, above 0
   */
  record Looks(double periodHours) implements Delay {
    /** Checks the range. */
    public Looks {
      Require.above(periodHours, 0, "checked_every");
    }

    /** Hours from an instant until the next look, 0 at the very instant of one. */
    public double hoursUntilNext(double from) {
      // The first look is at P: at the start nobody has looked yet.
      return new Periodic(0, periodHours).from(Math.max(from, Double.MIN_VALUE)) - from;
    }
  }

  /** Whether it is zero for certain. */
  default boolean isNone() {
    return this instanceof Lawful lawful && lawful.law() instanceof Fixed f && f.hours() == 0;
  }
}
