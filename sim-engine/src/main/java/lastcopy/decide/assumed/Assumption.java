package lastcopy.decide.assumed;

import java.util.function.DoubleFunction;
import lastcopy.scenario.Studio;

/**
 * A number of a studio that may be otherwise.
 *
 * @param id stable, unique in a studio
 * @param title what it is, a few words
 * @param value what it is now, in its unit
 * @param unit how the value is told
 * @param times the studio with that number times a factor above 0
 */
public record Assumption(
    String id, String title, double value, Unit unit, DoubleFunction<Studio> times) {

  /** How a number is told. */
  public enum Unit {
    /** A chance of at least one event within a year, of a hazard per year. */
    HAZARD_PER_YEAR,
    HOURS,
    BYTES_PER_SECOND,
    /** Of a bit. */
    CHANCE,
    /** What has no unit. */
    FACTOR,
    /** A share more each year. */
    SHARE_PER_YEAR
  }
}
