package lastcopy.cli.report;

/**
 * Studios as squares of a grid, those that lose footage first: a part of a whole that can be seen
 * (Galesic, Garcia-Retamero, Gigerenzer, Health Psychology 28, 2009).
 *
 * @param id of the drawing, unique in the page
 * @param lost how many squares are filled, rounded
 * @param total how many there are, 1,000 or 10,000
 */
record IconArray(String id, long lost, int total) {

  private static final int CELL = 10;

  /** An array of the squares that a chance fills. */
  static IconArray of(String id, double chance, int total) {
    return new IconArray(id, Math.min(total, Math.round(chance * total)), total);
  }

  int columns() {
    return total > 1_000 ? 200 : 50;
  }

  int width() {
    return columns() * CELL;
  }

  int height() {
    return total / columns() * CELL;
  }

  /** The height of the rows that are filled from end to end. */
  long fullHeight() {
    return lost / columns() * CELL;
  }

  /** The width of what is filled of the next row. */
  long restWidth() {
    return lost % columns() * CELL;
  }

  boolean rest() {
    return restWidth() > 0;
  }
}
