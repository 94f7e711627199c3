package lastcopy.simulate.rare;

import java.util.List;
import java.util.function.LongFunction;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/**
 * Histories that all run the same path, so that all weigh the same: what is made of them can be
 * reckoned by hand.
 *
 * @param events by group and level
 * @param hazard by group and level
 * @param most by group, the largest factor
 * @param losses of a history's number
 * @param told of each number that is simulated
 */
record OnePath(
    double[][] events,
    double[][] hazard,
    double[] most,
    LongFunction<List<Loss>> losses,
    List<Long> told)
    implements Biasable {

  private static final Cause DRIVE = new Cause("drive", "a drive");

  /** A loss after 100 h. */
  static Loss loss(double bytes, boolean everything) {
    return new Loss(100, bytes, 1, 1, everything, DRIVE, 1);
  }

  /** Nothing at all happens but losses of 10 bytes, in each history of so many. */
  static OnePath losing(long oneIn, List<Long> told) {
    return new OnePath(
        new double[1][1],
        new double[1][1],
        new double[] {1},
        number -> number % oneIn == 0 ? List.of(loss(10, false)) : List.of(),
        told);
  }

  @Override
  public int groups() {
    return events.length;
  }

  @Override
  public int levels() {
    return events[0].length;
  }

  @Override
  public int depth(int level) {
    return level;
  }

  @Override
  public double mostFactor(int group) {
    return most[group];
  }

  @Override
  public void simulate(long number, Bias bias, Ledger to) {
    told.add(number);
    losses.apply(number).forEach(to::lost);
  }

  @Override
  public double events(int group, int level) {
    return events[group][level];
  }

  @Override
  public double hazard(int group, int level) {
    return hazard[group][level];
  }

  @Override
  public double logOfTheRest() {
    return 0;
  }
}
