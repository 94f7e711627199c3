package lastcopy.exact;

/**
 * A group whose rebuilds read the other drives: one that ends while no redundancy is left loses
 * something with a chance; one that ends with some left reads around what it cannot read.
 *
 * @param group the group, which survives m, at least 1
 * @param chance that a rebuild without redundancy meets at least one unreadable bit, in [0, 1]
 */
public record UnreadableRebuilds(ParityGroup group, double chance) {

  /** Checks the ranges. */
  public UnreadableRebuilds {
    Parameters.that(group.survives() >= 1, "a group without redundancy has no rebuild", 0);
    Parameters.that(chance >= 0 && chance <= 1, "chance must be in [0, 1]", chance);
  }

  /**
   * The chance of at least one unreadable bit, 1 − e^(−8·B·e).
   *
   * @param bytes B, what is read, at least 0
   * @param perBit e, the chance that a bit cannot be read, at least 0
   */
  public static double unreadable(double bytes, double perBit) {
    Parameters.atLeastZero(bytes, "bytes");
    Parameters.atLeastZero(perBit, "read errors");
    return -Math.expm1(-8 * bytes * perBit);
  }

  /** Its chain: state k has k drives down; the last state, m + 1, is any loss. */
  public MarkovChain chain() {
    double[][] rates = group.rates();
    int bare = group.survives();
    rates[bare][bare + 1] += chance * rates[bare][bare - 1];
    rates[bare][bare - 1] *= 1 - chance;
    return new MarkovChain(rates);
  }

  /**
   * The chance of any loss by a time, all drives good at the start.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    return chain().chance(0, group.survives() + 1, hours);
  }
}
