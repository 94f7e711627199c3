package lastcopy.decide.rule;

/** What is known of two candidates together, beyond the bounds of each. */
@FunctionalInterface
public interface Pairs {

  /** Nothing is known but the bounds of each. */
  Pairs UNKNOWN = (candidate, more, than) -> false;

  /**
   * Whether a candidate surely loses more often than another by no more than an amount.
   *
   * @param more what the chance of the first may be above that of the second, at least 0
   */
  boolean losesAtMost(int candidate, double more, int than);
}
