package lastcopy.story;

/** Told how a search through histories gets on; may ask it to stop. */
public interface Searching {

  /** Nobody watches. */
  Searching SILENT = (histories, share) -> {};

  /**
   * The state of the search.
   *
   * @param histories searched so far
   * @param share of the histories or of the time that it may take, in [0, 1]
   */
  void searched(long histories, double share);

  /** Whether to stop; what was found by then counts. */
  default boolean cancelled() {
    return false;
  }
}
