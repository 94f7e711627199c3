package lastcopy.worlds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Settings;
import lastcopy.experiment.Worlds;
import lastcopy.interval.Estimate;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Unknown;
import lastcopy.worlds.surface.Grid;
import lastcopy.worlds.surface.Link;
import lastcopy.worlds.surface.Observations;
import lastcopy.worlds.surface.Surface;

/** Percentiles over worlds, and what each unknown accounts for: from fitted surfaces. */
final class WorldSpreads {

  /** Effective losses from which on replicates by themselves tell a ratio. */
  static final double ENOUGH = 100;

  /** More of the variance than that outside a surface, and it does not fit. */
  private static final double ROUGH = 0.1;

  private static final int GRID = 8_192;

  private final PossibleStudios studios;
  private final double confidence;
  private final List<LayoutRun> runs;
  private final List<Optional<Surface>> losses = new ArrayList<>();
  private final List<Optional<Surface>> bytes = new ArrayList<>();
  private final List<Optional<Surface>> costs = new ArrayList<>();

  WorldSpreads(PossibleStudios studios, Settings settings, List<LayoutRun> runs, Grid grid) {
    this.studios = studios;
    this.confidence = settings.confidence();
    this.runs = runs;
    for (LayoutRun run : runs) {
      losses.add(losses(run, grid));
      bytes.add(surface(WorldCounts.bytes(run.worlds()), Link.AMOUNT, grid));
      costs.add(costs(run, grid));
    }
  }

  /** How the chance of a loss of a layout follows from the unknowns. */
  static Optional<Surface> losses(LayoutRun run, Grid grid) {
    return surface(WorldCounts.losses(run.worlds(), run.lastRow()), Link.CHANCE, grid);
  }

  private static Optional<Surface> costs(LayoutRun run, Grid grid) {
    List<WorldCounts> priced = run.pricedWorlds();
    return priced.isEmpty()
        ? Optional.empty()
        : surface(WorldCounts.costs(priced), Link.AMOUNT, grid);
  }

  /** The same at the end of all. */
  Optional<Surface> surface(LayoutRun run) {
    return losses.get(run.index);
  }

  /** The same whatever the seed: it looks at surfaces, and is no sample. */
  static Grid grid(int unknowns) {
    WorldPoints points = new WorldPoints(unknowns + 1, 0);
    double[][] all = new double[GRID][];
    for (int row = 0; row < GRID; row++) {
      all[row] = points.point(0, row);
    }
    return new Grid(all);
  }

  private static Optional<Surface> surface(Observations seen, Link link, Grid grid) {
    return Surface.of(seen, link, grid, WorldPoints.REPLICATES);
  }

  /** Why the percentiles of a layout are not to be trusted, if they are not. */
  Optional<String> doubt(LayoutRun run) {
    return losses
        .get(run.index)
        .map(Surface::roughPart)
        .filter(part -> part > ROUGH)
        .map(
            part ->
                String.format(
                    Locale.ROOT,
                    "How its chance of loss follows from what is not known is more jagged than"
                        + " could be told: %.0f %% of how much worlds differ is taken for chance.",
                    100 * part));
  }

  /** All of it, beside the results of the layouts. */
  Worlds worlds(List<LayoutResult> results) {
    List<Worlds.OfLayout> layouts = new ArrayList<>();
    List<Worlds.OfPair> pairs = new ArrayList<>();
    for (LayoutRun run : runs) {
      layouts.add(layout(run, results.get(run.index)));
      for (LayoutRun other : runs.subList(run.index + 1, runs.size())) {
        pair(run, other).ifPresent(pairs::add);
      }
    }
    List<Worlds.OfUnknown> unknowns = new ArrayList<>();
    List<Optional<Estimate[]>> shares =
        losses.stream().map(surface -> surface.map(of -> of.shares(confidence))).toList();
    for (int i = 0; i < studios.unknowns().size(); i++) {
      unknowns.add(unknown(i, shares));
    }
    return new Worlds(layouts, pairs, unknowns);
  }

  private Worlds.OfLayout layout(LayoutRun run, LayoutResult result) {
    return new Worlds.OfLayout(
        run.layout.id(),
        run.worlds().size(),
        new Worlds.Spread(result.anyLoss(), losses.get(run.index).map(this::percentiles)),
        new Worlds.Spread(result.bytesLost(), bytes.get(run.index).map(this::percentiles)),
        result
            .cost()
            .map(c -> new Worlds.Spread(c.total(), costs.get(run.index).map(this::percentiles))),
        losses.get(run.index).map(surface -> curve(run, surface)).orElse(List.of()));
  }

  private Worlds.Percentiles percentiles(Surface surface) {
    return new Worlds.Percentiles(
        surface.percentile(0.05, confidence),
        surface.percentile(0.5, confidence),
        surface.percentile(0.95, confidence));
  }

  /** No percentile falls with time; those of the horizon are told already. */
  private List<Worlds.CurvePoint> curve(LayoutRun run, Surface surface) {
    List<Worlds.CurvePoint> points = new ArrayList<>();
    Worlds.Percentiles last = percentiles(surface);
    double[] most = {last.p5().value(), last.p50().value(), last.p95().value()};
    double[] least = new double[3];
    for (int row = 0; row < run.lastRow(); row++) {
      Observations earlier = WorldCounts.losses(run.worlds(), row);
      double[] now = surface.earlier(earlier, 0.05, 0.5, 0.95);
      for (int i = 0; i < now.length; i++) {
        least[i] = Math.min(most[i], Math.max(least[i], now[i]));
      }
      points.add(new Worlds.CurvePoint(run.years(row), least[0], least[1], least[2]));
    }
    points.add(new Worlds.CurvePoint(run.years(run.lastRow()), most[0], most[1], most[2]));
    return points;
  }

  private Optional<Worlds.OfPair> pair(LayoutRun a, LayoutRun b) {
    if (losses.get(a.index).isEmpty() || losses.get(b.index).isEmpty()) {
      return Optional.empty();
    }
    Surface first = losses.get(a.index).get();
    Surface second = losses.get(b.index).get();
    return Optional.of(
        new Worlds.OfPair(
            a.layout.id(),
            b.layout.id(),
            first.lessThan(second, confidence),
            new Worlds.Percentiles(
                first.ratioPercentile(second, 0.05, confidence),
                first.ratioPercentile(second, 0.5, confidence),
                first.ratioPercentile(second, 0.95, confidence))));
  }

  private Worlds.OfUnknown unknown(int index, List<Optional<Estimate[]>> shares) {
    Unknown unknown = studios.unknowns().get(index);
    List<Worlds.Share> all = new ArrayList<>();
    for (LayoutRun run : runs) {
      shares.get(run.index).ifPresent(of -> all.add(new Worlds.Share(run.layout.id(), of[index])));
    }
    return new Worlds.OfUnknown(unknown.key(), unknown.from(), unknown.to(), unknown.unit(), all);
  }
}
