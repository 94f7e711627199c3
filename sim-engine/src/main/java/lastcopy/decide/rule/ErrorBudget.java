package lastcopy.decide.rule;

/**
 * How the chance of a wrong pick is spent: by Boole's inequality over what is estimated, over all
 * candidates and over all looks at each, of which the k-th has the part 1/(k·(k + 1)), so that any
 * number of looks, at whatever was seen before, spends no more than all of it.
 *
 * @param total the chance that any interval fails at any look, in (0, 1)
 * @param candidates how many there are, at least 1
 */
public record ErrorBudget(double total, int candidates) {

  /** What is estimated of a candidate, and its part of the budget. */
  public enum Of {
    /** Its chance of loss from histories as they fall. */
    PLAIN(0.4),
    /** The same from biased histories. */
    BIASED(0.2),
    /** The same from histories that are biased anew, where the first were no good. */
    BIASED_ANEW(0.2),
    /** What it costs. */
    COST(0.2);

    private final double part;

    Of(double part) {
      this.part = part;
    }
  }

  /** Checks the ranges. */
  public ErrorBudget {
    if (!(total > 0 && total < 1) || candidates < 1) {
      throw new IllegalArgumentException("no budget: " + total + " for " + candidates);
    }
  }

  /**
   * The confidence of the two-sided interval of one candidate at one look.
   *
   * @param look how many looks there were before, from 0
   */
  public double confidence(Of what, int look) {
    return 1 - total * what.part / candidates / ((look + 1.0) * (look + 2.0));
  }
}
