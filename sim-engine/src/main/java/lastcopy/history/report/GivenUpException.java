package lastcopy.history.report;

/** A history was given up before its end, as its user asked; nothing of it counts. */
public final class GivenUpException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** Without a stack trace: it is thrown often and says nothing but that. */
  public GivenUpException() {
    super("given up", null, false, false);
  }
}
