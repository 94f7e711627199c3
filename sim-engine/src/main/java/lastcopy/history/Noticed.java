package lastcopy.history;

import lastcopy.law.Law;

/**
 * Deletions and malware that the working copy outlives: it keeps what disappears for a while, and
 * if it stands, and each strike is noticed within that while, it has all back without the others.
 */
final class Noticed {

  private final Plan plan;
  private final Draws draws;

  Noticed(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  /** Whether a shock is one of those, and the working copy keeps what it takes. */
  boolean mayBeInTime(ShockProcess shock) {
    return law(shock) != null && plan.keepsDeleted[0] > 0;
  }

  /** The law of the time until a strike at the desk is noticed; null for any other shock. */
  private Law law(ShockProcess shock) {
    return switch (shock.kind()) {
      case DELETION -> plan.studio.desk().deletion().orElseThrow().noticed();
      case MALWARE -> plan.studio.desk().malware().orElseThrow().noticed();
      default -> null;
    };
  }

  /** Whether each strike up to the horizon is surely noticed before the working copy drops it. */
  boolean allInTime(ShockProcess shock) {
    Law law = law(shock);
    double at = 0;
    for (int k = 0; ; k++) {
      at += draws.untilNext(shock.perHour(), Draws.key(shock.source(), Draws.STRIKE, k));
      if (at > plan.horizon * (1 + 1e-9)) {
        return true;
      }
      long key = Draws.key(shock.source(), Draws.BLOCK_NOTICED, k);
      double noticed = draws.remaining(law, 0, key);
      if (!(noticed * (1 + 1e-9) + 1e-6 < plan.keepsDeleted[0])) {
        return false;
      }
    }
  }
}
