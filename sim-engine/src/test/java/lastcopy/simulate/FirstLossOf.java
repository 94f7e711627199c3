package lastcopy.simulate;

import lastcopy.history.History;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/** When the first loss of a history falls. */
final class FirstLossOf implements Ledger {

  private double hours;

  /** Hours to the first loss of a history, or infinity. */
  double of(History history, long number) {
    hours = Double.POSITIVE_INFINITY;
    history.simulate(number, this);
    return hours;
  }

  @Override
  public void lost(Loss loss) {
    hours = Math.min(hours, loss.hours());
  }

  @Override
  public void recovered(Cause cause, double work, double whole) {}

  @Override
  public void passed(
      double h, double bare, double fragile, double down, double refill, double most) {}

  @Override
  public boolean wantsTime() {
    return false;
  }
}
