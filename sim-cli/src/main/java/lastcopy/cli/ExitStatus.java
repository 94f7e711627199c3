package lastcopy.cli;

/** The exit statuses that other programs may rely on. */
final class ExitStatus {

  /** Done. */
  static final int DONE = 0;

  /** A run failed. */
  static final int FAILED = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** The scenario is wrong; nothing was written. */
  static final int SCENARIO = 3;

  /**
   * To the launcher only: nothing was printed, and a virtual machine that compiles better is due.
   */
  static final int BEGIN_ANEW = 75;

  /** Interrupted; what was simulated so far was printed. */
  static final int INTERRUPTED = 130;

  private ExitStatus() {}
}
