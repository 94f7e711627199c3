package lastcopy.experiment;

/** Not one history of each layout was done when a simulation had to end; a message for a user. */
public final class NothingSimulatedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final boolean cancelled;

  public NothingSimulatedException(boolean cancelled) {
    super(
        cancelled
            ? "interrupted before one history of each layout was simulated: there is nothing to show"
            : "not one history of each layout was simulated in the time given: more time, fewer"
                + " years or rarer failures would do");
    this.cancelled = cancelled;
  }

  /** Whether somebody stopped it, or the time was over. */
  public boolean cancelled() {
    return cancelled;
  }
}
