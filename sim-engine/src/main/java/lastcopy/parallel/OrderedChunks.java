package lastcopy.parallel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import lastcopy.history.report.GivenUpException;

/**
 * Chunks of history numbers, worked through on threads a little ahead, handed out in their order.
 *
 * @param <T> what comes of a chunk
 */
public final class OrderedChunks<T> {

  /** Makes the work of one chunk; called when the chunk is submitted. */
  interface ChunkWork<T> {
    /** The work of so many histories from a number on. */
    Callable<T> chunk(long first, int count);
  }

  private static final long POLL_MILLIS = 100;

  private final ExecutorService threads;
  private final int depth;
  private final int size;
  private final long cap;
  private final ChunkWork<T> work;
  private final Deque<Future<T>> waiting = new ArrayDeque<>();
  private long submitted;
  private long handedOut;
  private int count;

  OrderedChunks(ExecutorService threads, int depth, int size, long cap, ChunkWork<T> work) {
    this.threads = threads;
    this.depth = depth;
    this.size = size;
    this.cap = cap;
    this.work = work;
  }

  public boolean hasNext() {
    return handedOut < cap;
  }

  /**
   * The next chunk, or nothing if the wait for it was given up.
   *
   * @param givesUp asked every so often while a chunk is waited for
   */
  public Optional<T> next(BooleanSupplier givesUp) {
    while (waiting.size() <= depth && submitted < cap) {
      int now = (int) Math.min(size, cap - submitted);
      waiting.add(threads.submit(work.chunk(submitted, now)));
      submitted += now;
    }
    count = (int) Math.min(size, cap - handedOut);
    handedOut += count;
    return await(waiting.remove(), givesUp);
  }

  /** Histories of the chunk that was handed out last. */
  int count() {
    return count;
  }

  /** Histories of all chunks handed out. */
  public long handedOut() {
    return handedOut;
  }

  /** Drops what has not begun. */
  public void drop() {
    waiting.forEach(future -> future.cancel(false));
  }

  private static <T> Optional<T> await(Future<T> chunk, BooleanSupplier givesUp) {
    try {
      while (true) {
        try {
          return Optional.of(chunk.get(POLL_MILLIS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
          if (givesUp.getAsBoolean()) {
            return Optional.empty();
          }
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof GivenUpException) {
        return Optional.empty();
      }
      throw new IllegalStateException("a history failed: " + e.getCause(), e.getCause());
    }
  }
}
