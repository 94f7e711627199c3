package lastcopy.worlds;

import java.util.List;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.rare.RareTally;
import lastcopy.worlds.surface.Observations;

/**
 * What the histories of one world say of one layout: sums and sums of squares, of the figures that
 * are looked at over worlds. Mutable.
 */
final class WorldCounts {

  private static final int BYTES = 0;

  /** The rows of the curve follow; the last of them is any loss by the horizon. */
  private static final int CURVE = 1;

  private final double[] point;
  private final int replicate;
  private final double[] sums;
  private final double[] squares;
  private double histories;
  private double costs;
  private double costSquares;
  private double priced;

  /**
   * Nothing seen yet.
   *
   * @param rows of the curve
   */
  WorldCounts(double[] point, int replicate, int rows) {
    this.point = point.clone();
    this.replicate = replicate;
    sums = new double[CURVE + rows];
    squares = new double[CURVE + rows];
  }

  void add(LossTally tally) {
    histories += tally.histories();
    addCosts(tally.cost().totals());
    sums[BYTES] += tally.bytes().sum();
    squares[BYTES] += tally.bytes().sumSquares();
    for (int row = 0; row < sums.length - CURVE; row++) {
      sums[CURVE + row] += tally.lossesBy(row);
      squares[CURVE + row] += tally.lossesBy(row);
    }
  }

  private void addCosts(double[] totals) {
    for (double total : totals) {
      priced++;
      costs += total;
      costSquares += total * total;
    }
  }

  /** Whether any of its histories told what they cost. */
  boolean isPriced() {
    return priced > 0;
  }

  void add(RareTally tally) {
    histories += tally.any().histories();
    add(BYTES, tally.bytes());
    for (int row = 0; row < sums.length - CURVE; row++) {
      add(CURVE + row, tally.lossesBy(row));
    }
  }

  private void add(int figure, WeightedTally tally) {
    sums[figure] += tally.sum();
    squares[figure] += tally.sumSquares();
  }

  /** The chance of a loss by a row of the curve, in several worlds. */
  static Observations losses(List<WorldCounts> worlds, int row) {
    return figure(worlds, CURVE + row);
  }

  /** The bytes lost in several worlds. */
  static Observations bytes(List<WorldCounts> worlds) {
    return figure(worlds, BYTES);
  }

  /** The money spent in several worlds, each of them priced. */
  static Observations costs(List<WorldCounts> worlds) {
    return new Observations(
        worlds.stream().map(world -> world.point).toArray(double[][]::new),
        worlds.stream().mapToInt(world -> world.replicate).toArray(),
        worlds.stream().mapToDouble(world -> world.priced).toArray(),
        worlds.stream().mapToDouble(world -> world.costs).toArray(),
        worlds.stream().mapToDouble(world -> world.costSquares).toArray());
  }

  private static Observations figure(List<WorldCounts> worlds, int figure) {
    return new Observations(
        worlds.stream().map(world -> world.point).toArray(double[][]::new),
        worlds.stream().mapToInt(world -> world.replicate).toArray(),
        worlds.stream().mapToDouble(world -> world.histories).toArray(),
        worlds.stream().mapToDouble(world -> world.sums[figure]).toArray(),
        worlds.stream().mapToDouble(world -> world.squares[figure]).toArray());
  }
}
