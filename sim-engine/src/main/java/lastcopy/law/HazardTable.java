package lastcopy.law;

import java.util.Arrays;

/**
 * A law's cumulative hazard at ages in a geometric row, for guesses of its inverse: cubic Hermite
 * interpolation of the age over the hazard, which is off by about 1e-8 where the hazard is smooth.
 * Immutable.
 */
final class HazardTable {

  /** Hazards below it are one draw in 10^10, those above it none: the table leaves them out. */
  private static final double LEAST = 0x1p-34;

  private static final double MOST = 0x1p6;
  private static final int LEAST_AGE_EXPONENT = -10;
  private static final int MOST_AGE_EXPONENT = 60;
  private static final int CELLS_PER_OCTAVE = 16;

  /** Bits of a hazard below its exponent and the first four of its mantissa. */
  private static final int BELOW_BIN = 48;

  private static final long LEAST_BIN = Double.doubleToRawLongBits(LEAST) >>> BELOW_BIN;

  private final double[] age;
  private final double[] reached;

  /** dt/dH at the ages. */
  private final double[] slope;

  /** By bin of hazards, a cell at or below the one in which its least hazard lies. */
  private final int[] firstCell;

  HazardTable(Law law) {
    int first = MOST_AGE_EXPONENT;
    int end = MOST_AGE_EXPONENT;
    for (int e = LEAST_AGE_EXPONENT; e < MOST_AGE_EXPONENT; e++) {
      if (first == MOST_AGE_EXPONENT && law.cumulativeHazard(Math.scalb(1.0, e + 1)) > LEAST) {
        first = e;
      }
      if (end == MOST_AGE_EXPONENT && law.cumulativeHazard(Math.scalb(1.0, e)) >= MOST) {
        end = e;
      }
    }
    int nodes = Math.max(0, end - first) * CELLS_PER_OCTAVE + 1;
    age = new double[nodes];
    reached = new double[nodes];
    slope = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      // Even steps within an octave: nothing transcendental is needed.
      double mantissa = 1 + (i % CELLS_PER_OCTAVE) / (double) CELLS_PER_OCTAVE;
      age[i] = Math.scalb(mantissa, first + i / CELLS_PER_OCTAVE);
      reached[i] = law.cumulativeHazard(age[i]);
      slope[i] = 1 / law.hazard(age[i]);
    }
    firstCell = firstCells();
  }

  private int[] firstCells() {
    int bins = (int) ((Double.doubleToRawLongBits(MOST) >>> BELOW_BIN) - LEAST_BIN);
    int[] cells = new int[bins];
    for (int bin = 0; bin < bins; bin++) {
      int found =
          Arrays.binarySearch(reached, Double.longBitsToDouble((LEAST_BIN + bin) << BELOW_BIN));
      cells[bin] = found >= 0 ? Math.max(0, found - 1) : -found - 2;
    }
    return cells;
  }

  /** The cell in which a hazard is reached; negative if the table does not tell. */
  int cell(double hazard) {
    long bin = (Double.doubleToRawLongBits(hazard) >> BELOW_BIN) - LEAST_BIN;
    if (bin < 0 || bin >= firstCell.length || !(hazard <= reached[reached.length - 1])) {
      return -1;
    }
    int cell = firstCell[(int) bin];
    while (cell >= 0 && reached[cell + 1] < hazard) {
      cell++;
    }
    return cell;
  }

  /** The least age of a cell, in hours. */
  double age(int cell) {
    return age[cell];
  }

  /** An age in a cell at which a hazard is about reached; no number where the table is no guide. */
  double guess(int cell, double hazard) {
    double width = reached[cell + 1] - reached[cell];
    double x = (hazard - reached[cell]) / width;
    double rest = 1 - x;
    double from = age[cell];
    double to = age[cell + 1];
    double bend =
        rest * (width * slope[cell] - (to - from)) - x * (width * slope[cell + 1] - (to - from));
    return from + x * (to - from) + x * rest * bend;
  }
}
