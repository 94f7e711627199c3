package lastcopy.simulate;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import lastcopy.history.History;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Studio;

/**
 * Many histories of each layout of a studio: chunks of history numbers, simulated on threads,
 * merged in their order. Whether a layout stops is decided at the ends of chunks only, on merged
 * chunks only, so that the answer is the same for any number of threads.
 */
public final class Simulation {

  /** A layout stops for its precision only after so many losses. */
  static final long LEAST_LOSSES = 30;

  /** Means of events and bytes may be this much wider than the chance of any loss. */
  private static final double MEAN_FACTOR = 2.5;

  /** A layout is looked at after so many more histories at the earliest. */
  private static final long LOOK_EVERY = 8_192;

  private static final long POLL_MILLIS = 100;

  private final Studio studio;
  private final Settings settings;
  private final Progress progress;
  private final Thresholds thresholds;
  private final Totals totals;
  private final boolean[] active;
  private final boolean[] reached;
  private final long[] nextLook;
  private final double[] shareOfOne;
  private final long began = System.nanoTime();
  private final Queue<History[]> idle = new ConcurrentLinkedQueue<>();

  private Simulation(Studio studio, Settings settings, Progress progress) {
    this.studio = studio;
    this.settings = settings;
    this.progress = progress;
    thresholds = Thresholds.of(studio);
    totals = new Totals(studio, settings, thresholds);
    int n = studio.layouts().size();
    active = new boolean[n];
    Arrays.fill(active, true);
    reached = new boolean[n];
    nextLook = new long[n];
    Arrays.fill(nextLook, LOOK_EVERY);
    shareOfOne = new double[n];
  }

  /**
   * Simulates every layout of a studio until the settings say stop.
   *
   * @param progress told after each merged chunk; may cancel, then the result is not finished
   * @throws IllegalStateException if a history failed
   */
  public static Comparison run(Studio studio, Settings settings, Progress progress) {
    return new Simulation(studio, settings, progress).run();
  }

  private Comparison run() {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            settings.threads(),
            task -> {
              Thread thread = new Thread(task, "histories");
              thread.setDaemon(true);
              return thread;
            });
    try {
      boolean finished = simulate(threads);
      return totals.result(finished, reached);
    } finally {
      threads.shutdownNow();
    }
  }

  /** Whether it came to its own end. */
  private boolean simulate(ExecutorService threads) {
    long cap = settings.histories().orElse(Long.MAX_VALUE);
    Deque<Future<Chunk>> ahead = new ArrayDeque<>();
    long submitted = 0;
    long merged = 0;
    while (anyActive() && merged < cap) {
      while (ahead.size() <= settings.threads() && submitted < cap) {
        ahead.add(submit(threads, submitted, (int) Math.min(Chunk.SIZE, cap - submitted)));
        submitted += Math.min(Chunk.SIZE, cap - submitted);
      }
      int count = (int) Math.min(Chunk.SIZE, cap - merged);
      Optional<Chunk> chunk = await(ahead.remove(), merged > 0);
      if (chunk.isEmpty()) {
        return !progress.cancelled();
      }
      totals.merge(chunk.get(), active, count);
      merged += count;
      look(merged, merged >= cap);
      if (progress.cancelled()) {
        return false;
      }
      if (timeShare() >= 1) {
        break;
      }
    }
    return true;
  }

  private boolean anyActive() {
    for (boolean one : active) {
      if (one) {
        return true;
      }
    }
    return false;
  }

  private Future<Chunk> submit(ExecutorService threads, long first, int count) {
    boolean[] now = active.clone();
    return threads.submit(
        () -> {
          History[] layouts = idle.poll();
          if (layouts == null) {
            layouts = histories();
          }
          Chunk chunk = Chunk.simulate(layouts, now, thresholds, first, count);
          idle.add(layouts);
          return chunk;
        });
  }

  private History[] histories() {
    return studio.layouts().stream()
        .map(layout -> new History(studio, layout, settings.seed()))
        .toArray(History[]::new);
  }

  /**
   * Waits for a chunk; what an interruption or the cap on time finds unfinished is left, if it may
   * be.
   */
  private Optional<Chunk> await(Future<Chunk> chunk, boolean mayLeave) {
    try {
      while (true) {
        try {
          return Optional.of(chunk.get(POLL_MILLIS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
          if (mayLeave && (progress.cancelled() || timeShare() >= 1)) {
            return Optional.empty();
          }
          if (!mayLeave) {
            progress.merged(
                studio.layouts().get(0).id(),
                0,
                Double.POSITIVE_INFINITY,
                Math.min(1, timeShare()));
          }
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a history failed: " + e.getCause(), e.getCause());
    }
  }

  /**
   * Looks whether a layout is precise enough; seldom, since looking at the data biases a little.
   */
  private void look(long merged, boolean last) {
    for (int l = 0; l < active.length; l++) {
      if (active[l]) {
        LossTally tally = totals.tallies[l];
        Estimate any = Results.anyLoss(tally, settings.confidence());
        if (merged >= nextLook[l] || last) {
          reached[l] = preciseEnough(tally, any);
          shareOfOne[l] = precisionShare(tally, any) / merged;
          // With a cap on histories every layout goes on to it, as asked.
          active[l] = settings.histories().isPresent() || !reached[l];
          nextLook[l] = merged + Math.max(LOOK_EVERY, merged / 8);
        }
        progress.merged(
            studio.layouts().get(l).id(), merged, any.relativeHalfWidth(), share(l, merged));
      }
    }
  }

  /** How far a layout is on the way to its nearest stop. */
  private double share(int layout, long merged) {
    double ofCap =
        settings.histories().isPresent()
            ? (double) merged / settings.histories().getAsLong()
            : shareOfOne[layout] * merged;
    return Math.min(1, Math.max(ofCap, timeShare()));
  }

  private double timeShare() {
    return settings.time().isEmpty()
        ? 0
        : (System.nanoTime() - began) / (double) settings.time().get().toNanos();
  }

  /** Half-widths shrink with the root of the histories; the widest decides. */
  private double precisionShare(LossTally tally, Estimate any) {
    double forMeans = MEAN_FACTOR * settings.precision();
    double confidence = settings.confidence();
    double means =
        Math.min(
            forMeans / Results.events(tally, confidence).relativeHalfWidth(),
            forMeans / Results.bytes(tally, confidence).relativeHalfWidth());
    return square(Math.min(settings.precision() / any.relativeHalfWidth(), means));
  }

  private static double square(double x) {
    return x * x;
  }

  private boolean preciseEnough(LossTally tally, Estimate any) {
    double confidence = settings.confidence();
    double forMeans = MEAN_FACTOR * settings.precision();
    return tally.losses >= Math.min(LEAST_LOSSES, tally.histories)
        && any.relativeHalfWidth() <= settings.precision()
        && Results.events(tally, confidence).relativeHalfWidth() <= forMeans
        && Results.bytes(tally, confidence).relativeHalfWidth() <= forMeans;
  }
}
