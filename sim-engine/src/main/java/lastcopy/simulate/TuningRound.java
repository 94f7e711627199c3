package lastcopy.simulate;

import lastcopy.history.Loss;
import lastcopy.interval.WeightedTally;

/**
 * Histories of one round of tuning: how well they do, and what the histories with a loss, each
 * weighted with what it adds to a figure, say of the best factors.
 */
final class TuningRound extends LossLedger {

  /** Weighted events and hazards by group and depth, and how many histories came to a depth. */
  static final class Evidence {
    final double[][] events;
    final double[][] hazard;
    final WeightedTally[] visits;

    Evidence(int groups, int depths) {
      events = new double[groups][depths];
      hazard = new double[groups][depths];
      visits = new WeightedTally[depths];
      for (int d = 0; d < depths; d++) {
        visits[d] = new WeightedTally();
      }
    }

    void add(double weight, Biasable history) {
      for (int d = 0; d < visits.length; d++) {
        boolean visited = false;
        for (int g = 0; g < events.length; g++) {
          double h = history.hazard(g, d);
          events[g][d] += weight * history.events(g, d);
          hazard[g][d] += weight * h;
          visited |= h > 0;
        }
        if (visited) {
          visits[d].add(weight);
        }
      }
    }
  }

  final WeightedTally any = new WeightedTally();
  final WeightedTally bytes = new WeightedTally();
  final WeightedTally everything = new WeightedTally();
  final Evidence forAny;
  final Evidence forBytes;
  final Evidence forEverything;
  private final LossesNow now = new LossesNow();

  TuningRound(int groups, int depths) {
    forAny = new Evidence(groups, depths);
    forBytes = new Evidence(groups, depths);
    forEverything = new Evidence(groups, depths);
  }

  @Override
  public void lost(Loss loss) {
    now.add(loss);
  }

  void simulate(Biasable histories, Mixture mixture, long first, int count) {
    for (long number = first; number < first + count; number++) {
      now.clear();
      histories.simulate(number, mixture.bias(number), this);
      if (now.events > 0) {
        learn(mixture.weight(histories), histories);
      }
    }
    any.addHistories(count);
    bytes.addHistories(count);
    everything.addHistories(count);
  }

  private void learn(double weight, Biasable histories) {
    if (weight > 0 && weight < Double.POSITIVE_INFINITY) {
      any.add(weight);
      bytes.add(weight * now.bytes);
      forAny.add(weight, histories);
      forBytes.add(weight * now.bytes, histories);
      if (now.everything) {
        everything.add(weight);
        forEverything.add(weight, histories);
      }
    }
  }
}
