package lastcopy.history;

import lastcopy.law.Law;

/**
 * A history in which one thing goes wrong and nothing else that matters up to the horizon: a copy
 * without redundancy goes, or a mishap takes what stands in one place, all come back, and what
 * replaced them lasts; other copies go only once the working copy has all again. Nothing is lost by
 * it if a copy that stands was up to date at that instant, and hides nothing that a refill would
 * meet.
 */
final class LoneOutage {

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final UndisturbedCourse course;
  private final double[] limit;
  private final RandomShoots shoots;
  private final Noticed noticed;

  /** Whether the working copy, while it stands, gives whatever is read from it. */
  private final boolean workReads;

  private final boolean plain;
  private final double longestRefill;
  private final int[] single = new int[1];

  /**
   * Outages of a layout.
   *
   * @param course the undisturbed course; null if there is none, and then nothing is decided
   * @param limit by source, uniforms below which it surely does not happen by the horizon
   */
  LoneOutage(Plan plan, Draws draws, RepairTimes times, UndisturbedCourse course, double[] limit) {
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.course = course;
    this.limit = limit;
    shoots = new RandomShoots(plan, draws);
    noticed = new Noticed(plan, draws);
    workReads = hidesNothing(0) || plan.survives[0] > 0;
    boolean all = plan.evenShoots ? course != null : plan.keepHours == Double.POSITIVE_INFINITY;
    for (int c = 0; c < plan.copies; c++) {
      all &= plan.visits[c] == null;
    }
    plain = all && workReads && plan.copy[0].startsFull();
    longestRefill = plain ? longestRefill(plan) : Double.POSITIVE_INFINITY;
  }

  /** Hours after which the working copy surely has all again: from every other copy, and more. */
  private static double longestRefill(Plan plan) {
    double hours = 24;
    for (int c = 1; c < plan.copies; c++) {
      hours += 2 * plan.mostEverShot() / plan.refillPerHour[0][c];
    }
    return hours;
  }

  /**
   * Whether a source, however often it happens, takes nothing for good while the working copy
   * stands, but for strikes at the desk that are noticed late.
   */
  boolean sparesWork(int source) {
    if (!workReads || !plan.copy[0].startsFull()) {
      return false;
    }
    if (source < plan.slots) {
      return plan.copyOfSlot[source] != 0;
    }
    ShockProcess shock = plan.shocks[source - plan.slots];
    return switch (shock.kind()) {
      case PLACE, BOX, SPOIL -> !shock.strikesCards() && !contains(shock.copies(), 0);
      case STOP -> true;
      case DELETION, MALWARE -> noticed.mayBeInTime(shock);
    };
  }

  /** Whether a source that spares the working copy takes another copy, which is refilled. */
  boolean takesOther(int source) {
    return source < plan.slots
        || switch (plan.shocks[source - plan.slots].kind()) {
          case PLACE, BOX, SPOIL -> true;
          case STOP, DELETION, MALWARE -> false;
        };
  }

  /** Whether a source that spares the working copy strikes at the desk. */
  boolean isAtDesk(int source) {
    return source >= plan.slots && noticed.mayBeInTime(plan.shocks[source - plan.slots]);
  }

  /** Whether all strikes at the desk are noticed in time in the history of the draws. */
  boolean isNoticedInTime(int source) {
    return noticed.allInTime(plan.shocks[source - plan.slots]);
  }

  private static boolean simple(ShockProcess shock) {
    return (shock.kind() == ShockProcess.Kind.PLACE || shock.kind() == ShockProcess.Kind.BOX)
        && !shock.strikesCards();
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

  /** A time before which a source surely does not happen. */
  double first(int source) {
    if (source >= plan.slots) {
      double perHour = plan.shocks[source - plan.slots].perHour();
      return draws.untilNext(perHour, plan.firstStrikeKey[source - plan.slots]);
    }
    if (!agesByItself(source)) {
      return 0;
    }
    long key = Draws.key(plan.slotSource[source], Draws.AGE, 0);
    double age = draws.remaining(plan.age[source], 0, key);
    return plan.life[source].remaining(age, draws.budget(plan.firstLifeKey[source]));
  }

  private boolean failureLosesNothing(int slot, double others) {
    if (!agesByItself(slot)) {
      return false;
    }
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
    ShockProcess shock = plan.shocks[source - plan.slots];
    if (!simple(shock) || shock.takes() < 1) {
      return false;
    }
    double at = first(source);
    double again = draws.untilNext(shock.perHour(), Draws.key(shock.source(), Draws.STRIKE, 1));
    if (at + again <= plan.horizon) {
      return at > plan.horizon;
    }
    for (int copy : shock.copies()) {
      double back = times.backAt(copy, 0, at);
      if (back + longestRefill > others) {
        return false;
      }
      for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
        if (!agesByItself(s) || mayFail(s) || !lasts(s, back)) {
          return false;
        }
      }
    }
    return isHeldElsewhere(at, shock.copies());
  }

  /** Whether the second drive of a slot, in service from a time on, lives to the horizon. */
  private boolean lasts(int slot, double from) {
    Law life = plan.life[slot];
    long key = Draws.key(plan.slotSource[slot], Draws.LIFE, 1);
    return from + life.remaining(plan.boughtAt[slot], draws.budget(key)) > plan.horizon;
  }

  /** Whether the first drive of a slot fails by its own law, and is in service from the start. */
  private boolean agesByItself(int slot) {
    return !plan.shelf[plan.copyOfSlot[slot]]
        && plan.batchOf[slot] < 0
        && plan.lifeOff[slot] == null
        && plan.replaceAt[slot] == Double.POSITIVE_INFINITY;
  }

  private boolean mayFail(int slot) {
    return draws.uniform(plan.firstLifeKey[slot]) >= limit[slot];
  }

  private boolean isHeldElsewhere(double at, int[] going) {
    int e = plan.evenShoots ? course.entry(at, false) : 0;
    for (int c = 1; e >= 0 && c < plan.copies; c++) {
      if (!contains(going, c) && givesAll(c) && isUpToDate(c, e, at)) {
        return true;
      }
    }
    return false;
  }

  private boolean isUpToDate(int copy, int entry, double at) {
    return plan.evenShoots
        ? course.base(entry, copy) >= course.base(entry, 0)
        : shoots.areHeld(copy, at);
  }

  private boolean hidesNothing(int copy) {
    return plan.readErrors[copy] == 0 && plan.defects[copy] == null;
  }

  /** Whether a refill from a copy surely reads all: nothing is hidden, or redundancy is whole. */
  private boolean givesAll(int copy) {
    boolean all = hidesNothing(copy) || plan.survives[copy] > 0;
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1] && !hidesNothing(copy); s++) {
      all &= !mayFail(s);
    }
    return all;
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
