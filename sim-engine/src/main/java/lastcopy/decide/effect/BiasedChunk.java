package lastcopy.decide.effect;

import java.util.List;
import lastcopy.simulate.count.Thresholds;
import lastcopy.simulate.rare.Biasable;
import lastcopy.simulate.rare.Mixture;
import lastcopy.simulate.rare.RareTally;

/** A run of biased histories of all alternatives; the first is the layout as it is. */
final class BiasedChunk {

  static final int SIZE = 256;

  final RareTally[] tallies;
  final PairedAmounts[] pairs;

  private BiasedChunk(int alternatives) {
    tallies = new RareTally[alternatives];
    pairs = new PairedAmounts[alternatives];
  }

  /** Simulates so many histories of each alternative, each under its mixture. */
  static BiasedChunk simulate(
      Biasable[] alternatives,
      List<Mixture> mixtures,
      List<Thresholds> thresholds,
      long first,
      int count) {
    BiasedChunk chunk = new BiasedChunk(alternatives.length);
    Amounts base = null;
    for (int a = 0; a < alternatives.length; a++) {
      Amounts own = new Amounts(count);
      chunk.tallies[a] =
          RareTally.of(
              alternatives[a],
              mixtures.get(a),
              thresholds.get(a),
              first,
              count,
              (number, part, weight, lost) -> {
                int i = (int) (number - first);
                own.weight[i] = weight;
                own.bytes[i] = weight * lost.bytes();
                own.shoots[i] = weight * lost.shoots();
              });
      base = a == 0 ? own : base;
      chunk.pairs[a] = pairs(mixtures.get(0), own, base, first, count);
    }
    return chunk;
  }

  /** All mixtures deal histories to parts alike, so that one says the part of each. */
  private static PairedAmounts pairs(
      Mixture mixture, Amounts own, Amounts base, long first, int count) {
    PairedAmounts pairs = new PairedAmounts(mixture.parts());
    for (int i = 0; i < count; i++) {
      int part = mixture.partOf(first + i);
      pairs.add(part, own, base, i);
      pairs.addHistories(part, 1);
    }
    return pairs;
  }
}
