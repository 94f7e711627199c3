package lastcopy.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.StandardStream;
import lastcopy.worlds.WorldSimulation;

/** The program: everything but the exit is in testable classes. */
public final class Main {

  private Main() {}

  /** Runs the command line and exits with its status. */
  public static void main(String[] args) {
    // Charts need no screen, and asking for one fails on a server.
    System.setProperty("java.awt.headless", "true");
    boolean quickly = Boolean.getBoolean("lastcopy.quick");
    Interruption interruption = new Interruption();
    int status = ExitStatus.FAILED;
    try {
      interruption.listen();
      status = run(quickly, interruption, args);
    } catch (OutOfMemoryError e) {
      System.err.println("lastcopy: " + Failures.NO_MEMORY);
    } finally {
      interruption.done(status);
    }
    System.exit(status);
  }

  private static int run(boolean quickly, Interruption interruption, String... args) {
    Host host =
        new Host(
            new StandardStream(FileDescriptor.out),
            new StandardStream(FileDescriptor.err),
            terminal(),
            ScenarioLoading::fromFile,
            quickly ? quick(interruption) : WorldSimulation::run,
            () -> LocalDate.now(ZoneId.systemDefault()),
            interruption,
            System.getenv());
    return new Program(host).run(args);
  }

  /** As the launcher starts it first. */
  private static QuickStart quick(Interruption interruption) {
    return new QuickStart(
        WorldSimulation::run,
        () -> {
          interruption.done(ExitStatus.BEGIN_ANEW);
          System.exit(ExitStatus.BEGIN_ANEW);
        },
        () -> ProcessHandle.current().info().totalCpuDuration().map(Duration::toNanos).orElse(0L));
  }

  /** On Java 22 and later a console is there even without a terminal, and can tell. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean terminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
