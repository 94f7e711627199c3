package lastcopy.history.plan;

/**
 * The course of a history as long as nothing fails: what each copy holds at any time. Whoever asks
 * moves it to an instant first; it belongs to one thread.
 */
public interface UndisturbedCourse {

  /** From now on it is that of the history of the draws. */
  void begin();

  /**
   * Moves it to an instant.
   *
   * @param at in hours, at least 0
   * @param inclusive whether what changes at that instant has changed
   */
  void moveTo(double at, boolean inclusive);

  /** A copy holds [0, base), and more by a run that is going. */
  double base(int copy);

  /** If a run is going it brings [base, flowTo); if not, this is no more than the base. */
  double flowTo(int copy);

  /** When the run that is going started, in hours. */
  double runStart(int copy);

  /** No position below it stands in one copy only, then or later, as long as nothing fails. */
  double lowestBare();

  /** Hours up to a time in which some footage is in one copy only. */
  double bareHours(double at);

  /** The most that is in one copy only at any instant from one time to another, in bytes. */
  double mostBare(double from, double to);
}
