package lastcopy.simulate;

import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.LongFunction;
import lastcopy.history.History;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * Many histories of each layout of a studio: chunks of history numbers, simulated on threads,
 * merged in their order. Whether a layout stops is decided at the ends of chunks only, on merged
 * chunks only, so that the answer is the same for any number of threads.
 *
 * <p>The first plain histories, from which exposure comes, are the pilot that decides for each
 * layout whether its losses come from plain histories or from biased ones. Biased histories that
 * turn out not to be trusted are dropped, and the plain ones go on.
 */
public final class Simulation {

  /** A layout stops for its precision only after so many losses. */
  static final long LEAST_LOSSES = 30;

  /** Makes histories of a layout that can be biased, by seed. */
  interface Biasables {
    /** Those of a layout. */
    LongFunction<Biasable> of(Layout layout);
  }

  /** The first chunk is not given up before, since the first second goes to the compiler. */
  private static final long LEAST_NANOS = 1_000_000_000L;

  /** A layout is looked at after so many more histories at the earliest. */
  private static final long LOOK_EVERY = 8_192;

  private final Studio studio;
  private final Settings settings;
  private final Progress progress;
  private final Biasables biased;
  private final Thresholds thresholds;
  private final Totals totals;
  private final boolean[] active;
  private final long[] nextLook;
  private final long[] nextReckoned;
  private final double[] told;
  private final Queue<History[]> idle = new ConcurrentLinkedQueue<>();
  private final double[] shareOfOne;
  private final long began;
  private final long deadline;
  private boolean piloted;

  /** Histories that are going are given up. */
  private volatile boolean over;

  private Simulation(Studio studio, Settings settings, Progress progress, Biasables biased) {
    this.studio = studio;
    this.settings = settings;
    this.progress = progress;
    this.biased = biased;
    thresholds = Thresholds.of(studio);
    totals = new Totals(studio, settings, thresholds);
    int n = studio.layouts().size();
    active = new boolean[n];
    Arrays.fill(active, true);
    nextLook = new long[n];
    Arrays.fill(nextLook, LOOK_EVERY);
    nextReckoned = new long[n];
    told = new double[n];
    Arrays.fill(told, Double.POSITIVE_INFINITY);
    shareOfOne = new double[n];
    began = System.nanoTime();
    deadline = began + settings.time().map(Duration::toNanos).orElse(0L);
  }

  /**
   * Simulates every layout of a studio until the settings say stop.
   *
   * @param progress told after each merged chunk; may cancel, then the result is not finished
   * @throws IllegalStateException if a history failed
   * @throws NothingSimulatedException if not one history of each layout was done when the time was
   *     over or somebody stopped it
   */
  public static Comparison run(Studio studio, Settings settings, Progress progress) {
    return run(
        studio, settings, progress, layout -> seed -> new EngineHistories(studio, layout, seed));
  }

  static Comparison run(Studio studio, Settings settings, Progress progress, Biasables biased) {
    return new Simulation(studio, settings, progress, biased).run();
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
      return totals.result(finished);
    } finally {
      over = true;
      threads.shutdownNow();
    }
  }

  /** Whether it came to its own end. */
  private boolean simulate(ExecutorService threads) {
    Ahead<Chunk> chunks =
        new Ahead<>(
            threads,
            settings.threads(),
            Chunk.SIZE,
            settings.histories().orElse(Long.MAX_VALUE),
            this::work);
    while (anyActive() && chunks.hasNext()) {
      boolean first = chunks.handedOut() == 0;
      Optional<Chunk> chunk = chunks.next(() -> givesUp(first));
      if (chunk.isEmpty()) {
        return !progress.cancelled();
      }
      if (chunk.get().count() == 0) {
        throw new NothingSimulatedException(progress.cancelled());
      }
      totals.merge(chunk.get(), active, chunk.get().count());
      look(chunks.handedOut(), !chunks.hasNext());
      if (!piloted && (chunks.handedOut() >= Pilot.HISTORIES || !chunks.hasNext())) {
        piloted = true;
        decide(threads);
      }
      if (progress.cancelled()) {
        return false;
      }
      if (late(deadline)) {
        break;
      }
    }
    return true;
  }

  /**
   * What an interruption or the cap on time finds unfinished is left; the first chunk then hands
   * out what it has by then.
   */
  private boolean givesUp(boolean first) {
    if (first) {
      progress.merged(
          studio.layouts().get(0).id(), 0, Double.POSITIVE_INFINITY, Math.min(1, timeShare()));
      over = progress.cancelled() || late(Math.max(deadline, began + LEAST_NANOS));
      return false;
    }
    over = progress.cancelled() || late(deadline);
    return over;
  }

  private boolean late(long when) {
    return settings.time().isPresent() && System.nanoTime() - when >= 0;
  }

  private boolean anyActive() {
    for (boolean one : active) {
      if (one) {
        return true;
      }
    }
    return false;
  }

  private Callable<Chunk> work(long first, int count) {
    boolean[] now = active.clone();
    return () -> {
      History[] layouts = idle.poll();
      if (layouts == null) {
        layouts = histories();
      }
      Chunk chunk = Chunk.simulate(layouts, now, thresholds, first, count);
      idle.add(layouts);
      return chunk;
    };
  }

  private History[] histories() {
    return studio.layouts().stream()
        .map(layout -> new History(studio, layout, settings.seed()))
        .peek(history -> history.giveUpWhen(() -> over))
        .toArray(History[]::new);
  }

  /** At the end of the pilot: biased histories for each layout that is better off with them. */
  private void decide(ExecutorService threads) {
    for (int l = 0; l < active.length && !progress.cancelled(); l++) {
      LossTally plain = totals.tallies[l];
      Pilot pilot = new Pilot(settings, plain);
      if (active[l] && pilot.triesRare()) {
        Layout layout = studio.layouts().get(l);
        RareRun run = new RareRun(totals.results(l), settings, layout, plain, biased.of(layout));
        long until = System.nanoTime() + (deadline - System.nanoTime()) / (active.length - l + 1);
        RareRun.Watch watch = watch(layout, until);
        Optional<Tuning.Tuned> tuned = run.tune(threads, watch);
        if (tuned.filter(pilot::takesRare).isPresent()) {
          take(l, run.count(tuned.get(), threads, watch));
        } else if (tuned.isEmpty() && !watch.givesUp()) {
          totals.doubts[l] = RareRun.NONE_LOST;
        }
      }
    }
  }

  /** Biased histories that cannot be trusted are kept only where they were asked for. */
  private void take(int l, RareRun.Outcome outcome) {
    totals.doubts[l] = outcome.doubt().orElse(null);
    if (outcome.doubt().isEmpty() || settings.method() == Method.RARE) {
      active[l] = false;
      totals.rare[l] = outcome.tally();
      totals.reached[l] = outcome.reached();
    }
  }

  /**
   * Looks whether a layout is precise enough; seldom, since looking at the data biases a little.
   */
  private void look(long merged, boolean last) {
    for (int l = 0; l < active.length; l++) {
      if (active[l]) {
        LossTally tally = totals.tallies[l];
        boolean piloting = settings.method() == Method.RARE && !piloted;
        if (!piloting && (merged >= nextLook[l] || last)) {
          Figures figures = totals.results(l).figures(tally);
          totals.reached[l] =
              tally.losses >= Math.min(LEAST_LOSSES, tally.histories)
                  && settings.preciseEnough(figures);
          shareOfOne[l] = settings.share(figures) / merged;
          // With a cap on histories every layout goes on to it, as asked.
          active[l] = settings.histories().isPresent() || !totals.reached[l];
          nextLook[l] = merged + Math.max(LOOK_EVERY, merged / 8);
        }
        progress.merged(
            studio.layouts().get(l).id(), merged, reckoned(l, merged), share(l, merged));
      }
    }
  }

  /** The precision to tell: an interval costs as much as many histories, so not for each chunk. */
  private double reckoned(int l, long merged) {
    if (merged >= nextReckoned[l]) {
      Figures figures = totals.results(l).figures(totals.tallies[l]);
      told[l] = figures.anyLoss().relativeHalfWidth();
      nextReckoned[l] = merged + merged / 32;
    }
    return told[l];
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

  private RareRun.Watch watch(Layout layout, long until) {
    return new RareRun.Watch() {
      @Override
      public boolean merged(RareFigures figures) {
        double share = Math.min(1, Math.max(settings.share(figures), timeShare()));
        tell(layout, figures.tally().any.histories(), figures, share);
        return !givesUp();
      }

      @Override
      public boolean givesUp() {
        return progress.cancelled() || late(until);
      }
    };
  }

  private void tell(Layout layout, long histories, Figures figures, double share) {
    progress.merged(layout.id(), histories, figures.anyLoss().relativeHalfWidth(), share);
  }
}
