package lastcopy.interval;

/**
 * How much more often, at most, one of two things happens than another in histories that share
 * their luck. What happens to both, however often, adds nothing to the width, so that few histories
 * tell near twins alike.
 */
public final class PairedExcess {

  private PairedExcess() {}

  /**
   * The exact upper limit of how often the first happens alone, less the exact lower limit of how
   * often the second does (Clopper and Pearson, as in {@link Proportions}), each with half of the
   * error rate (Boole's inequality).
   *
   * @param onlyFirst histories in which the first happens and the second does not
   * @param onlySecond the reverse
   * @param n all histories, at least 1
   * @param errorRate the chance that the limit is too low, in (0, 1)
   * @return in [-1, 1]
   * @throws IllegalArgumentException if the counts do not fit together
   */
  public static double high(long onlyFirst, long onlySecond, long n, double errorRate) {
    Proportions.check(onlyFirst + onlySecond, n);
    return Proportions.upper(onlyFirst, n, errorRate / 2)
        - Proportions.lower(onlySecond, n, errorRate / 2);
  }
}
