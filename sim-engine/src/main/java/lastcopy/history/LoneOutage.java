package lastcopy.history;

import lastcopy.law.Law;

/**
 * A history in which one thing goes wrong and nothing else that matters up to the horizon: a copy
 * without redundancy goes, or a mishap takes what stands in one place, all come back, and what
 * replaced them lasts; other copies go only once the working copy has all again. Nothing is lost by
 * it if a copy that stands was up to date at that instant.
 */
final class LoneOutage {

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final Course course;
  private final double[] limit;
  private final boolean plain;
  private final double longestRefill;
  private final int[] single = new int[1];

  /**
   * Outages of a layout.
   *
   * @param course the undisturbed course; null if there is none, and then nothing is decided
   * @param limit by source, uniforms below which it surely does not happen by the horizon
   */
  LoneOutage(Plan plan, Draws draws, RepairTimes times, Course course, double[] limit) {
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.course = course;
    this.limit = limit;
    boolean all = course != null;
    for (int c = 0; c < plan.copies; c++) {
      all &= plan.visits[c] == null && LoneSet.staysAsItIs(plan, c);
    }
    plain = all;
    longestRefill = plain ? longestRefill(plan) : Double.POSITIVE_INFINITY;
  }

  /** Hours after which the working copy surely has all again: from every other copy, and more. */
  private static double longestRefill(Plan plan) {
    double hours = 24;
    for (int c = 1; c < plan.copies; c++) {
      hours += 2 * plan.shoots.total(plan.horizon) / plan.refillPerHour[0][c];
    }
    return hours;
  }

  /** Whether a source, however often it happens, only takes copies other than the working copy. */
  boolean sparesWork(int source) {
    if (!plain) {
      return false;
    }
    if (source < plan.slots) {
      return plan.copyOfSlot[source] != 0;
    }
    Striker striker = plan.strikers[source - plan.slots];
    return simple(striker) && !contains(striker.copies(), 0);
  }

  private static boolean simple(Striker striker) {
    return (striker.kind() == Striker.Kind.PLACE || striker.kind() == Striker.Kind.BOX)
        && !striker.strikesCards();
  }

  /**
   * Whether surely nothing is lost if of all sources that take the working copy only one may happen
   * by the horizon, and none of the others before a time.
   */
  boolean losesNothing(int source, double others) {
    if (!plain) {
      return false;
    }
    return source < plan.slots
        ? failureLosesNothing(source, others)
        : strikeLosesNothing(source, others);
  }

  /** When a source happens for the first time. */
  double first(int source) {
    if (source >= plan.slots) {
      double perHour = plan.strikers[source - plan.slots].perHour();
      return draws.untilNext(perHour, plan.firstStrikeKey[source - plan.slots]);
    }
    long key = Draws.key(plan.slotSource[source], Draws.AGE, 0);
    double age = draws.remaining(plan.age[source], 0, key);
    return plan.life[source].remaining(age, draws.budget(plan.firstLifeKey[source]));
  }

  private boolean failureLosesNothing(int slot, double others) {
    double at = first(slot);
    if (!(at <= plan.horizon)) {
      return true;
    }
    single[0] = plan.copyOfSlot[slot];
    double back = times.backAt(single[0], 0, at);
    return plan.survives[single[0]] == 0
        && lasts(slot, back)
        && back + longestRefill <= others
        && isHeldElsewhere(at, single);
  }

  private boolean strikeLosesNothing(int source, double others) {
    Striker striker = plan.strikers[source - plan.slots];
    if (!simple(striker) || striker.takes() < 1) {
      return false;
    }
    double at = first(source);
    double again = draws.untilNext(striker.perHour(), Draws.key(striker.source(), Draws.STRIKE, 1));
    if (at + again <= plan.horizon) {
      return at > plan.horizon;
    }
    for (int copy : striker.copies()) {
      double back = times.backAt(copy, 0, at);
      if (back + longestRefill > others) {
        return false;
      }
      for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
        if (draws.uniform(plan.firstLifeKey[s]) >= limit[s] || !lasts(s, back)) {
          return false;
        }
      }
    }
    return isHeldElsewhere(at, striker.copies());
  }

  /** Whether the second drive of a slot, in service from a time on, lives to the horizon. */
  private boolean lasts(int slot, double from) {
    Law life = plan.life[slot];
    long key = Draws.key(plan.slotSource[slot], Draws.LIFE, 1);
    return from + life.remaining(plan.boughtAt[slot], draws.budget(key)) > plan.horizon;
  }

  private boolean isHeldElsewhere(double at, int[] going) {
    int e = course.entry(at, false);
    for (int c = 1; e >= 0 && c < plan.copies; c++) {
      if (!contains(going, c) && course.base(e, c) >= course.base(e, 0)) {
        return true;
      }
    }
    return false;
  }

  private static boolean contains(int[] copies, int copy) {
    for (int each : copies) {
      if (each == copy) {
        return true;
      }
    }
    return false;
  }
}
