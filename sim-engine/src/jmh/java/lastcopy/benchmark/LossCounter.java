package lastcopy.benchmark;

import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/** Counts losses and wants no more. */
final class LossCounter implements Ledger {
  long losses;
  private final boolean wantsTime;

  LossCounter() {
    this(false);
  }

  LossCounter(boolean wantsTime) {
    this.wantsTime = wantsTime;
  }

  @Override
  public void lost(Loss loss) {
    losses++;
  }

  @Override
  public void recovered(Cause cause, double work, double whole) {}

  @Override
  public void passed(double h, double b, double f, double d, double r, double m) {
    if (!wantsTime) {
      throw new AssertionError("not asked for");
    }
  }

  @Override
  public boolean wantsTime() {
    return wantsTime;
  }
}
