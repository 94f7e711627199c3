package lastcopy.simulate.rare;

import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;

/** Histories as others simulate them, but for what a test changes. */
public class Decorated implements Biasable {

  private final Biasable of;

  /** The histories of another. */
  public Decorated(Biasable of) {
    this.of = of;
  }

  @Override
  public int groups() {
    return of.groups();
  }

  @Override
  public int levels() {
    return of.levels();
  }

  @Override
  public int depth(int level) {
    return of.depth(level);
  }

  @Override
  public void simulate(long number, Bias bias, Ledger to) {
    of.simulate(number, bias, to);
  }

  @Override
  public double events(int group, int level) {
    return of.events(group, level);
  }

  @Override
  public double hazard(int group, int level) {
    return of.hazard(group, level);
  }

  @Override
  public double logOfTheRest() {
    return of.logOfTheRest();
  }
}
