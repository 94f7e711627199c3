package lastcopy.scenario;

/**
 * When shoots come and how large they are at first.
 *
 * @param everyHours the spacing (even) or the mean spacing (random) in hours, above 0; the first
 *     even shoot comes one spacing after the start
 * @param sizeBytes the size of a shoot at time 0 before growth, above 0
 * @param spacing even, or a Poisson process of the same mean rate
 */
public record Shoots(double everyHours, double sizeBytes, Spacing spacing) {

  /** How shoots are spread over time. */
  public enum Spacing {
    /** At P, 2P, 3P ... */
    EVEN,
    /** A Poisson process of mean rate 1/P. */
    RANDOM
  }

  /** Checks the ranges. */
  public Shoots {
    Require.above(everyHours, 0, "spacing of shoots");
    Require.above(sizeBytes, 0, "size of a shoot");
    Require.that(spacing != null, "spacing must be even or random");
  }
}
