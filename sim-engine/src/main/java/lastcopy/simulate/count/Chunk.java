package lastcopy.simulate.count;

import java.util.BitSet;
import lastcopy.history.History;
import lastcopy.history.report.GivenUpException;

/**
 * A fixed run of history numbers, simulated for several layouts: the unit of work and of stopping.
 *
 * @param tallies by layout; null where it was not simulated
 * @param lossy by layout, which of the chunk's histories lost anything
 * @param count how many histories of each layout; fewer than asked for if it was given up
 */
public record Chunk(LossTally[] tallies, BitSet[] lossy, int count) {

  /** Histories of a chunk: few, so that a stop or an interruption never waits for long. */
  public static final int SIZE = 1_024;

  /** Histories of a layout before it is the next one's turn: those that are screened together. */
  private static final int TURN = 64;

  /**
   * Simulates the layouts in turn; the very first turns are short, for layouts of which a single
   * history is long. What is given up leaves the histories that were done, of some layouts a few
   * more than of others.
   */
  public static Chunk simulate(
      History[] layouts, boolean[] active, Thresholds thresholds, long first, int count) {
    LossTally[] tallies = new LossTally[layouts.length];
    BitSet[] lossy = new BitSet[layouts.length];
    for (int l = 0; l < layouts.length; l++) {
      if (active[l]) {
        tallies[l] = new LossTally(thresholds);
        lossy[l] = new BitSet(count);
      }
    }
    int done = 0;
    try {
      while (done < count) {
        int turn = first + done < TURN ? (int) Math.max(1, first + done) : TURN;
        int to = Math.min(count, done + turn);
        for (int l = 0; l < layouts.length; l++) {
          if (active[l]) {
            simulate(layouts[l], tallies[l], lossy[l], first, done, to);
          }
        }
        done = to;
      }
    } catch (GivenUpException e) {
      for (BitSet all : lossy) {
        if (all != null) {
          all.clear(done, count); // pairs are of histories that all layouts have
        }
      }
    }
    return new Chunk(tallies, lossy, done);
  }

  private static void simulate(
      History layout, LossTally tally, BitSet lossy, long first, int from, int to) {
    for (int i = from; i < to; i++) {
      tally.begin(first + i);
      layout.simulate(first + i, tally);
      if (tally.end()) {
        lossy.set(i);
      }
    }
  }
}
