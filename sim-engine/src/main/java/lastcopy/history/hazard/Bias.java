package lastcopy.history.hazard;

/**
 * The bias of importance sampling, how much likelier a history makes its events: a factor on the
 * hazard of each group of sources, by how many things are wrong at the time. Immutable.
 *
 * <p>Every such history carries the likelihood ratio of its events, so that weighted sums stay
 * unbiased whatever the factors (Heidelberger, Shahabuddin, Nicola, ACM TOMACS 4(2), 1994).
 */
public final class Bias {

  /** Histories as they fall. */
  public static final Bias NONE = new Bias(new double[0][]);

  private final double[][] factors;

  private Bias(double[][] factors) {
    this.factors = factors;
  }

  /**
   * A bias.
   *
   * @param factors by group and level, each above 0 and finite
   * @throws IllegalArgumentException if a factor is out of range
   */
  public static Bias of(double[][] factors) {
    double[][] copy = new double[factors.length][];
    for (int g = 0; g < copy.length; g++) {
      copy[g] = factors[g].clone();
      for (double factor : copy[g]) {
        if (!(factor > 0) || Double.isInfinite(factor)) {
          throw new IllegalArgumentException("a factor must be above 0 and finite: " + factor);
        }
      }
    }
    return new Bias(copy);
  }

  /** Whether histories fall as they are. */
  public boolean isNone() {
    return factors.length == 0;
  }

  /** The factor on the hazard of a group at a level; 1 without a bias. */
  public double factor(int group, int level) {
    return isNone() ? 1 : factors[group][level];
  }
}
