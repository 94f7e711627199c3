package lastcopy.cli.host;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Ctrl-C: asks the simulation to stop and lets the program print what there is. */
public final class Interruption {

  private static final long PATIENCE_SECONDS = 60;

  private final CountDownLatch printed = new CountDownLatch(1);
  private volatile boolean asked;
  private volatile Optional<Runnable> leave = Optional.empty();
  private volatile int status = ExitStatus.INTERRUPTED;

  /** Listens for the end of the process from now on. */
  public void listen() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::end, "interruption"));
  }

  /** Asks to stop. */
  public void ask() {
    asked = true;
  }

  /** Whether to stop. */
  public boolean asked() {
    return asked;
  }

  /**
   * Waits for somebody: whatever asks to stop meanwhile ends the process at once, as interrupted.
   *
   * @param tidy puts in order what would be left behind, such as a terminal
   */
  public void waits(Runnable tidy) {
    leave = Optional.of(tidy);
  }

  /** There is something to print again. */
  public void waitsNoMore() {
    leave = Optional.empty();
  }

  /** Everything is printed: the process may end with that status, also one that was interrupted. */
  public void done(int with) {
    status = with;
    printed.countDown();
  }

  /** A hook also runs at a normal exit, when there is nothing to wait for. */
  private void end() {
    if (printed.getCount() == 0 && !asked) {
      return;
    }
    ask();
    Optional<Runnable> tidy = leave;
    if (tidy.isPresent()) {
      tidy.get().run();
      Runtime.getRuntime().halt(ExitStatus.INTERRUPTED);
    }
    try {
      if (!printed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("lastcopy: stopped before everything was written");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    Runtime.getRuntime().halt(status);
  }
}
