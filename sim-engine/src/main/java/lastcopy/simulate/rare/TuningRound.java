package lastcopy.simulate.rare;

import lastcopy.history.report.Loss;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.LossLedger;
import lastcopy.simulate.count.LossesNow;

/**
 * Histories of one round of tuning: how well they do, and what the histories with a loss, each
 * weighted with what it adds to a figure, say of the best factors.
 */
final class TuningRound extends LossLedger {

  final WeightedTally any = new WeightedTally();
  final WeightedTally bytes = new WeightedTally();
  final WeightedTally everything = new WeightedTally();
  final Evidence forAny;
  final Evidence forBytes;
  final Evidence forEverything;
  private final LossesNow now = new LossesNow();
  private double squaresOfBytes;

  TuningRound(int groups, int levels) {
    forAny = new Evidence(groups, levels);
    forBytes = new Evidence(groups, levels);
    forEverything = new Evidence(groups, levels);
  }

  @Override
  public void lost(Loss loss) {
    now.add(loss);
  }

  TuningRound simulate(Biasable histories, Mixture mixture, long first, int count) {
    for (long number = first; number < first + count; number++) {
      now.clear();
      histories.simulate(number, mixture.part(mixture.partOf(number)), this);
      if (now.events() > 0) {
        learn(mixture.weight(histories), histories);
      }
    }
    any.addHistories(count);
    bytes.addHistories(count);
    everything.addHistories(count);
    return this;
  }

  void merge(TuningRound batch) {
    any.merge(batch.any);
    bytes.merge(batch.bytes);
    everything.merge(batch.everything);
    squaresOfBytes += batch.squaresOfBytes;
    forAny.merge(batch.forAny);
    forBytes.merge(batch.forBytes);
    forEverything.merge(batch.forEverything);
  }

  private void learn(double weight, Biasable histories) {
    if (weight > 0 && weight < Double.POSITIVE_INFINITY) {
      any.add(weight);
      bytes.add(weight * now.bytes());
      squaresOfBytes += weight * now.bytes() * now.bytes();
      forAny.add(weight, histories);
      forBytes.add(weight * now.bytes(), histories);
      if (now.everything()) {
        everything.add(weight);
        forEverything.add(weight, histories);
      }
    }
  }

  /** Relative variance of bytes in one plain history. */
  double plainBytesVariance() {
    return squaresOfBytes * bytes.histories() / (bytes.sum() * bytes.sum()) - 1;
  }
}
