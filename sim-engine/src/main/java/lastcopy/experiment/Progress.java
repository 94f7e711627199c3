package lastcopy.experiment;

/**
 * Told how a simulation, or a search through histories, gets on, after each merged chunk; may ask
 * it to stop.
 */
public interface Progress {

  /** Nobody watches. */
  Progress SILENT = (layout, histories, precision, share) -> {};

  /**
   * The state of one layout that is still simulated.
   *
   * @param layout its id
   * @param histories merged so far
   * @param precision relative half-width reached for the chance of any loss, possibly infinite; NaN
   *     in a search, which estimates nothing
   * @param share estimated share of the work done, in [0, 1]
   */
  void merged(String layout, long histories, double precision, double share);

  /** Whether to stop at the next chunk; what was merged is kept and marked unfinished. */
  default boolean cancelled() {
    return false;
  }
}
