package lastcopy.simulate.rare;

import java.util.List;
import java.util.Queue;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import lastcopy.parallel.OrderedChunks;

/** Threads that simulate biased histories of one layout, each with histories of its own. */
public final class Workers {

  /** Simulates a run of history numbers and tells what it saw. */
  @FunctionalInterface
  interface Task<T> {
    /** What so many histories from a number on say. */
    T simulate(Biasable histories, long first, int count);
  }

  private final Supplier<Biasable> histories;
  private final ExecutorService threads;
  private final int count;
  private final BooleanSupplier givesUp;
  private volatile boolean over;
  private BooleanSupplier within = () -> over;
  private final Queue<Biasable> idle = new ConcurrentLinkedQueue<>();

  /**
   * A crew.
   *
   * @param histories makes those of one thread
   * @param count how many of the threads are used
   * @param givesUp asked every so often while work is waited for; it may cost something, so that
   *     within histories only what it said is looked at
   */
  Workers(
      Supplier<Biasable> histories, ExecutorService threads, int count, BooleanSupplier givesUp) {
    this.histories = () -> givenUpWhen(within, histories.get());
    this.threads = threads;
    this.count = count;
    this.givesUp =
        () -> {
          if (givesUp.getAsBoolean()) {
            over = true;
          }
          return over;
        };
  }

  private static Biasable givenUpWhen(BooleanSupplier asked, Biasable one) {
    one.giveUpWhen(asked);
    return one;
  }

  /** Work is done where it is asked for. */
  static Workers alone(Supplier<Biasable> histories) {
    return alone(histories, () -> false);
  }

  /** Work is done where it is asked for, unless it is given up. */
  public static Workers alone(Supplier<Biasable> histories, BooleanSupplier givesUp) {
    Workers crew = new Workers(histories, new SameThread(), 1, givesUp);
    crew.within = givesUp; // nobody else looks while it works
    return crew;
  }

  /** Runs of history numbers from one on, simulated ahead, handed out in their order. */
  <T> OrderedChunks<T> chunks(long from, int size, long most, Task<T> task) {
    return new OrderedChunks<>(
        threads, count - 1, size, most, (first, n) -> () -> simulate(task, from + first, n));
  }

  private <T> T simulate(Task<T> task, long first, int n) {
    Biasable mine = idle.poll();
    if (mine == null) {
      mine = histories.get();
    }
    T seen = task.simulate(mine, first, n);
    idle.add(mine);
    return seen;
  }

  BooleanSupplier givesUp() {
    return givesUp;
  }

  /** Histories to ask for groups and levels. */
  Biasable one() {
    Biasable one = histories.get();
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
