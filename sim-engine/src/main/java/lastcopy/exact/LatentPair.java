package lastcopy.exact;

/**
 * A mirror of two drives that fail visibly, and grow unreadable spots that nobody sees until a
 * scrub, all at constant rates. The first loss is a failure while the other drive is down or has a
 * spot; two spots alone lose nothing, nor does one that comes after the failure.
 *
 * <p>Each drive has at most one spot at a time, grows them and is scrubbed also while the other is
 * down, and comes back without any.
 *
 * @param failsPerHour of each drive in service, above 0
 * @param repairsPerHour of a failed drive, at least 0
 * @param defectsPerHour of each drive in service without a spot, at least 0
 * @param scrubsPerHour of each drive with one, at least 0
 */
public record LatentPair(
    double failsPerHour, double repairsPerHour, double defectsPerHour, double scrubsPerHour) {

  // States: drives in service, then how many of them have a spot; the last is absorbing.
  private static final int BOTH_0 = 0;
  private static final int BOTH_1 = 1;
  private static final int BOTH_2 = 2;
  private static final int ONE_0 = 3;
  private static final int ONE_1 = 4;
  private static final int LOST = 5;

  /** Checks the ranges. */
  public LatentPair {
    Parameters.above(failsPerHour, "failure rate");
    Parameters.atLeastZero(repairsPerHour, "repair rate");
    Parameters.atLeastZero(defectsPerHour, "defect rate");
    Parameters.atLeastZero(scrubsPerHour, "scrub rate");
  }

  /** Its chain; state 0 has both drives good, the last is loss. */
  public MarkovChain chain() {
    double[][] rates = new double[LOST + 1][LOST + 1];
    rates[BOTH_0][ONE_0] = 2 * failsPerHour;
    rates[BOTH_0][BOTH_1] = 2 * defectsPerHour;
    rates[BOTH_1][BOTH_0] = scrubsPerHour;
    rates[BOTH_1][BOTH_2] = defectsPerHour;
    rates[BOTH_1][ONE_0] = failsPerHour; // the drive with the spot itself fails
    rates[BOTH_1][LOST] = failsPerHour;
    rates[BOTH_2][BOTH_1] = 2 * scrubsPerHour;
    rates[BOTH_2][LOST] = 2 * failsPerHour;
    rates[ONE_0][BOTH_0] = repairsPerHour;
    rates[ONE_0][ONE_1] = defectsPerHour;
    rates[ONE_0][LOST] = failsPerHour;
    rates[ONE_1][BOTH_1] = repairsPerHour;
    rates[ONE_1][ONE_0] = scrubsPerHour;
    rates[ONE_1][LOST] = failsPerHour;
    return new MarkovChain(rates);
  }

  /**
   * The chance of loss by a time, both drives good at the start.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    return chain().chance(0, LOST, hours);
  }
}
