package lastcopy.story;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.Progress;
import lastcopy.history.History;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * A search through the histories of a layout from number 0 on, on all processors; what is found is
 * taken in the order of the numbers.
 *
 * @param limit how far it goes
 * @param progress told how it gets on; may stop it
 */
record Search(Studio studio, Layout layout, long seed, SearchLimit limit, Progress progress) {

  /**
   * Works through chunks of histories.
   *
   * @param taker takes the result of a chunk and how many histories were searched by then; false
   *     ends the search
   * @return whether it came to its own end: the taker had enough, or the limit was reached
   */
  <T> boolean run(int size, Workers.Task<History, T> task, BiPredicate<T, Long> taker) {
    Clock clock = new Clock();
    int processors = Runtime.getRuntime().availableProcessors();
    ExecutorService threads = Workers.threads(processors);
    try {
      Workers<History> workers =
          Workers.on(
              threads,
              processors,
              this::histories,
              () -> progress.cancelled() || clock.share() >= 1);
      return run(workers, workers.chunks(0, size, limit.histories(), task), taker, clock);
    } finally {
      threads.shutdownNow();
    }
  }

  private <T> boolean run(
      Workers<History> workers, OrderedChunks<T> chunks, BiPredicate<T, Long> taker, Clock clock) {
    boolean wanted = true;
    while (wanted && chunks.hasNext()) {
      Optional<T> chunk = chunks.next(workers::giveUp);
      wanted = chunk.isPresent() && taker.test(chunk.get(), chunks.handedOut());
      if (wanted) {
        double ofAll = (double) chunks.handedOut() / limit.histories();
        double share = Math.min(1, Math.max(ofAll, clock.share()));
        progress.merged(layout.id(), chunks.handedOut(), Double.NaN, share);
      }
      if (chunk.isEmpty() || (wanted && workers.giveUp())) {
        return !progress.cancelled();
      }
    }
    return true;
  }

  private History histories(BooleanSupplier givesUp) {
    History history = new History(studio, layout, seed);
    history.giveUpWhen(givesUp);
    return history;
  }

  /** How much of its time a search has spent. */
  private final class Clock {
    private final long began = System.nanoTime();

    double share() {
      double longest = limit.time().map(t -> (double) t.toNanos()).orElse(Double.POSITIVE_INFINITY);
      return (System.nanoTime() - began) / longest;
    }
  }
}
