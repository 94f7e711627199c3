package lastcopy.worlds;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.NothingSimulatedException;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;
import lastcopy.scenario.NoWayToLose;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.Goal;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.Allowance;
import lastcopy.simulate.rare.Doubt;
import lastcopy.simulate.rare.EngineHistories;
import lastcopy.simulate.rare.Pilot;
import lastcopy.simulate.rare.RareRun;
import lastcopy.simulate.rare.RareTally;
import lastcopy.simulate.rare.Tuning;

/**
 * Many histories of each layout of a studio, in each of many possible worlds: sweep by sweep, until
 * the settings say stop. Whether a layout stops is decided between sweeps only, on merged worlds
 * only, so that the answer is the same for any number of threads.
 *
 * <p>The first sweep is the pilot that says for each layout whether its losses come from plain
 * histories or from biased ones. A bias is tuned once, in a world gloomier than most, and is used
 * in every world; weights are those of the world's own hazards, so every world stays unbiased.
 */
public final class WorldSimulation {

  /** Rows of worlds, unless asked otherwise: with 16 replicates, 2,048 worlds. */
  private static final int ROWS = 128;

  /** A layout stops for its precision only after so many effective losses. */
  private static final double LEAST_LOSSES = 30;

  /** Where hazards are lower a factor is never too large, so it is tuned where they are high. */
  private static final double GLOOMY = 1;

  /** Histories of a layout that cannot lose anything, and of one of which none did. */
  private static final long SAFE = 1 << 18;

  private static final long NEVER_SEEN = 1 << 22;

  /** Biased histories after which they are trusted or dropped. */
  private static final long PROVEN = 1 << 16;

  private static final double PROOF = 0.1;

  private final PossibleStudios studios;
  private final Settings settings;
  private final Progress progress;
  private final Thresholds thresholds;
  private final Goal goal;
  private final WorldPoints points;
  private final WorldFigures figures;
  private final List<LayoutRun> runs = new ArrayList<>();
  private final int rows;
  private final long began = System.nanoTime();

  private WorldSimulation(PossibleStudios studios, Settings settings, Progress progress) {
    this.studios = studios;
    this.settings = settings;
    this.progress = progress;
    Studio central = studios.central();
    thresholds = Thresholds.of(central);
    goal = Goal.of(settings);
    points = new WorldPoints(studios.unknowns().size(), settings.seed());
    figures = new WorldFigures(studios, settings);
    for (int l = 0; l < central.layouts().size(); l++) {
      runs.add(new LayoutRun(l, central.layouts().get(l), thresholds));
    }
    int replicates = WorldPoints.REPLICATES;
    rows =
        settings.worlds().isPresent()
            ? (settings.worlds().getAsInt() + replicates - 1) / replicates
            : ROWS;
  }

  /**
   * Simulates every layout of a studio until the settings say stop; where all is known, as {@link
   * Simulation#run} does.
   *
   * @param progress told how it gets on; may cancel, then the result is not finished
   * @throws IllegalStateException if a history failed
   * @throws NothingSimulatedException if not one world of each replicate was done when the time was
   *     over or somebody stopped it
   */
  public static Comparison run(PossibleStudios studios, Settings settings, Progress progress) {
    return studios.isOne()
        ? Simulation.run(studios.central(), settings, progress)
        : new WorldSimulation(studios, settings, progress).run();
  }

  private Comparison run() {
    ExecutorService threads = Workers.threads(settings.threads());
    try {
      boolean goesOn = true;
      for (int number = 0; goesOn && anyActive(); number++) {
        goesOn = sweep(new Sweep(number, rows, most()), threads);
        look(new Sweep(number + 1, rows, most()));
        if (number == 0 && goesOn) {
          runs.forEach(run -> decide(run, threads));
        }
      }
      runs.forEach(this::remark);
      return figures.comparison(runs, !progress.cancelled());
    } finally {
      threads.shutdownNow();
    }
  }

  private long most() {
    return settings.histories().orElse(Long.MAX_VALUE);
  }

  private boolean anyActive() {
    return runs.stream().anyMatch(run -> run.active);
  }

  private boolean over() {
    return progress.cancelled() || timeShare() >= 1;
  }

  private double timeShare() {
    double whole = settings.time().map(Duration::toNanos).orElse(Long.MAX_VALUE);
    return (System.nanoTime() - began) / whole;
  }

  /** Visits worlds row by row; only whole rows count. False if it had to end. */
  private boolean sweep(Sweep sweep, ExecutorService threads) {
    List<LayoutRun> active = runs.stream().filter(run -> run.active).toList();
    WorldTask task = new WorldTask(studios, thresholds, settings.seed(), sweep.number() == 0);
    Workers<BooleanSupplier> workers =
        Workers.on(threads, settings.threads(), asked -> asked, this::over);
    OrderedChunks<Object[]> worlds =
        workers.chunks(
            0, 1, (long) sweep.visited() * WorldPoints.REPLICATES, orders(sweep, active, task));
    for (int turn = 0; turn < sweep.visited(); turn++) {
      List<Object[]> row = row(worlds, workers);
      if (row.size() < WorldPoints.REPLICATES) {
        worlds.drop();
        if (turn == 0 && sweep.number() == 0) {
          throw new NothingSimulatedException(progress.cancelled());
        }
        return false;
      }
      add(sweep.row(turn), row, active);
      active.forEach(this::tell);
    }
    return true;
  }

  private List<Object[]> row(OrderedChunks<Object[]> worlds, Workers<?> workers) {
    List<Object[]> row = new ArrayList<>();
    while (row.size() < WorldPoints.REPLICATES && !workers.giveUp()) {
      Optional<Object[]> world = worlds.next(workers::giveUp);
      if (world.isEmpty()) {
        break;
      }
      row.add(world.get());
    }
    return row;
  }

  /** What is to be simulated in each world of a sweep, fixed before its threads begin. */
  private Workers.Task<BooleanSupplier, Object[]> orders(
      Sweep sweep, List<LayoutRun> active, WorldTask task) {
    List<WorldTask.Order[]> all = new ArrayList<>();
    for (int world = 0; world < sweep.visited() * WorldPoints.REPLICATES; world++) {
      int row = sweep.row(world / WorldPoints.REPLICATES);
      int replicate = world % WorldPoints.REPLICATES;
      all.add(
          active.stream()
              .map(run -> order(sweep, run, row, replicate))
              .toArray(WorldTask.Order[]::new));
    }
    return (asked, world, count) ->
        task.simulate(
            points.point(
                (int) world % WorldPoints.REPLICATES,
                sweep.row((int) world / WorldPoints.REPLICATES)),
            all.get((int) world),
            asked);
  }

  private WorldTask.Order order(Sweep sweep, LayoutRun run, int row, int replicate) {
    long first = sweep.firstHistory(row, replicate);
    int histories = sweep.histories(run.isBiased(), run.counted());
    return new WorldTask.Order(run.index, run.mixture().orElse(null), first, histories);
  }

  private void add(int row, List<Object[]> worlds, List<LayoutRun> active) {
    for (int replicate = 0; replicate < worlds.size(); replicate++) {
      double[] point = points.point(replicate, row);
      for (int i = 0; i < active.size(); i++) {
        Object tally = worlds.get(replicate)[i];
        if (tally instanceof LossTally plain) {
          active.get(i).add(row, replicate, point, plain);
        } else {
          active.get(i).add(row, replicate, point, (RareTally) tally);
        }
      }
    }
  }

  private void tell(LayoutRun run) {
    double share = Math.max(run.share, Math.min(1, timeShare()));
    progress.merged(run.layout.id(), run.counted(), run.precision, share);
  }

  /** Looks, between sweeps, whether layouts are precise enough. */
  private void look(Sweep next) {
    for (LayoutRun run : runs) {
      if (run.active) {
        Figures now = figures.goal(run);
        boolean enough = run.effective() >= LEAST_LOSSES;
        run.precision = now.anyLoss().relativeHalfWidth();
        run.share = Math.min(1, goal.share(now));
        run.reached = enough && goal.isReached(now);
        drop(run);
        boolean idle = isIdle(run);
        run.reached |= idle && isSafe(run);
        boolean capped = settings.histories().isPresent();
        run.active =
            capped ? next.histories(run.isBiased(), run.counted()) > 0 : !run.reached && !idle;
      }
    }
  }

  private boolean isSafe(LayoutRun run) {
    return NoWayToLose.in(studios.central(), run.layout);
  }

  /** Whether more histories of a layout that lost nothing would tell nothing new. */
  private boolean isIdle(LayoutRun run) {
    long enough = isSafe(run) ? SAFE : run.neverLost ? NEVER_SEEN : Long.MAX_VALUE;
    return run.counted() >= enough && run.effective() == 0;
  }

  /** Biases each layout that is better off with it. */
  private void decide(LayoutRun run, ExecutorService threads) {
    LossTally seen = run.plainTotal();
    Pilot pilot = new Pilot(settings, seen);
    if (!run.active || isSafe(run) || over() || !pilot.triesRare()) {
      return;
    }
    Studio gloomy = studios.atAll(GLOOMY);
    RareRun rare =
        new RareRun(
            figures.results(run),
            proof(),
            run.layout,
            WorldTask.plain(gloomy, run.index, settings.seed(), thresholds),
            pilot,
            seed -> new EngineHistories(gloomy, gloomy.layouts().get(run.index), seed));
    long now = System.nanoTime();
    long until = now + (long) ((1 - timeShare()) / (2 * runs.size()) * nanos());
    Allowance allowed =
        new Allowance(
            progress, progress::cancelled, () -> settings.time().isPresent() && late(until));
    Optional<Tuning.Tuned> tuned = rare.tune(threads, allowed);
    run.neverLost = tuned.isEmpty() && !over() && !allowed.givesWay().getAsBoolean();
    if (tuned.isPresent() && pilot.takesRare(tuned.get())) {
      Optional<String> doubt =
          rare.count(tuned.get(), threads, allowed).flatMap(RareRun.Outcome::doubt);
      if (doubt.isEmpty() || settings.method() == Method.RARE) {
        run.bias(tuned.get().mixture());
        run.caveats = run.caveats.doubted(doubt.stream().toList());
      } else {
        run.caveats = run.caveats.note(Caveats.DROPPED + doubt.get());
      }
    }
  }

  /** How closely a bias is tried in one world before it is used in all. */
  private Settings proof() {
    return new Settings(
        settings.seed(),
        settings.confidence(),
        Math.max(PROOF, settings.precision()),
        settings.histories(),
        settings.time(),
        settings.threads(),
        settings.method());
  }

  private double nanos() {
    return settings.time().map(Duration::toNanos).orElse(Long.MAX_VALUE);
  }

  private static boolean late(long until) {
    return System.nanoTime() - until >= 0;
  }

  /** Biased histories that cannot be trusted by now are kept only where they were asked for. */
  private void drop(LayoutRun run) {
    Optional<String> doubt = doubt(run);
    if (doubt.isPresent() && run.counted() >= PROVEN && settings.method() != Method.RARE) {
      run.unbias();
      run.reached = false;
      run.caveats = run.caveats.note(Caveats.DROPPED + doubt.get());
    }
  }

  private Optional<String> doubt(LayoutRun run) {
    return run.rareTotal().flatMap(tally -> Doubt.ofDraws(tally, one(run)));
  }

  private EngineHistories one(LayoutRun run) {
    return new EngineHistories(studios.central(), run.layout, settings.seed());
  }

  private void remark(LayoutRun run) {
    Optional<String> doubt = doubt(run);
    if (doubt.isPresent()) {
      run.reached = false;
      run.caveats = run.caveats.doubted(List.of(doubt.get()));
    }
    if (isSafe(run)) {
      run.caveats = run.caveats.note(Caveats.CANNOT_LOSE);
    } else if (run.neverLost && run.effective() == 0) {
      run.caveats = run.caveats.note(Caveats.NEVER_LOST);
    }
  }
}
