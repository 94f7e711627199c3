package lastcopy.cli.host;

/** The exit statuses that other programs may rely on. */
public final class ExitStatus {

  /** Done. */
  public static final int DONE = 0;

  /** A run failed. */
  public static final int FAILED = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** The scenario is wrong; nothing was written. */
  public static final int SCENARIO = 3;

  /**
   * To the launcher only: nothing was printed, and a virtual machine that compiles better is due.
   */
  public static final int BEGIN_ANEW = 75;

  /** Interrupted; what was simulated so far was printed. */
  public static final int INTERRUPTED = 130;

  private ExitStatus() {}
}
