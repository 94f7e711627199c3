package lastcopy.history;

/** A history was given up before its end, as its user asked; nothing of it counts. */
public final class GivenUpException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  GivenUpException() {
    super("given up", null, false, false);
  }
}
