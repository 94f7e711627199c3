package lastcopy.decide;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BooleanSupplier;
import java.util.function.ObjIntConsumer;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;

/** Works through rows of tasks on threads, and hands out what comes of them in their order. */
final class Rounds implements AutoCloseable {

  /** Something to do for a candidate. */
  @FunctionalInterface
  interface Task<T> {
    /** Does it, on any thread, asking as often as it likes whether to give up. */
    T run(BooleanSupplier givesUp);
  }

  private final Settings settings;
  private final Progress progress;
  private final ExecutorService threads;
  private final long began = System.nanoTime();

  Rounds(Settings settings, Progress progress) {
    this.settings = settings;
    this.progress = progress;
    threads = Workers.threads(settings.threads());
  }

  /**
   * Works through all of them, unless the time is over or somebody stops it.
   *
   * @param into told what came of a task, by its index; in their order
   * @return whether all were done
   */
  <T> boolean run(List<? extends Task<T>> tasks, ObjIntConsumer<T> into) {
    Workers<BooleanSupplier> workers =
        Workers.on(threads, settings.threads(), asked -> asked, this::isOver);
    OrderedChunks<T> results =
        workers.chunks(0, 1, tasks.size(), (asked, i, one) -> tasks.get((int) i).run(asked));
    while (results.hasNext()) {
      int index = (int) results.handedOut();
      Optional<T> result = workers.giveUp() ? Optional.empty() : results.next(workers::giveUp);
      if (result.isEmpty()) {
        results.drop();
        return false;
      }
      into.accept(result.get(), index);
    }
    return true;
  }

  /** Tells how a candidate gets on; how much is to come is not known, so that time is told. */
  void tell(Contender candidate) {
    progress.merged(candidate.layout.id(), candidate.histories(), Double.NaN, timeShare());
  }

  boolean isOver() {
    return progress.cancelled() || timeShare() >= 1;
  }

  boolean cancelled() {
    return progress.cancelled();
  }

  private double timeShare() {
    return settings
        .time()
        .map(time -> Math.min(1, (System.nanoTime() - began) / (double) time.toNanos()))
        .orElse(0.0);
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
