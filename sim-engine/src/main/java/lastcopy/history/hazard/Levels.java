package lastcopy.history.hazard;

import lastcopy.history.plan.Plan;

/**
 * What a bias tells apart at an instant: how many things are wrong, its depth, and whether some
 * footage stands in one copy only, so that the next failure may lose it.
 *
 * @param depths how many depths, the last of which stands for it and all deeper ones
 */
public record Levels(int depths) {

  /** Deeper trouble is rarely told apart: a bias learns from few histories. */
  private static final int MOST_DEPTHS = 8;

  /** The levels of a layout: as deep as all that can be wrong with its copies. */
  public static Levels of(Plan plan) {
    int all = 1;
    for (int c = 0; c < plan.copies(); c++) {
      all += plan.copy(c).breaksIt();
    }
    return new Levels(Math.min(all, MOST_DEPTHS));
  }

  /** How many levels. */
  public int count() {
    return 2 * depths;
  }

  /** The level of a depth, with all footage in two copies or not. */
  public int of(int depth, boolean bare) {
    return bare ? depths + depth : depth;
  }

  /** The depth of a level. */
  public int depth(int level) {
    return level % depths;
  }
}
