package lastcopy.simulate;

import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.LongFunction;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Layout;
import lastcopy.scenario.NoWayToLose;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Chunk;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.Goal;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.Allowance;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Pilot;
import lastcopy.simulate.rare.RareRun;
import lastcopy.simulate.rare.Tuning;

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

  /** Histories of a layout of which the scenario says that it cannot lose anything. */
  private static final long SAFE = 1 << 18;

  /** Histories of a layout of which even biased ones lose nothing, while no other does. */
  private static final long NEVER_SEEN = 1 << 22;

  private static final String NO_TIME =
      "There was no time to find out how to make its losses more frequent, so its figures come from"
          + " histories as they fall; more time (--time) would help.";

  private final Studio studio;
  private final Settings settings;
  private final Goal goal;
  private final Progress progress;
  private final Biasables biased;
  private final Thresholds thresholds;
  private final Totals totals;
  private final boolean[] active;

  /** Those that chunks to come simulate; threads look at it. */
  private volatile boolean[] simulated;

  private final long[] nextLook;
  private final long[] nextReckoned;
  private final double[] told;
  private final double[] shareOfOne;
  private final boolean[] safe;
  private final boolean[] neverLost;
  private final long began;
  private final long deadline;
  private boolean piloted;

  /** Histories that are going are given up. */
  private volatile boolean over;

  private Simulation(Studio studio, Settings settings, Progress progress, Biasables biased) {
    this.studio = studio;
    this.settings = settings;
    goal = Goal.of(settings);
    this.progress = progress;
    this.biased = biased;
    thresholds = Thresholds.of(studio);
    totals = new Totals(studio, settings, thresholds);
    int n = studio.layouts().size();
    active = new boolean[n];
    Arrays.fill(active, true);
    simulated = active.clone();
    nextLook = new long[n];
    Arrays.fill(nextLook, LOOK_EVERY);
    nextReckoned = new long[n];
    told = new double[n];
    Arrays.fill(told, Double.POSITIVE_INFINITY);
    shareOfOne = new double[n];
    safe = new boolean[n];
    neverLost = new boolean[n];
    for (int l = 0; l < n; l++) {
      safe[l] = NoWayToLose.in(studio, studio.layouts().get(l));
    }
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
    ExecutorService threads = Workers.threads(settings.threads());
    try {
      boolean finished = simulate(threads);
      remark();
      return totals.result(finished);
    } finally {
      over = true;
      threads.shutdownNow();
    }
  }

  /** Whether it came to its own end. */
  private boolean simulate(ExecutorService threads) {
    // Whether to give up is asked below, since the first chunk is waited for and ends early.
    Workers<History[]> workers =
        Workers.on(threads, settings.threads(), asked -> histories(), () -> false);
    OrderedChunks<Chunk> chunks =
        workers.chunks(
            0,
            Chunk.SIZE,
            settings.histories().orElse(Long.MAX_VALUE),
            (layouts, first, count) ->
                Chunk.simulate(layouts, simulated, thresholds, first, count));
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
      simulated = active.clone();
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

  private History[] histories() {
    return studio.layouts().stream()
        .map(layout -> new History(studio, layout, settings.seed()))
        .peek(history -> history.giveUpWhen(() -> over))
        .toArray(History[]::new);
  }

  /** At the end of the pilot: biased histories for each layout that is better off with them. */
  private void decide(ExecutorService threads) {
    for (int l = 0; l < active.length && !progress.cancelled(); l++) {
      if (triesRare(l)) {
        int claimants = claimants(l);
        long now = System.nanoTime();
        long until = now + (deadline - now) / claimants;
        // A lone layout's plain histories have no share of their own to fall back on.
        long giveWay = claimants == 1 ? now + (until - now) / 2 : until;
        decide(l, threads, allowed(until, giveWay));
      }
    }
  }

  private boolean triesRare(int l) {
    return active[l] && !safe[l] && pilot(l).triesRare();
  }

  private Pilot pilot(int l) {
    return new Pilot(settings, totals.tallies[l]);
  }

  /** How many share the time that is left: this layout, those to come, and plain ones as one. */
  private int claimants(int layout) {
    int claim = 1;
    boolean plain = false;
    for (int l = 0; l < active.length; l++) {
      boolean toCome = l > layout && triesRare(l);
      claim += toCome ? 1 : 0;
      plain |= l != layout && active[l] && !toCome && !safe[l];
    }
    return claim + (plain ? 1 : 0);
  }

  private void decide(int l, ExecutorService threads, Allowance allowed) {
    Layout layout = studio.layouts().get(l);
    Pilot pilot = pilot(l);
    RareRun run =
        new RareRun(
            totals.results(l), settings, layout, totals.tallies[l], pilot, biased.of(layout));
    Optional<Tuning.Tuned> tuned = run.tune(threads, allowed);
    if (tuned.isPresent()) {
      if (pilot.takesRare(tuned.get())) {
        run.count(tuned.get(), threads, allowed).ifPresent(outcome -> take(l, outcome));
      }
    } else if (!allowed.givesWay().getAsBoolean()) {
      neverLost[l] = !progress.cancelled();
    } else {
      note(l, NO_TIME);
    }
  }

  /** Biased histories that cannot be trusted are kept only where they were asked for. */
  private void take(int l, RareRun.Outcome outcome) {
    if (outcome.doubt().isEmpty() || settings.method() == Method.RARE) {
      active[l] = false;
      totals.rare[l] = outcome.tally();
      totals.reached[l] = outcome.reached();
      totals.caveats[l] = totals.caveats[l].doubted(outcome.doubt().stream().toList());
    } else {
      note(l, Caveats.DROPPED + outcome.doubt().get());
    }
  }

  private void note(int l, String sentence) {
    totals.caveats[l] = totals.caveats[l].note(sentence);
  }

  /** What is said of layouts that lost nothing depends on whether they still did not at the end. */
  private void remark() {
    for (int l = 0; l < active.length; l++) {
      if (safe[l]) {
        note(l, Caveats.CANNOT_LOSE);
      } else if (neverLost[l] && totals.tallies[l].losses() == 0) {
        note(l, Caveats.NEVER_LOST);
      } else if (!piloted && settings.method() == Method.RARE) {
        note(l, NO_TIME);
      }
    }
  }

  /** Whether more histories of a layout that lost nothing would tell nothing new. */
  private boolean isIdle(int l, long merged) {
    long enough = safe[l] ? SAFE : neverLost[l] ? NEVER_SEEN : Long.MAX_VALUE;
    return merged >= enough && totals.tallies[l].losses() == 0;
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
              tally.losses() >= Math.min(LEAST_LOSSES, tally.histories())
                  && goal.isReached(figures);
          shareOfOne[l] = goal.share(figures) / merged;
          // With a cap on histories every layout goes on to it, as asked.
          boolean idle = isIdle(l, merged);
          totals.reached[l] |= idle && safe[l];
          boolean enough = totals.reached[l] || idle;
          active[l] = settings.histories().isPresent() || !enough;
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

  private Allowance allowed(long until, long giveWay) {
    return new Allowance(
        new WithTime(), () -> progress.cancelled() || late(until), () -> late(giveWay));
  }

  /** Tells of biased histories how far they are also by the time, and never less than before. */
  private final class WithTime implements Progress {
    private double most;

    @Override
    public void merged(String layout, long histories, double precision, double share) {
      most = Math.max(most, Math.min(1, Math.max(share, timeShare())));
      progress.merged(layout, histories, precision, most); // the second stage begins anew
    }
  }
}
