package lastcopy.story;

import java.util.List;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/**
 * Writes down losses and nothing else.
 *
 * @param losses where to
 */
record LossLog(List<Loss> losses) implements Ledger {

  @Override
  public void lost(Loss loss) {
    losses.add(loss);
  }

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double mostBare) {}

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {}

  @Override
  public boolean wantsTime() {
    return false;
  }
}
