package lastcopy.history.screen;

import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.history.plan.SlotPlan;
import lastcopy.scenario.Ways;

/**
 * A history in which one thing goes wrong and nothing else that matters up to the horizon: a copy
 * without redundancy goes, or a drive of a shelf, or a mishap takes what stands in one place, all
 * come back, and what replaced them lasts; other copies go only once the working copy has all
 * again. Nothing is lost by it if a copy that stands was up to date at that instant, and hides
 * nothing that a refill would meet.
 */
final class LoneOutage {

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final UndisturbedCourse course;
  private final double[] limit;
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
   * @param lanes the histories that are decided together
   */
  LoneOutage(
      Plan plan,
      Draws draws,
      RepairTimes times,
      UndisturbedCourse course,
      double[] limit,
      HistoryLanes lanes) {
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.course = course;
    this.limit = limit;
    noticed = new Noticed(plan, lanes);
    CopyPlan working = plan.copy(0);
    workReads = working.set().hidesNothing() || working.set().survives() > 0;
    boolean all =
        course != null && (plan.evenShoots() || plan.keepHours() == Double.POSITIVE_INFINITY);
    for (int c = 0; c < plan.copies(); c++) {
      all &= !plan.copy(c).rotates();
    }
    plain = all && workReads;
    longestRefill = plain ? longestRefill(plan) : Double.POSITIVE_INFINITY;
  }

  /** Hours after which the working copy surely has all again: from every other copy, and more. */
  static double longestRefill(Plan plan) {
    double hours = 24;
    for (int c = 1; c < plan.copies(); c++) {
      hours += 2 * plan.mostEverShot() / plan.copy(0).refillPerHour()[c];
      hours += 2 * Ways.restoresIn(plan.copy(c).stated());
    }
    return hours;
  }

  /**
   * Whether a source, however often it happens, takes nothing for good while the working copy
   * stands, but for strikes at the desk that are noticed late.
   */
  boolean sparesWork(int source) {
    if (!workReads) {
      return false;
    }
    if (source < plan.slots()) {
      return plan.slot(source).copy() != 0;
    }
    ShockProcess shock = shock(source);
    return switch (shock.kind()) {
      case PLACE, BOX, SPOIL -> !shock.strikesCards() && !shock.mayStrike(0);
      case STOP -> true;
      case DELETION, MALWARE -> noticed.mayBeInTime(shock);
    };
  }

  /** Whether a source that spares the working copy takes another copy, which is refilled. */
  boolean takesOther(int source) {
    return source < plan.slots()
        || switch (shock(source).kind()) {
          case PLACE, BOX, SPOIL -> true;
          case STOP, DELETION, MALWARE -> false;
        };
  }

  /** Whether a source that spares the working copy strikes at the desk. */
  boolean isAtDesk(int source) {
    return source >= plan.slots() && noticed.mayBeInTime(shock(source));
  }

  /** Of the histories in which it strikes at the desk, those in which it may be noticed late. */
  long mayBeNoticedLate(int source, long struck) {
    return noticed.mayBeLate(struck, shock(source));
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
    return source < plan.slots()
        ? failureLosesNothing(plan.slot(source), others)
        : strikeLosesNothing(source, others);
  }

  /** A time before which a source surely does not happen. */
  double first(int source) {
    if (source >= plan.slots()) {
      return draws.untilNext(shock(source).perHour(), shock(source).key(0));
    }
    SlotPlan slot = plan.slot(source);
    if (!agesByItself(slot)) {
      return 0;
    }
    boolean later = slot.enters() > 0;
    double age = later ? slot.boughtAt() : draws.remaining(slot.age(), 0, slot.key(Draws.AGE, 0));
    return slot.enters() + slot.life().remaining(age, draws.budget(slot.firstKey()));
  }

  private ShockProcess shock(int source) {
    return plan.shock(source - plan.slots());
  }

  private boolean failureLosesNothing(SlotPlan slot, double others) {
    if (!agesByItself(slot)) {
      return false;
    }
    double at = first(slot.index());
    if (!(at <= plan.horizon())) {
      return true;
    }
    CopyPlan copy = plan.copyOf(slot);
    single[0] = copy.index();
    boolean shelf = copy.set().shelf();
    double back = shelf ? times.replacedAt(slot, 0, at) : times.backAt(copy, 0, at);
    return copy.set().survives() == 0
        && lasts(slot, back)
        && back + longestRefill <= others
        && isHeldElsewhere(at, slot.to(), single);
  }

  private boolean strikeLosesNothing(int source, double others) {
    ShockProcess shock = shock(source);
    if (!simple(shock) || shock.takes() < 1) {
      return false;
    }
    double at = first(source);
    double again = draws.untilNext(shock.perHour(), shock.key(1));
    if (at + again <= plan.horizon()) {
      return at > plan.horizon();
    }
    for (int c : shock.copies()) {
      if (!isBackForGood(plan.copy(c), at, others)) {
        return false;
      }
    }
    return isHeldElsewhere(at, Double.POSITIVE_INFINITY, shock.copies());
  }

  /** Whether a copy that goes at a time is full again before others happen, and then lasts. */
  private boolean isBackForGood(CopyPlan copy, double at, double others) {
    double back = times.backAt(copy, 0, at);
    if (back + longestRefill > others) {
      return false;
    }
    int mayGo = 0;
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      SlotPlan slot = plan.slot(s);
      if (!agesByItself(slot)) {
        return false;
      }
      mayGo += standsBut(slot, at, back) ? 0 : 1;
    }
    return mayGo <= sparedDrives(copy);
  }

  /** Whether there is surely a drive at all times but while all are away. */
  private boolean standsBut(SlotPlan slot, double at, double back) {
    boolean before = !mayFail(slot) || first(slot.index()) > at;
    boolean after = slot.enters() > at ? !mayFail(slot) : lasts(slot, back);
    return before && after;
  }

  /** How many drives of a set may fail as often as they like, if the others never do. */
  private static int sparedDrives(CopyPlan copy) {
    SetPlan set = copy.set();
    if (set.strain() != 1) {
      return 0; // which makes the others fail
    }
    return set.hidesNothing() ? set.survives() : Math.max(0, set.survives() - 1);
  }

  /** Whether the second drive of a slot, in service from a time on, lives to the horizon. */
  private boolean lasts(SlotPlan slot, double from) {
    double budget = draws.budget(slot.key(Draws.LIFE, 1));
    return from + slot.life().remaining(slot.boughtAt(), budget) > plan.horizon();
  }

  /** Whether the first drive of a slot fails by its own law, from a time that is known. */
  private boolean agesByItself(SlotPlan slot) {
    return !Double.isNaN(slot.enters())
        && slot.batch() < 0
        && slot.lifeOff() == null
        && !slot.isSwapped();
  }

  private boolean mayFail(SlotPlan slot) {
    return draws.uniform(slot.firstKey()) >= limit[slot.index()];
  }

  /** Whether a copy that stands has all that the working copy holds below a position. */
  private boolean isHeldElsewhere(double at, double below, int[] going) {
    course.beginUpTo(at);
    for (int c = 1; c < plan.copies(); c++) {
      if (!contains(going, c) && givesAll(plan.copy(c)) && course.holdsAll(c, below, at)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a refill from a copy surely reads all: nothing is hidden, or redundancy is whole. */
  private boolean givesAll(CopyPlan copy) {
    if (copy.set().hidesNothing()) {
      return true;
    }
    boolean all = copy.set().survives() > 0;
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      all &= !mayFail(plan.slot(s));
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
