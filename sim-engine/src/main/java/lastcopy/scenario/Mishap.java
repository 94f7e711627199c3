package lastcopy.scenario;

/**
 * A kind of mishap at a place: fire, water, theft.
 *
 * @param id the name in the file, unique at its place
 * @param rate how often it strikes
 * @param takes the chance with which each copy at the place goes, by itself, in [0, 1]
 */
public record Mishap(String id, Rate rate, double takes) {

  /** Checks the ranges. */
  public Mishap {
    Require.text(id, "mishap");
    Require.present(rate, "rate");
    Require.within(takes, 0, 1, "takes");
  }
}
