package lastcopy.simulate.count;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.interval.Estimate;
import lastcopy.interval.WeightedTally;

/**
 * How the chance to lose at least an amount falls with the amount: histories with a loss, sorted
 * into cells of amounts that differ by at most a thousandth and that no given row divides. Where
 * the chance falls by more than a fiftieth of the chance of any loss from one given row to the
 * next, rows are added between; a fall within one cell is a step, and has a row on either side.
 *
 * <p>Mutable; one thread writes a chunk's, and chunks are merged in their order, so that sums and
 * rows are the same on any number of threads.
 */
public final class Exceedance {

  /** The most by which two neighbours differ, of the chance of any loss. */
  private static final double FINEST = 0.019; // a hair less, so that it holds of rounded sums

  private static final int MANTISSA = 52;

  /** A factor of two in amounts has 2^10 cells. */
  private static final int CELL_BITS = 10;

  /** Amounts that agree to so many bits, ten digits, are the same but for rounding. */
  private static final int SAME_BITS = 31;

  private static final int ROW_BITS = 16;
  private static final long ROWS = (1 << ROW_BITS) - 1;

  /** What waits of a history: amount, amount of its first loss, stratum, weight. */
  private static final int ENTRY = 4;

  /** Beyond what still counts as having reached a row, see {@link Thresholds#reached}. */
  private static final double JUST_ABOVE = 1 + 4e-9;

  /** Turns what histories from an amount on add up to into a chance. */
  @FunctionalInterface
  public interface Chance {
    /**
     * The chance to lose at least an amount.
     *
     * @param later histories that reached it, though not by their first loss alone
     */
    Estimate of(double amount, WeightedTally reached, Counted later);
  }

  private static final class Cell {
    final long key;
    final WeightedTally tally;
    double least = Double.POSITIVE_INFINITY;
    double most;

    Cell(long key, int strata) {
      this.key = key;
      tally = new WeightedTally(strata);
    }

    void add(double amount, int stratum, double weight) {
      tally.add(stratum, weight);
      least = Math.min(least, amount);
      most = Math.max(most, amount);
    }

    void merge(Cell other) {
      tally.merge(other.tally);
      least = Math.min(least, other.least);
      most = Math.max(most, other.most);
    }
  }

  /** A row to be: the cells from one on have reached it, and all of that key or beyond. */
  private record Row(double at, int firstCell, long fromKey) {}

  private final double[] rows;
  private final NavigableMap<Long, Cell> cells = new TreeMap<>();

  /** Histories by what their first loss took by itself, under the keys of the cells. */
  private final NavigableMap<Long, Counted> atOnce = new TreeMap<>();

  private double[] waiting = new double[ENTRY * 8]; // not yet in cells
  private int filled;
  private final long[] histories;

  /** Nothing lost yet; {@code rows} are given, and rise; histories are of so many strata. */
  public Exceedance(double[] rows, int strata) {
    this.rows = rows;
    histories = new long[strata];
  }

  /** Adds a history of which nobody asks what its first loss took. */
  public void add(double amount, int stratum, double weight) {
    add(amount, 0, stratum, weight);
  }

  /**
   * Adds a history that lost so much, above 0; histories are counted by {@link #addHistories}.
   *
   * @param first what its first loss event took, 0 if nobody asks
   */
  public void add(double amount, double first, int stratum, double weight) {
    if (filled == waiting.length) {
      waiting = Arrays.copyOf(waiting, 2 * filled);
    }
    waiting[filled++] = amount;
    waiting[filled++] = first;
    waiting[filled++] = stratum;
    waiting[filled++] = weight;
  }

  public void addHistories(int stratum, long count) {
    histories[stratum] += count;
  }

  /** Adds all that a chunk has seen. */
  public void merge(Exceedance chunk) {
    chunk.cells.forEach((key, cell) -> cells.computeIfAbsent(key, this::cell).merge(cell));
    chunk.atOnce.forEach((key, some) -> atOnce.merge(key, some, Counted::plus));
    sort(chunk);
    Arrays.setAll(histories, s -> histories[s] + chunk.histories[s]);
  }

  private void sort(Exceedance from) {
    for (int i = 0; i < from.filled; i += ENTRY) {
      double amount = rounded(from.waiting[i]);
      int stratum = (int) from.waiting[i + 2];
      double weight = from.waiting[i + 3];
      cells.computeIfAbsent(key(amount), this::cell).add(amount, stratum, weight);
      if (from.waiting[i + 1] > 0) {
        Counted one = new Counted(1, weight);
        atOnce.merge(key(rounded(from.waiting[i + 1])), one, Counted::plus);
      }
    }
    from.filled = 0;
  }

  private Cell cell(long key) {
    return new Cell(key, histories.length);
  }

  /** A sum of all histories, and of no cell yet. */
  private WeightedTally reachedByNone() {
    WeightedTally none = new WeightedTally(histories.length);
    for (int s = 0; s < histories.length; s++) {
      none.addHistories(s, histories[s]);
    }
    return none;
  }

  private static double rounded(double amount) {
    int drop = MANTISSA - SAME_BITS;
    long half = 1L << (drop - 1);
    return Double.longBitsToDouble((Double.doubleToLongBits(amount) + half) >>> drop << drop);
  }

  /** Rises with the amount: its leading bits, then how many rows it reaches. */
  private long key(double amount) {
    long leading = Double.doubleToLongBits(amount) >>> (MANTISSA - CELL_BITS);
    return leading << ROW_BITS | Thresholds.reached(rows, amount);
  }

  /** What histories add up to that lost at least so much, an amount's whole cell included. */
  public WeightedTally from(double amount) {
    sort(this);
    WeightedTally sum = reachedByNone();
    cells.tailMap(key(rounded(amount)), true).values().forEach(cell -> sum.merge(cell.tally));
    return sum;
  }

  /**
   * The given rows and those that are added, rising.
   *
   * @param any the sum of the weights of all histories with a loss
   */
  public List<Point> points(double any, Chance chance) {
    sort(this);
    List<Cell> sorted = new ArrayList<>(cells.values());
    List<Row> all = chosen(sorted, FINEST * any);
    List<Point> points = new ArrayList<>();
    WeightedTally reached = reachedByNone();
    int cell = sorted.size();
    for (int i = all.size() - 1; i >= 0; i--) {
      Row row = all.get(i);
      while (cell > row.firstCell()) {
        reached.merge(sorted.get(--cell).tally);
      }
      points.add(new Point(row.at(), chance.of(row.at(), reached, later(row, reached))));
    }
    Collections.reverse(points);
    return points;
  }

  private Counted later(Row row, WeightedTally reached) {
    Counted first = Counted.NONE;
    for (Counted some : atOnce.tailMap(row.fromKey(), true).values()) {
      first = first.plus(some);
    }
    return new Counted(
        Math.max(0, reached.nonZero() - first.histories()),
        Math.max(0, reached.sum() - first.weight()));
  }

  private List<Row> chosen(List<Cell> sorted, double finest) {
    double[] sums = new double[sorted.size() + 1]; // of each cell and those beyond it
    for (int j = sorted.size() - 1; j >= 0; j--) {
      sums[j] = sums[j + 1] + sorted.get(j).tally.sum();
    }
    int[] first = firstCells();
    List<Row> all = new ArrayList<>();
    for (int i = 0; i < rows.length; i++) {
      all.add(new Row(rows[i], first[i], key(rows[i])));
      if (i + 1 < rows.length) {
        between(all, sorted, sums, first[i + 1], rows[i + 1], finest);
      }
    }
    return all;
  }

  /** For each given row, the first of the cells that reach it. */
  private int[] firstCells() {
    int[] first = new int[rows.length];
    int cell = 0;
    for (long key : cells.keySet()) {
      cell++;
      for (int i = (int) (key & ROWS); i < rows.length; i++) {
        first[i] = cell;
      }
    }
    return first;
  }

  /** Adds rows after the last one, up to the next given row and its first cell. */
  private static void between(
      List<Row> all, List<Cell> sorted, double[] sums, int end, double before, double finest) {
    double last = sums[all.get(all.size() - 1).firstCell()];
    for (int j = all.get(all.size() - 1).firstCell(); j < end; j++) {
      Cell cell = sorted.get(j);
      if (last - sums[j + 1] > finest) {
        last = add(all, new Row(cell.least, j, cell.key), before, sums, last);
      }
      if (last - sums[j + 1] > finest) {
        Row beyond = new Row(cell.most * JUST_ABOVE, j + 1, cell.key + 1);
        last = add(all, beyond, before, sums, last);
      }
    }
  }

  /** Adds a row if there is room for it, and tells what the last row holds. */
  private static double add(List<Row> all, Row row, double before, double[] sums, double last) {
    if (row.at() <= all.get(all.size() - 1).at() || row.at() >= before) {
      return last;
    }
    all.add(row);
    return sums[row.firstCell()];
  }
}
