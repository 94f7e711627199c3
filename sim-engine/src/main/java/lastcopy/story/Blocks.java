package lastcopy.story;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import lastcopy.history.History;
import lastcopy.history.report.GivenUpException;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** Blocks of history numbers, a wave of them at a time on all processors, taken in their order. */
final class Blocks {

  /** What is done with a block of histories; called on any thread. */
  @FunctionalInterface
  interface Work<T> {
    T over(History history, long first, int count);
  }

  /** Takes the result of a block, in the order of the blocks; whether to go on. */
  @FunctionalInterface
  interface Taker<T> {
    boolean take(T part, long searched);
  }

  private final History[] histories;

  Blocks(Studio studio, Layout layout, long seed) {
    histories =
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
            .mapToObj(i -> new History(studio, layout, seed))
            .toArray(History[]::new);
  }

  /**
   * Works from history 0 to the limit.
   *
   * @return whether it came to its own end: the taker had enough, or the limit was reached
   */
  <T> boolean run(SearchLimit limit, int size, Work<T> work, Taker<T> taker, Searching searching) {
    long began = System.nanoTime();
    double longest = limit.time().map(t -> (double) t.toNanos()).orElse(Double.POSITIVE_INFINITY);
    long cap = limit.histories();
    BooleanSupplier givesUp = () -> searching.cancelled() || System.nanoTime() - began >= longest;
    for (History history : histories) {
      history.giveUpWhen(givesUp);
    }
    try {
      return run(cap, size, work, taker, searching, began, longest);
    } catch (GivenUpException e) {
      return !searching.cancelled();
    }
  }

  private <T> boolean run(
      long cap,
      int size,
      Work<T> work,
      Taker<T> taker,
      Searching searching,
      long began,
      double longest) {
    for (long first = 0; first < cap; first += (long) size * histories.length) {
      long start = first;
      List<T> wave =
          IntStream.range(0, histories.length)
              .filter(i -> start + (long) i * size < cap)
              .parallel()
              .mapToObj(i -> block(work, i, start + (long) i * size, size, cap))
              .toList();
      long done = first;
      for (T part : wave) {
        done = Math.min(cap, done + size);
        if (!taker.take(part, done)) {
          return true;
        }
      }
      double spent = (System.nanoTime() - began) / longest;
      searching.searched(done, Math.min(1, Math.max((double) done / cap, spent)));
      if (searching.cancelled()) {
        return false;
      }
      if (spent >= 1) {
        return true;
      }
    }
    return true;
  }

  private <T> T block(Work<T> work, int thread, long first, int size, long cap) {
    return work.over(histories[thread], first, (int) Math.min(size, cap - first));
  }
}
