package lastcopy.decide.rule;

/**
 * How far two candidates may be apart and still count as alike, so that either may be picked: the
 * indifference zone, as factors above 1.
 *
 * @param chance of chances of loss
 * @param cost of costs
 * @param target a chance within this factor of the target, on either side, may be judged either way
 */
public record Zone(double chance, double cost, double target) {

  /** A quarter of a chance, a hundredth of a cost, a tenth at the target. */
  public static final Zone USUAL = new Zone(1.25, 1.01, 1.1);

  /** Checks the ranges. */
  public Zone {
    if (!(chance > 1 && cost > 1 && target > 1)) {
      throw new IllegalArgumentException(
          "factors must be above 1: " + chance + ", " + cost + ", " + target);
    }
  }

  /** A chance that is less than that much lower is no step: part of the zone, the rest is luck. */
  double stepOfChance() {
    return Math.sqrt(Math.sqrt(chance));
  }

  /** The same of costs. */
  double stepOfCost() {
    return Math.sqrt(Math.sqrt(cost));
  }
}
