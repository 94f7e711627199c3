package lastcopy.history.course;

/**
 * The course of a history as long as nothing fails: what each copy holds at any time. Whoever asks
 * moves it to an instant first; it belongs to one thread.
 */
public interface UndisturbedCourse {

  /** From now on it is that of the history of the draws. */
  void begin();

  /** From now on it is that of the history of the draws, but only moved up to a time. */
  default void beginUpTo(double time) {
    begin();
  }

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

  /**
   * Whether a copy holds all that was shot before an instant, up to a position, just before what
   * happens at it; moves the course there.
   */
  default boolean holdsAll(int copy, double below, double at) {
    moveTo(at, false);
    return base(copy) >= Math.min(below, base(0));
  }

  /** Whether what flows may flow at changing rates, since some link is special. */
  default boolean isLinked() {
    return false;
  }

  /** Where it is linked: since when the run that is going does so at its present rate, in hours. */
  default double since(int copy) {
    return runStart(copy);
  }

  /** Where it is linked: that rate in bytes an hour; 0 for what waits or is carried by hand. */
  default double perHour(int copy) {
    throw new IllegalStateException("no link is special");
  }

  /** Where it is linked: when the run that is going ends as things are; infinite if it waits. */
  default double runEnd(int copy) {
    throw new IllegalStateException("no link is special");
  }

  /** Where it is linked: when a first run of a feed had carried all that it began with. */
  default double firstFilled(int copy) {
    return 0;
  }

  /** No position below it stands in one copy only, then or later, as long as nothing fails. */
  double lowestBare();

  /** Hours up to a time in which some footage is in one copy only. */
  double bareHours(double at);

  /** The most that is in one copy only at any instant from one time to another, in bytes. */
  double mostBare(double from, double to);
}
