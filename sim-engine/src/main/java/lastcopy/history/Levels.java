package lastcopy.history;

/**
 * What a bias tells apart at an instant: how many things are wrong, its depth, and whether some
 * footage stands in one copy only, so that the next failure may lose it.
 *
 * @param depths how many depths, the last of which stands for it and all deeper ones
 */
record Levels(int depths) {

  /** How many levels. */
  int count() {
    return 2 * depths;
  }

  /** The level of a depth, with all footage in two copies or not. */
  int of(int depth, boolean bare) {
    return bare ? depths + depth : depth;
  }

  /** The depth of a level. */
  int depth(int level) {
    return level % depths;
  }
}
