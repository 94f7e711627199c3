package lastcopy.cli;

/** The program: everything but the exit is in testable classes. */
public final class Main {

  private Main() {}

  /** Runs the command line and exits with its status. */
  public static void main(String[] args) {
    System.exit(2);
  }
}
