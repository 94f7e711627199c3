package lastcopy.scenario;

import java.util.OptionalDouble;

/**
 * What the studio shoots.
 *
 * @param onHandBytes footage at the start, at least 0; it counts as shot at time 0
 * @param shoots when shoots come and how large the first is
 * @param growthPerYear yearly growth of a shoot's size as a fraction, above −1: a shoot at time t
 *     has size x·(1 + growth)^(t/year)
 * @param keepHours how long footage counts after it was shot, if it ages out
 * @param clipBytes what one unreadable spot costs, above 0
 * @param worthPerShoot what losing one shoot costs, if the scenario says so
 */
public record Footage(
    double onHandBytes,
    Shoots shoots,
    double growthPerYear,
    OptionalDouble keepHours,
    double clipBytes,
    OptionalDouble worthPerShoot) {

  /** What one unreadable spot costs where the scenario does not say: 1 GB. */
  public static final double DEFAULT_CLIP_BYTES = Units.GB;

  /** Checks the ranges. */
  public Footage {
    Require.atLeast(onHandBytes, 0, "on_hand");
    Require.present(shoots, "shoots");
    Require.that(
        growthPerYear > -1 && Double.isFinite(growthPerYear),
        "growth must be above -100 %/year: " + growthPerYear);
    Require.above(clipBytes, 0, "clip");
    keepHours.ifPresent(hours -> Require.above(hours, 0, "keep_for"));
    worthPerShoot.ifPresent(worth -> Require.atLeast(worth, 0, "worth"));
  }

  /** Makes footage with the defaults of the scenario file. */
  public static FootageBuilder builder(Shoots shoots) {
    return new FootageBuilder(shoots);
  }
}
