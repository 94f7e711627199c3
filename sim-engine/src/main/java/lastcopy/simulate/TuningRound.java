package lastcopy.simulate;

import lastcopy.history.Loss;
import lastcopy.interval.WeightedTally;

/**
 * Histories of one round of tuning: how well they do, and what the histories with a loss, each
 * weighted with what it adds to a figure, say of the best factors.
 */
final class TuningRound extends LossLedger {

  /** Weighted events and hazards by group and level, and how many histories came to a level. */
  static final class Evidence {
    final double[][] events;
    final double[][] hazard;
    final WeightedTally[] visits;

    Evidence(int groups, int levels) {
      events = new double[groups][levels];
      hazard = new double[groups][levels];
      visits = new WeightedTally[levels];
      for (int v = 0; v < levels; v++) {
        visits[v] = new WeightedTally();
      }
    }

    void merge(Evidence other) {
      for (int v = 0; v < visits.length; v++) {
        visits[v].merge(other.visits[v]);
        for (int g = 0; g < events.length; g++) {
          events[g][v] += other.events[g][v];
          hazard[g][v] += other.hazard[g][v];
        }
      }
    }

    void add(double weight, Biasable history) {
      for (int v = 0; v < visits.length; v++) {
        boolean visited = false;
        for (int g = 0; g < events.length; g++) {
          double h = history.hazard(g, v);
          events[g][v] += weight * history.events(g, v);
          hazard[g][v] += weight * h;
          visited |= h > 0;
        }
        if (visited) {
          visits[v].add(weight);
        }
      }
    }
  }

  final WeightedTally any = new WeightedTally();
  final WeightedTally bytes = new WeightedTally();
  final WeightedTally everything = new WeightedTally();

  /** Squares of bytes, for what plain histories would do. */
  private final WeightedTally squares = new WeightedTally();

  final Evidence forAny;
  final Evidence forBytes;
  final Evidence forEverything;
  private final LossesNow now = new LossesNow();

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
      histories.simulate(number, mixture.bias(number), this);
      if (now.events > 0) {
        learn(mixture.weight(histories), histories);
      }
    }
    any.addHistories(count);
    bytes.addHistories(count);
    everything.addHistories(count);
    squares.addHistories(count);
    return this;
  }

  void merge(TuningRound batch) {
    any.merge(batch.any);
    bytes.merge(batch.bytes);
    everything.merge(batch.everything);
    squares.merge(batch.squares);
    forAny.merge(batch.forAny);
    forBytes.merge(batch.forBytes);
    forEverything.merge(batch.forEverything);
  }

  private void learn(double weight, Biasable histories) {
    if (weight > 0 && weight < Double.POSITIVE_INFINITY) {
      any.add(weight);
      bytes.add(weight * now.bytes);
      squares.add(weight * now.bytes * now.bytes);
      forAny.add(weight, histories);
      forBytes.add(weight * now.bytes, histories);
      if (now.everything) {
        everything.add(weight);
        forEverything.add(weight, histories);
      }
    }
  }

  /** Relative variance of bytes in one plain history. */
  double plainBytesVariance() {
    return squares.mean() / (bytes.mean() * bytes.mean()) - 1;
  }
}
