package lastcopy.parallel;

import java.util.List;
import java.util.Queue;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Threads that work through runs of history numbers, each with something of its own to do it with.
 *
 * @param <H> what each thread has of its own, such as histories of a layout
 */
public final class Workers<H> {

  /**
   * Works through a run of history numbers.
   *
   * @param <H> what each thread has of its own
   * @param <T> what comes of it
   */
  @FunctionalInterface
  public interface Task<H, T> {
    /** What so many histories from a number on say; called on any thread. */
    T over(H own, long first, int count);
  }

  private final Supplier<H> own;
  private final ExecutorService threads;
  private final int ahead;
  private final BooleanSupplier givesUp;
  private final Queue<H> idle = new ConcurrentLinkedQueue<>();

  /** What was answered last when it was asked whether to give up. */
  private volatile boolean over;

  private Workers(
      Function<BooleanSupplier, H> own,
      ExecutorService threads,
      int ahead,
      BooleanSupplier within,
      BooleanSupplier givesUp) {
    BooleanSupplier asked = within == null ? () -> over : within;
    this.own = () -> own.apply(asked);
    this.threads = threads;
    this.ahead = ahead;
    this.givesUp =
        () -> {
          if (givesUp.getAsBoolean()) {
            over = true;
          }
          return over;
        };
  }

  /**
   * Workers on threads of a pool.
   *
   * @param own makes what one thread has of its own, given what it may ask, however often, whether
   *     to give up
   * @param count how many of the threads are used
   * @param givesUp asked every so often while work is waited for; it may cost something, so that
   *     the threads are given only what it said last
   */
  public static <H> Workers<H> on(
      ExecutorService threads,
      int count,
      Function<BooleanSupplier, H> own,
      BooleanSupplier givesUp) {
    return new Workers<>(own, threads, count, null, givesUp);
  }

  /** Work is done where it is asked for, unless it is given up. */
  public static <H> Workers<H> alone(Function<BooleanSupplier, H> own, BooleanSupplier givesUp) {
    // Nobody else looks while it works.
    return new Workers<>(own, new SameThread(), 0, givesUp, givesUp);
  }

  /** Threads that end with the process. */
  public static ExecutorService threads(int count) {
    return Executors.newFixedThreadPool(
        count,
        task -> {
          Thread thread = new Thread(task, "histories");
          thread.setDaemon(true);
          return thread;
        });
  }

  /** Runs of history numbers from one on, worked through ahead, handed out in their order. */
  public <T> OrderedChunks<T> chunks(long from, int size, long most, Task<H, T> task) {
    return new OrderedChunks<>(
        threads, ahead, size, most, (first, count) -> () -> work(task, from + first, count));
  }

  private <T> T work(Task<H, T> task, long first, int count) {
    H mine = idle.poll();
    if (mine == null) {
      mine = own.get();
    }
    T seen = task.over(mine, first, count);
    idle.add(mine);
    return seen;
  }

  /** Whether to give up; asks, unless the answer was yes before. */
  public boolean giveUp() {
    return over || givesUp.getAsBoolean();
  }

  /** What a thread has of its own, to ask it something between chunks. */
  public H one() {
    H one = own.get();
    idle.add(one);
    return one;
  }

  private static final class SameThread extends AbstractExecutorService {
    @Override
    public void execute(Runnable work) {
      work.run();
    }

    @Override
    public void shutdown() {
      // There is no thread to end.
    }

    @Override
    public List<Runnable> shutdownNow() {
      return List.of();
    }

    @Override
    public boolean isShutdown() {
      return false;
    }

    @Override
    public boolean isTerminated() {
      return false;
    }

    @Override
    public boolean awaitTermination(long timeout, TimeUnit unit) {
      return true;
    }
  }
}
