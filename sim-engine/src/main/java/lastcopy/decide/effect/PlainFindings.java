package lastcopy.decide.effect;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.PairedDifferences;
import lastcopy.interval.PairedMeans;
import lastcopy.interval.Proportions;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.rare.Results;

/** What histories say that fall as they are. */
record PlainFindings(
    List<Alternative> all,
    Settings settings,
    LossTally[] tallies,
    PairedAmounts[] pairs,
    BitSet[] lossy)
    implements Findings {

  @Override
  public LayoutResult result(int alternative) {
    Alternative of = all.get(alternative);
    return new Results(of.studio(), of.layout(), settings.confidence())
        .plain(tallies[alternative], true, Caveats.NONE);
  }

  @Override
  public Estimate any(int alternative, double errorRate) {
    return pairs[alternative].any.estimate(errorRate, unseen(errorRate));
  }

  @Override
  public Estimate bytes(int alternative, double errorRate) {
    double most = tallies[alternative].thresholds().mostBytes();
    return pairs[alternative].bytes.estimate(errorRate, unseen(errorRate) * most);
  }

  @Override
  public Estimate shoots(int alternative, double errorRate) {
    double size = all.get(alternative).studio().footage().shoots().sizeBytes();
    double most = tallies[alternative].thresholds().mostBytes() / size;
    return pairs[alternative].shoots.estimate(errorRate, unseen(errorRate) * most);
  }

  @Override
  public Optional<Estimate> cost(int alternative) {
    double[] own = tallies[alternative].cost().totals();
    double[] base = tallies[0].cost().totals();
    return own.length == 0 || base.length == 0
        ? Optional.empty()
        : Optional.of(PairedMeans.difference(own, base, settings.confidence()));
  }

  @Override
  public Estimate between(int one, int other, double errorRate) {
    PairedDifferences difference = new PairedDifferences(1);
    add(difference, one, other, 1);
    add(difference, other, one, -1);
    difference.addHistories(0, histories());
    return difference.estimate(errorRate, unseen(errorRate));
  }

  /** Histories that the first loses and the second does not. */
  private void add(PairedDifferences to, int loser, int keeper, double sign) {
    BitSet only = (BitSet) lossy[loser].clone();
    only.andNot(lossy[keeper]);
    for (int i = only.cardinality(); i > 0; i--) {
      to.add(0, sign);
    }
  }

  private double unseen(double errorRate) {
    return Proportions.upperOfNone(histories(), errorRate);
  }

  private long histories() {
    return tallies[0].histories();
  }
}
