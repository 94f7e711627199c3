package lastcopy.worlds;

/**
 * One pass over worlds: some rows of one world a replicate, so many histories in each. The first is
 * the pilot, whose histories also tell times; the next ones grow to a thousand histories a world,
 * beside which it costs little to compile its layouts (as much as 100 to 300 histories, measured
 * over the demos). Once all rows were seen they are seen again, with other histories.
 *
 * @param number from 0
 * @param rows how many there are in all, at least 1
 * @param most histories of a layout, all sweeps together
 */
record Sweep(int number, int rows, long most) {

  /** 256 worlds, all of whose histories a layout may stop after. */
  private static final int ROWS = 16;

  private static final int TIMED = 80;
  private static final int FIRST = 256;
  private static final int DOUBLINGS = 2;

  /** A biased history, full of events, costs as much as many plain ones. */
  private static final int BIASED = 16;

  private static final long BLOCK = 1L << 34;

  /** No sweep has more histories in a world. */
  private static final long PART = 1L << 12;

  /** How many rows it visits. */
  int visited() {
    return Math.min(ROWS, rows);
  }

  /** The row that it visits in its turn. */
  int row(int turn) {
    return (int) (((long) number * visited() + turn) % rows);
  }

  /** Histories in each world, of a layout that has so many so far; 0 if it may have no more. */
  int histories(boolean biased, long soFar) {
    int wanted = number == 0 ? TIMED * ROWS / visited() : FIRST << Math.min(DOUBLINGS, number - 1);
    long left = (most - soFar) / ((long) visited() * WorldPoints.REPLICATES);
    long least = soFar == 0 ? 1 : 0;
    return (int) Math.max(least, Math.min(biased ? wanted / BIASED : wanted, left));
  }

  /** The number of a world's first history; each world has a block, each sweep a part of it. */
  long firstHistory(int row, int replicate) {
    return ((long) row * WorldPoints.REPLICATES + replicate + 1) * BLOCK + number * PART;
  }
}
