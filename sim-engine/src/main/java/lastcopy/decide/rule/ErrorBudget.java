package lastcopy.decide.rule;

/**
 * How the chance of a wrong pick is spent: by Boole's inequality over what is estimated, over all
 * candidates, over all pairs of them that are compared and over all looks at each, of which the
 * k-th has the part 1/(k·(k + 1)), so that any number of looks, at whatever was seen before, spends
 * no more than all of it.
 *
 * @param total the chance that any interval fails at any look, in (0, 1)
 * @param candidates how many there are, at least 1
 */
public record ErrorBudget(double total, int candidates) {

  /** What histories as they fall tell of any two candidates. */
  private static final double PLAIN_PAIRS = 0.05;

  /** What biased ones tell of them, with either bias of either. */
  private static final double BIASED_PAIRS = 0.05;

  private static final int BIASES_OF_A_PAIR = 4;

  /** What is estimated of a candidate, and its part of the budget. */
  public enum Of {
    /** Its chance of loss from histories as they fall. */
    PLAIN(0.35),
    /** The same from biased histories. */
    BIASED(0.2),
    /** The same from histories that are biased anew, where the first were no good. */
    BIASED_ANEW(0.15),
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
    return 1 - total * what.part / candidates * ofLook(look);
  }

  /** The error rate of one comparison of two candidates by histories as they fall. */
  public double ofPlainPair(int look) {
    return total * PLAIN_PAIRS / pairs() * ofLook(look);
  }

  /** The same by biased histories, of one bias of each. */
  public double ofBiasedPair(int look) {
    return total * BIASED_PAIRS / pairs() / BIASES_OF_A_PAIR * ofLook(look);
  }

  /** Each against each other, either way. */
  private double pairs() {
    return Math.max(1.0, candidates * (candidates - 1.0));
  }

  private static double ofLook(int look) {
    return 1 / ((look + 1.0) * (look + 2.0));
  }
}
