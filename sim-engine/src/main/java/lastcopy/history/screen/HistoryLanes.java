package lastcopy.history.screen;

import lastcopy.history.plan.Draws;

/**
 * Histories in a row, each a bit of a word, for which the same draws are taken together: a
 * processor overlaps them, while in one history every step waits for the last and for the branch on
 * it. Each draw is the one that {@link Draws} takes for its history alone.
 */
final class HistoryLanes {

  /** Histories side by side. */
  static final int SIZE = Long.SIZE;

  private static final long NONE = -1;
  private static final double UNITS = 0x1p53;

  private final Draws draws;
  private final long[] keys = new long[SIZE];
  private long first = NONE;

  HistoryLanes(Draws draws) {
    this.draws = draws;
  }

  /** Whether a history is one of them. */
  boolean holds(long number) {
    return (number & -SIZE) == first;
  }

  /** Moves to those that hold a history; they begin at multiples of their size. */
  void moveTo(long number) {
    first = number & -SIZE;
    for (int i = 0; i < SIZE; i++) {
      keys[i] = draws.historyKey(first + i);
    }
  }

  /** The number of its i-th history. */
  long number(int i) {
    return first + i;
  }

  /** What makes the draws of its i-th history its own. */
  long historyKey(int i) {
    return keys[i];
  }

  /** The histories whose uniform of a key is at least a limit. */
  long atLeast(double limit, long key) {
    long below = below(limit);
    long all = 0;
    for (int i = 0; i < SIZE; i++) {
      all |= isAtLeast(below, i, key) << i;
    }
    return all;
  }

  /** A limit for {@link #isAtLeast}: uniforms are whole numbers of 2^−53, and compared as such. */
  static long below(double limit) {
    return (long) Math.ceil(limit * UNITS) - 1;
  }

  /** 1 if the uniform of a key in its i-th history is at least a limit, 0 if not: no branch. */
  long isAtLeast(long below, int i, long key) {
    return (below - Draws.unitsOf(keys[i], key)) >>> (Long.SIZE - 1);
  }
}
