package lastcopy.scenario;

import java.util.OptionalDouble;
import lastcopy.law.Law;

/**
 * How a replaced drive of a set becomes whole again.
 *
 * @param time how long it takes
 * @param reads what it reads of the other drives
 */
public record Rebuild(Time time, Reads reads) {

  /** Checks that nothing is missing. */
  public Rebuild {
    Require.present(time, "rebuild");
    Require.present(reads, "rebuild_reads");
  }

  /** What a rebuild reads, which decides its time at a rate; only footage can be lost by it. */
  public enum Reads {
    /** The whole drive. */
    ALL,
    /** The part in use when the rebuild starts. */
    USED
  }

  /** How long a rebuild takes. */
  public sealed interface Time permits ByLaw, ByRate {}

  /**
   * A law in hours.
   *
   * @param law of the time from the start of the rebuild to its end
   */
  public record ByLaw(Law law) implements Time {
    /** Checks that it is there. */
    public ByLaw {
      Require.present(law, "rebuild");
    }
  }

  /**
   * Bytes over a rate.
   *
   * @param bytesPerSecond the rate as stated, taken as it is; empty for the slowest of drive and
   *     box
   * @param dailyWorkTakes the share of the rate that daily work takes away, in [0, 1)
   */
  public record ByRate(OptionalDouble bytesPerSecond, double dailyWorkTakes) implements Time {
    /** Checks the ranges. */
    public ByRate {
      bytesPerSecond.ifPresent(rate -> Require.above(rate, 0, "rebuild"));
      Require.that(
          dailyWorkTakes >= 0 && dailyWorkTakes < 1,
          "daily_work_takes must be from 0 to below 1: " + dailyWorkTakes);
    }
  }
}
