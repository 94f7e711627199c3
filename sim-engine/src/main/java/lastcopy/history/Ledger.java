package lastcopy.history;

/** Told what happens in a history: losses, and how bare the footage stands over time. */
public interface Ledger {

  /**
   * One loss event: all that is lost at one instant.
   *
   * @param hours when
   * @param bytes how many bytes
   * @param shoots how many shoots, parts as parts
   * @param shootsHit shoots of which any byte is lost
   * @param everything whether no copy then holds any footage
   * @param cause what struck, with what was already down or behind
   */
  void lost(
      double hours, double bytes, double shoots, int shootsHit, boolean everything, Cause cause);

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

  /** Whether stretches of time are wanted; without them a history costs less. */
  boolean wantsTime();
}
