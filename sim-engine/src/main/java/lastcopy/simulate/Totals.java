package lastcopy.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.IndependentRatio;
import lastcopy.interval.PairedMeans;
import lastcopy.interval.PairedRatio;
import lastcopy.interval.RatioEstimate;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Chunk;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.RareTally;
import lastcopy.simulate.rare.Results;

/** What merged chunks say: a tally for each layout, joint counts for each pair. */
final class Totals {

  private final Studio studio;
  private final Settings settings;
  final LossTally[] tallies;

  /** Biased histories of the layouts that are estimated from them; null for the others. */
  final RareTally[] rare;

  /** Whether a layout's precision was reached. */
  final boolean[] reached;

  /** What a layout's result says of itself. */
  final Caveats[] caveats;

  private final long[][] both;
  private final long[][] lossesTogether;
  private final long[][] paired;

  Totals(Studio studio, Settings settings, Thresholds thresholds) {
    this.studio = studio;
    this.settings = settings;
    int n = studio.layouts().size();
    tallies = new LossTally[n];
    rare = new RareTally[n];
    reached = new boolean[n];
    caveats = new Caveats[n];
    Arrays.fill(caveats, Caveats.NONE);
    for (int l = 0; l < n; l++) {
      tallies[l] = new LossTally(thresholds);
    }
    both = new long[n][n];
    lossesTogether = new long[n][n];
    paired = new long[n][n];
  }

  void merge(Chunk chunk, boolean[] active, int count) {
    for (int a = 0; a < tallies.length; a++) {
      if (!active[a]) {
        continue;
      }
      tallies[a].merge(chunk.tallies()[a]);
      for (int b = 0; b < tallies.length; b++) {
        if (b != a && active[b]) {
          lossesTogether[a][b] += chunk.lossy()[a].cardinality();
          if (a < b) {
            BitSet joint = (BitSet) chunk.lossy()[a].clone();
            joint.and(chunk.lossy()[b]);
            both[a][b] += joint.cardinality();
            paired[a][b] += count;
          }
        }
      }
    }
  }

  Results results(int layout) {
    return new Results(studio, studio.layouts().get(layout), settings.confidence());
  }

  Comparison result(boolean finished) {
    List<LayoutResult> layouts = new ArrayList<>();
    for (int l = 0; l < tallies.length; l++) {
      layouts.add(result(l));
    }
    List<Comparison.Pair> pairs = new ArrayList<>();
    for (int a = 0; a < tallies.length; a++) {
      for (int b = a + 1; b < tallies.length; b++) {
        pairs.add(pair(a, b, layouts));
      }
    }
    return new Comparison(
        studio.name(),
        studio.years(),
        studio.currency(),
        settings.seed(),
        settings.confidence(),
        finished,
        layouts,
        pairs);
  }

  private LayoutResult result(int l) {
    return rare[l] == null
        ? results(l).plain(tallies[l], reached[l], caveats[l])
        : results(l).rare(tallies[l], rare[l], reached[l], caveats[l]);
  }

  private Comparison.Pair pair(int a, int b, List<LayoutResult> layouts) {
    boolean independent = rare[a] != null || rare[b] != null;
    RatioEstimate estimate =
        independent
            ? IndependentRatio.of(layouts.get(a).anyLoss(), layouts.get(b).anyLoss())
            : paired(a, b);
    return new Comparison.Pair(
        layouts.get(a).id(),
        layouts.get(b).id(),
        estimate.ratio(),
        estimate.low(),
        estimate.high(),
        estimate.difference(),
        independent ? 0 : paired[a][b],
        costDifference(a, b));
  }

  private Optional<Estimate> costDifference(int a, int b) {
    double[] ofA = tallies[a].cost().totals();
    double[] ofB = tallies[b].cost().totals();
    return ofA.length == 0 || ofB.length == 0
        ? Optional.empty()
        : Optional.of(PairedMeans.difference(ofA, ofB, settings.confidence()));
  }

  private RatioEstimate paired(int a, int b) {
    return PairedRatio.of(
        tallies[a].histories(),
        tallies[a].losses(),
        tallies[b].histories(),
        tallies[b].losses(),
        paired[a][b],
        both[a][b],
        lossesTogether[a][b] - both[a][b],
        lossesTogether[b][a] - both[a][b],
        settings.confidence());
  }
}
