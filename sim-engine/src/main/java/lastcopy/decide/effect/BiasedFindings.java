package lastcopy.decide.effect;

import java.util.List;
import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.rare.RareTally;
import lastcopy.simulate.rare.Results;

/**
 * What biased histories say; money comes from the plain ones of the pilot.
 *
 * @param doubts by alternative, why it is not to be trusted, if it is not
 */
record BiasedFindings(
    List<Alternative> all,
    Settings settings,
    PlainFindings pilot,
    RareTally[] tallies,
    PairedAmounts[] pairs,
    List<Optional<String>> doubts)
    implements Findings {

  @Override
  public LayoutResult result(int alternative) {
    return result(alternative, settings.confidence());
  }

  private LayoutResult result(int alternative, double confidence) {
    Alternative of = all.get(alternative);
    Caveats caveats = Caveats.NONE.doubted(doubts.get(alternative).stream().toList());
    return new Results(of.studio(), of.layout(), confidence)
        .rare(pilot.tallies()[alternative], tallies[alternative], true, caveats);
  }

  @Override
  public Estimate any(int alternative, double errorRate) {
    return isDoubted(alternative)
        ? apart(
            result(alternative, 1 - errorRate / 2).anyLoss(),
            result(0, 1 - errorRate / 2).anyLoss())
        : pairs[alternative].any.estimate(errorRate, unseen(errorRate));
  }

  @Override
  public Estimate bytes(int alternative, double errorRate) {
    return isDoubted(alternative)
        ? apart(
            result(alternative, 1 - errorRate / 2).bytesLost(),
            result(0, 1 - errorRate / 2).bytesLost())
        : pairs[alternative].bytes.estimate(
            errorRate, unseen(errorRate) * pilot.tallies()[alternative].thresholds().mostBytes());
  }

  @Override
  public Estimate shoots(int alternative, double errorRate) {
    double size = all.get(alternative).studio().footage().shoots().sizeBytes();
    double most = pilot.tallies()[alternative].thresholds().mostBytes() / size;
    return isDoubted(alternative)
        ? apart(
            result(alternative, 1 - errorRate / 2).shootsLost(),
            result(0, 1 - errorRate / 2).shootsLost())
        : pairs[alternative].shoots.estimate(errorRate, unseen(errorRate) * most);
  }

  @Override
  public Optional<Estimate> cost(int alternative) {
    return pilot.cost(alternative);
  }

  /** Both against the layout as it is, each at half the error rate: wider than their own pairs. */
  @Override
  public Estimate between(int one, int other, double errorRate) {
    return apart(any(one, errorRate / 2), any(other, errorRate / 2));
  }

  /** Right whatever the two have in common. */
  private static Estimate apart(Estimate one, Estimate other) {
    return new Estimate(
        one.value() - other.value(),
        one.low() - other.high(),
        one.high() - other.low(),
        one.seen() || other.seen());
  }

  private boolean isDoubted(int alternative) {
    return doubts.get(0).isPresent() || doubts.get(alternative).isPresent();
  }

  /** Where no loss differed: of so many effective losses none did. */
  private double unseen(double errorRate) {
    long losses = Math.max(1, (long) tallies[0].any().effective());
    return result(0).anyLoss().high() * Proportions.upperOfNone(losses, errorRate);
  }
}
