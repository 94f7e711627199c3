package lastcopy.cli.host;

/** The command line names a file that must not be written; nothing was. */
public final class RefusedException extends Exception {

  private static final long serialVersionUID = 1L;

  /** A message for a user. */
  RefusedException(String message) {
    super(message);
  }
}
