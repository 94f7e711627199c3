package lastcopy.history.screen;

import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.number.Elementary;

/**
 * Deletions and malware that the working copy outlives: it keeps what disappears for a while, and
 * if it stands, and each strike is noticed within that while, it has all back without the others.
 */
final class Noticed {

  /** Hours by which rounding may put a notice before the time at which something is dropped. */
  private static final double ROUNDING = 1e-6;

  private final HistoryLanes lanes;
  private final double latestStrike;
  private final double keeps;
  private final int[] history = new int[HistoryLanes.SIZE];
  private final double[] at = new double[HistoryLanes.SIZE];

  Noticed(Plan plan, HistoryLanes lanes) {
    this.lanes = lanes;
    latestStrike = plan.horizon() * Screen.JUST_ABOVE;
    keeps = Math.min(Double.MAX_VALUE, plan.copy(0).keepsDeleted());
  }

  /** Whether a shock is one of those, and the working copy keeps what it takes. */
  boolean mayBeInTime(ShockProcess shock) {
    return shock.isAtDesk() && keeps > 0;
  }

  /**
   * The histories in which a strike up to the horizon may be noticed only once the working copy has
   * dropped what it took.
   *
   * @param struck in which there may be one
   */
  long mayBeLate(long struck, ShockProcess shock) {
    Law law = shock.noticed();
    if (law instanceof Fixed fixed) {
      return fixed.hours() * Screen.JUST_ABOVE + ROUNDING < keeps ? 0 : struck;
    }
    double latest = Math.max(0, (keeps - ROUNDING) / Screen.JUST_ABOVE);
    double inTime = Elementary.exp(-law.cumulativeHazard(latest)) * Screen.JUST_ABOVE;
    long below = HistoryLanes.below(inTime);
    long late = 0;
    int size = begin(struck);
    for (int k = 0; size > 0; k++) {
      size = nextStrike(size, shock, k);
      long key = Draws.key(shock.source(), Draws.BLOCK_NOTICED, k);
      for (int j = 0; j < size; j++) {
        late |= (1 - lanes.isAtLeast(below, history[j], key)) << history[j];
      }
    }
    return late;
  }

  private int begin(long struck) {
    int size = 0;
    for (long left = struck; left != 0; left &= left - 1) {
      history[size] = Long.numberOfTrailingZeros(left);
      at[size++] = 0;
    }
    return size;
  }

  /** Those in which the k-th strike is by the horizon, without a branch on what is drawn. */
  private int nextStrike(int size, ShockProcess shock, int k) {
    long key = shock.key(k);
    int kept = 0;
    for (int j = 0; j < size; j++) {
      int of = history[j];
      double time = at[j] + Draws.budget(lanes.historyKey(of), key) / shock.perHour();
      history[kept] = of;
      at[kept] = time;
      kept += (int) (~Double.doubleToRawLongBits(latestStrike - time) >>> (Long.SIZE - 1));
    }
    return kept;
  }
}
