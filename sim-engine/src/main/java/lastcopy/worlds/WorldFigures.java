package lastcopy.worlds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Cost;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.interval.IndependentRatio;
import lastcopy.interval.PairedMeans;
import lastcopy.interval.RatioEstimate;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.rare.RareTally;
import lastcopy.simulate.rare.Results;
import lastcopy.worlds.surface.Grid;
import lastcopy.worlds.surface.Surface;

/** Turns what was simulated in many worlds into figures with their intervals. */
final class WorldFigures {

  private final PossibleStudios studios;
  private final Settings settings;
  private final Grid grid;

  WorldFigures(PossibleStudios studios, Settings settings) {
    this.studios = studios;
    this.settings = settings;
    grid = WorldSpreads.grid(studios.unknowns().size());
  }

  Results results(LayoutRun run) {
    return new Results(studios.central(), run.layout, settings.confidence());
  }

  /** The figures whose precision stops a layout. */
  Figures goal(LayoutRun run) {
    return widened(run, (tally, rare) -> ofGoal(run, tally, rare), WorldSpreads.losses(run, grid));
  }

  private Figures ofGoal(LayoutRun run, LossTally tally, Optional<RareTally> rare) {
    return rare.isPresent()
        ? results(run).figures(tally, rare.get(), false)
        : results(run).figures(tally);
  }

  /** Figures of what was counted. */
  private interface Made {
    Figures of(LossTally plain, Optional<RareTally> rare);
  }

  private Figures widened(LayoutRun run, Made made, Optional<Surface> surface) {
    List<Figures> each =
        IntStream.range(0, WorldPoints.REPLICATES)
            .mapToObj(r -> made.of(run.plain(r), run.rare(r)))
            .toList();
    return new WidenedFigures(
        made.of(run.plainTotal(), run.rareTotal()),
        each,
        scales(run, surface),
        run.fewestLosses(),
        settings.confidence());
  }

  /** What makes up for where the worlds of each replicate fell; 1 where that cannot be said. */
  private static double[] scales(LayoutRun run, Optional<Surface> surface) {
    double[] scales = new double[WorldPoints.REPLICATES];
    Arrays.fill(scales, 1);
    double[] raw = chances(run);
    if (surface.isPresent() && Arrays.stream(raw).allMatch(chance -> chance > 0)) {
      double[] calibrated = surface.get().calibrated();
      Arrays.setAll(scales, r -> Math.max(0, calibrated[r] / raw[r]));
    }
    return scales;
  }

  /** All that is told. */
  Comparison comparison(List<LayoutRun> runs, boolean finished) {
    Studio central = studios.central();
    WorldSpreads spreads = new WorldSpreads(studios, settings, runs, grid);
    List<LayoutResult> layouts = new ArrayList<>();
    for (LayoutRun run : runs) {
      layouts.add(layout(run, spreads));
    }
    List<Comparison.Pair> pairs = new ArrayList<>();
    for (int a = 0; a < runs.size(); a++) {
      for (int b = a + 1; b < runs.size(); b++) {
        pairs.add(pair(runs.get(a), runs.get(b), layouts.get(a), layouts.get(b), spreads));
      }
    }
    Worlds worlds = spreads.worlds(layouts);
    return new Comparison(
        central.name(),
        central.years(),
        central.currency(),
        settings.seed(),
        settings.confidence(),
        finished,
        layouts,
        pairs,
        Optional.of(worlds));
  }

  private LayoutResult layout(LayoutRun run, WorldSpreads spreads) {
    spreads.doubt(run).ifPresent(doubt -> run.caveats = run.caveats.doubted(with(run, doubt)));
    boolean doubted = !run.caveats.doubts().isEmpty();
    LossTally plain = run.plainTotal();
    Optional<RareTally> rare = run.rareTotal();
    Figures figures =
        widened(
            run,
            (tally, biased) -> results(run).told(tally, biased, doubted),
            spreads.surface(run));
    long histories = run.counted();
    return results(run)
        .of(
            plain,
            figures,
            exposure(run, plain),
            cost(run, plain),
            new Results.Made(
                rare.isPresent() ? Method.RARE : Method.PLAIN,
                histories,
                run.reached,
                rare.map(tally -> tally.any().effective()).orElse((double) histories),
                rare.map(tally -> tally.any().largestShare()).orElse(1.0 / histories),
                run.caveats));
  }

  private static List<String> with(LayoutRun run, String doubt) {
    List<String> doubts = new ArrayList<>(run.caveats.doubts());
    doubts.add(doubt);
    return doubts;
  }

  private LayoutResult.Exposure exposure(LayoutRun run, LossTally all) {
    Function<LossTally, LayoutResult.Exposure> of =
        tally -> tally.time().exposure(studios.central().horizonHours(), settings.confidence());
    return WidenedFigures.exposure(
        of.apply(all),
        IntStream.range(0, WorldPoints.REPLICATES).mapToObj(run::plain).map(of).toList(),
        settings.confidence());
  }

  private Optional<Cost> cost(LayoutRun run, LossTally all) {
    return all.cost().cost(settings.confidence()).map(cost -> widened(run, cost));
  }

  private Cost widened(LayoutRun run, Cost cost) {
    double[] each =
        IntStream.range(0, WorldPoints.REPLICATES)
            .mapToObj(r -> run.plain(r).cost().totals())
            .mapToDouble(totals -> Arrays.stream(totals).average().orElse(0))
            .toArray();
    Estimate total = WidenedFigures.widened(cost.total(), each, false, settings.confidence());
    return new Cost(
        total, cost.p5(), cost.p50(), cost.p95(), cost.byKind(), cost.byYear(), cost.histories());
  }

  private Optional<Estimate> costDifference(LayoutRun a, LayoutRun b) {
    double[] ofA = a.plainTotal().cost().totals();
    double[] ofB = b.plainTotal().cost().totals();
    return ofA.length == 0 || ofA.length != ofB.length
        ? Optional.empty()
        : Optional.of(PairedMeans.difference(ofA, ofB, settings.confidence()));
  }

  /** Replicates share worlds and, where neither is biased, the luck of histories. */
  private Comparison.Pair pair(
      LayoutRun a, LayoutRun b, LayoutResult first, LayoutResult second, WorldSpreads spreads) {
    RatioEstimate ratio = IndependentRatio.of(first.anyLoss(), second.anyLoss());
    boolean enough = a.effective() >= WorldSpreads.ENOUGH && b.effective() >= WorldSpreads.ENOUGH;
    long paired =
        a.isBiased() || b.isBiased() ? 0 : Math.min(first.histories(), second.histories());
    if (enough) {
      ratio =
          ReplicateRatio.of(calibrated(a, spreads), calibrated(b, spreads), settings.confidence());
    }
    return new Comparison.Pair(
        first.id(),
        second.id(),
        ratio.ratio(),
        ratio.low(),
        ratio.high(),
        ratio.difference(),
        paired,
        costDifference(a, b));
  }

  private static double[] calibrated(LayoutRun run, WorldSpreads spreads) {
    return spreads.surface(run).map(Surface::calibrated).orElseGet(() -> chances(run));
  }

  private static double[] chances(LayoutRun run) {
    double[] chances = new double[WorldPoints.REPLICATES];
    Arrays.setAll(
        chances,
        r ->
            run.rare(r)
                .map(tally -> tally.any().mean())
                .orElse((double) run.plain(r).losses() / run.plain(r).histories()));
    return chances;
  }
}
