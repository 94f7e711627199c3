package lastcopy.history.report;

/** Told what a history costs: losses, how bare the footage stands over time, and outages. */
public interface Ledger {

  /** Some footage is lost. */
  void lost(Loss loss);

  /**
   * A stretch of time in one state.
   *
   * @param hours how long
   * @param bareHours hours of it in which some footage is in one copy only
   * @param fragileHours hours of it in which the next failure of a drive or service loses some
   * @param downHours hours of it without hardware for the working copy
   * @param refillHours hours of it until the working copy's refill is complete
   * @param mostBareBytes the most that stood in one copy only
   */
  void passed(
      double hours,
      double bareHours,
      double fragileHours,
      double downHours,
      double refillHours,
      double mostBareBytes);

  /**
   * Work at the working copy, interrupted by something, is whole again, or the horizon has come.
   *
   * @param cause what interrupted it, without what was down or behind
   * @param workHours from the interruption until work could go on
   * @param wholeHours from the interruption until everything that was saved was back; NaN if
   *     nothing was, so that nothing came back
   */
  void recovered(Cause cause, double workHours, double wholeHours);

  /**
   * A biased history makes an unlikely draw that may lose footage.
   *
   * @param channel what kind of draw, below {@code History.channels}
   * @param chance the chance, without a bias and given the past, that it comes out badly
   */
  default void risked(int channel, double chance) {}

  /** Such a draw has come out badly. */
  default void cameOutBadly(int channel) {}

  /**
   * What a history cost, told at its end where time is wanted and the studio prices anything.
   *
   * @param all valid during the call only
   */
  default void paid(Account all) {}

  /**
   * Whether stretches of time, recoveries and money are wanted; without them a history costs less.
   */
  boolean wantsTime();
}
