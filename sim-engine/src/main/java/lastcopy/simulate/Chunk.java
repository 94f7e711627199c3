package lastcopy.simulate;

import java.util.BitSet;
import lastcopy.history.History;

/**
 * A fixed run of history numbers, simulated for several layouts: the unit of work and of stopping.
 *
 * @param tallies by layout; null where it was not simulated
 * @param lossy by layout, which of the chunk's histories lost anything
 */
record Chunk(LossTally[] tallies, BitSet[] lossy) {

  /** Histories of a chunk: few, so that a stop or an interruption never waits for long. */
  static final int SIZE = 1_024;

  static Chunk simulate(
      History[] layouts, boolean[] active, Thresholds thresholds, long first, int count) {
    LossTally[] tallies = new LossTally[layouts.length];
    BitSet[] lossy = new BitSet[layouts.length];
    for (int l = 0; l < layouts.length; l++) {
      if (active[l]) {
        tallies[l] = new LossTally(thresholds);
        lossy[l] = new BitSet(count);
        for (int i = 0; i < count; i++) {
          tallies[l].begin(first + i);
          layouts[l].simulate(first + i, tallies[l]);
          if (tallies[l].end()) {
            lossy[l].set(i);
          }
        }
      }
    }
    return new Chunk(tallies, lossy);
  }
}
