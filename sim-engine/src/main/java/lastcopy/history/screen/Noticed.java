package lastcopy.history.screen;

import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;

/**
 * Deletions and malware that the working copy outlives: it keeps what disappears for a while, and
 * if it stands, and each strike is noticed within that while, it has all back without the others.
 */
final class Noticed {

  private final Draws draws;
  private final double horizon;
  private final double keeps;

  Noticed(Plan plan, Draws draws) {
    this.draws = draws;
    horizon = plan.horizon();
    keeps = plan.copy(0).keepsDeleted();
  }

  /** Whether a shock is one of those, and the working copy keeps what it takes. */
  boolean mayBeInTime(ShockProcess shock) {
    return shock.isAtDesk() && keeps > 0;
  }

  /** Whether each strike up to the horizon is surely noticed before the working copy drops it. */
  boolean allInTime(ShockProcess shock) {
    double at = 0;
    for (int k = 0; ; k++) {
      at += draws.untilNext(shock.perHour(), shock.key(k));
      if (at > horizon * (1 + 1e-9)) {
        return true;
      }
      long key = Draws.key(shock.source(), Draws.BLOCK_NOTICED, k);
      double noticed = draws.remaining(shock.noticed(), 0, key);
      if (!(noticed * (1 + 1e-9) + 1e-6 < keeps)) {
        return false;
      }
    }
  }
}
