package lastcopy.simulate.count;

import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;

/** A ledger that only losses are written into: all else comes from plain histories. */
public abstract class LossLedger implements Ledger {

  @Override
  public final void passed(
      double hours, double bare, double fragile, double away, double refill, double most) {
    // Exposure comes from plain histories.
  }

  @Override
  public final void recovered(Cause cause, double workHours, double wholeHours) {
    // Recoveries come from plain histories.
  }

  @Override
  public final boolean wantsTime() {
    return false;
  }
}
