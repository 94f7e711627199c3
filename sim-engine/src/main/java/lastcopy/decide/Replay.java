package lastcopy.decide;

import lastcopy.history.History;
import lastcopy.history.report.Account;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** The first histories of a candidate once more: what each costs. */
final class Replay implements Ledger {

  /** How many are played once more at most. */
  static final int MOST = 16_384;

  /** What each history costs; of no meaning where nothing is priced. */
  final double[] costs;

  private int now;

  private Replay(int count) {
    costs = new double[count];
  }

  /** Plays the first histories of a layout. */
  static Replay of(Studio studio, Layout layout, long seed, int count) {
    Replay replay = new Replay(count);
    History history = new History(studio, layout, seed);
    for (int i = 0; i < count; i++) {
      replay.now = i;
      history.simulate(i, replay);
    }
    return replay;
  }

  @Override
  public void lost(Loss loss) {
    // Which lose is remembered by the sums.
  }

  @Override
  public void paid(Account all) {
    costs[now] = all.total();
  }

  @Override
  public boolean wantsTime() {
    return true;
  }

  @Override
  public void passed(
      double hours, double bare, double fragile, double down, double refill, double most) {
    // Only money is asked for.
  }

  @Override
  public void recovered(Cause cause, double workHours, double wholeHours) {
    // Only money is asked for.
  }
}
