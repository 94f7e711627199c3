package lastcopy.scenario;

import java.util.OptionalDouble;

/**
 * The owner's own time: how long each kind of work takes in hours, each at least 0, and its price.
 *
 * @param pricePerHour what an hour costs, if stated
 * @param repairHours for each drive replaced or copy brought back
 * @param visitHours for each turn of a rotation
 * @param lookHours for each look by the clock
 * @param trialHours for each restore that is tried
 */
public record Work(
    OptionalDouble pricePerHour,
    double repairHours,
    double visitHours,
    double lookHours,
    double trialHours) {

  /** Work that takes no time. */
  public static final Work NONE = new Work(OptionalDouble.empty(), 0, 0, 0, 0);

  /** Checks the ranges. */
  public Work {
    pricePerHour.ifPresent(price -> Require.atLeast(price, 0, "price"));
    Require.atLeast(repairHours, 0, "repair");
    Require.atLeast(visitHours, 0, "visit");
    Require.atLeast(lookHours, 0, "look");
    Require.atLeast(trialHours, 0, "trial");
  }

  /** Whether any of it takes time. */
  public boolean takesTime() {
    return repairHours > 0 || visitHours > 0 || lookHours > 0 || trialHours > 0;
  }
}
