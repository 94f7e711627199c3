package lastcopy.simulate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lastcopy.interval.PairedRatio;
import lastcopy.interval.RatioEstimate;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** What merged chunks say: a tally for each layout, joint counts for each pair. */
final class Totals {

  private final Studio studio;
  private final Settings settings;
  final LossTally[] tallies;
  private final long[][] both;
  private final long[][] lossesTogether;
  private final long[][] paired;

  Totals(Studio studio, Settings settings, Thresholds thresholds) {
    this.studio = studio;
    this.settings = settings;
    int n = studio.layouts().size();
    tallies = new LossTally[n];
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

  Comparison result(boolean finished, boolean[] reached) {
    List<LayoutResult> layouts = new ArrayList<>();
    List<Comparison.Pair> pairs = new ArrayList<>();
    for (int a = 0; a < tallies.length; a++) {
      Layout layout = studio.layouts().get(a);
      layouts.add(Results.of(studio, layout, tallies[a], reached[a], settings.confidence()));
      for (int b = a + 1; b < tallies.length; b++) {
        pairs.add(pair(a, b));
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

  private Comparison.Pair pair(int a, int b) {
    RatioEstimate estimate =
        PairedRatio.of(
            tallies[a].histories,
            tallies[a].losses,
            tallies[b].histories,
            tallies[b].losses,
            paired[a][b],
            both[a][b],
            lossesTogether[a][b] - both[a][b],
            lossesTogether[b][a] - both[a][b],
            settings.confidence());
    return new Comparison.Pair(
        studio.layouts().get(a).id(),
        studio.layouts().get(b).id(),
        estimate.ratio(),
        estimate.low(),
        estimate.high(),
        estimate.difference(),
        paired[a][b]);
  }
}
