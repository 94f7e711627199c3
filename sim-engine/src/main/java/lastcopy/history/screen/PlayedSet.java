package lastcopy.history.screen;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lastcopy.history.hazard.Frailty;
import lastcopy.history.hazard.Hazards;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.history.plan.SetPlan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.random.SourceKey;

/**
 * Drives that stand in for each other, by themselves, which matter to each other: by strain, by a
 * frailty that they share, by bits that cannot be read once the last redundancy is used up; or are
 * swapped at a planned age. They are played in one history after another, with the draws and the
 * sums of the general path ({@code Drives}, {@code Clocks}, {@code Repairs}), and without all that
 * other copies need. Mirrored pairs are played pair by pair.
 */
final class PlayedSet {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  /** All that it reckons with; shocks are sources by themselves. */
  private static final Set<Effect> RECKONS =
      EnumSet.of(
          Effect.FAILURES,
          Effect.REPAIRS,
          Effect.SHOCKS,
          Effect.STRAIN,
          Effect.SHARED_FRAILTY,
          Effect.PLANNED_SWAPS,
          Effect.READ_ERRORS,
          Effect.PAIRS,
          Effect.UNLIKE_DRIVES);

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final Runnable step;
  private final Frailty frailty;
  private final Hazards hazards;
  private final CopyPlan copy;
  private final int survives;
  private final double strain;
  private final double readErrors;
  private final int first;
  private final int end;

  /** Uniforms up to it surely mean that a rebuild reads all bits. */
  private final double readsAll;

  private final boolean[] up;
  private final int[] generation;
  private final int[] failures;
  private final double[] frail;
  private final double[] since;
  private final double[] age;
  private final double[] budget;
  private final double[] factor;

  /** By drive, when it fails if nothing changes; by failed drive, when it is whole again. */
  private final double[] next;

  private final double[] swap;

  /** Where few failures cannot matter: those histories are not played. */
  private final Optional<FewFailures> few;

  private final OneFailure one;
  private int down;
  private boolean wasBare;

  /**
   * A lot of drives of a copy.
   *
   * @param lot its number
   * @param few where few failures cannot matter
   * @param step run for each failure, repair and swap
   */
  PlayedSet(
      Plan plan,
      Draws draws,
      RepairTimes times,
      CopyPlan copy,
      int lot,
      Optional<FewFailures> few,
      Runnable step) {
    this.few = few;
    this.step = step;
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.copy = copy;
    frailty = new Frailty(plan, draws);
    hazards = new Hazards(plan);
    SetPlan set = copy.set();
    survives = set.survives();
    strain = set.strain();
    readErrors = set.readErrors();
    first = copy.firstSlot() + lot * set.together();
    end = first + set.together();
    double bits = 8 * mostBytesRead();
    readsAll = plan.evenShoots() ? Screen.below(bits * readErrors) : 0;
    up = new boolean[plan.slots()];
    generation = new int[plan.slots()];
    failures = new int[plan.slots()];
    frail = new double[plan.slots()];
    since = new double[plan.slots()];
    age = new double[plan.slots()];
    budget = new double[plan.slots()];
    factor = new double[plan.slots()];
    next = new double[plan.slots()];
    swap = new double[plan.slots()];
    one = new OneFailure(plan, draws, times, hazards, copy, lot);
  }

  private double mostBytesRead() {
    double all = (end - first) * copy.set().driveSize();
    return Math.max(plan.shoots().total(plan.horizon()), all);
  }

  /** Whether all that can befall the set of a copy is played here. */
  static boolean stands(CopyPlan copy, Set<Effect> effects) {
    return copy.set().survives() > 0 && RECKONS.containsAll(effects);
  }

  /** The histories of the lanes in which drives may fail by the horizon so that it matters. */
  long mayMatter(HistoryLanes lanes, double[] limit) {
    if (few.isPresent()) {
      return few.get().more(lanes);
    }
    return one.mayFail(lanes, limit);
  }

  /** Whether in a lane, the history of the draws, too many drives may be down. */
  boolean fails(int lane) {
    wasBare = false;
    frailty.clear();
    boolean spared = few.isEmpty() && (fewFail() || one.isAll(lane));
    return !spared && fails();
  }

  /**
   * Whether so few of the first drives fail by the horizon, as frail as their batch is and however
   * strained, that at any time some drive stands that reads all: in a slot where none does, one is
   * always up.
   */
  private boolean fewFail() {
    int mayFail = 0;
    for (int s = first; s < end; s++) {
      SlotPlan slot = plan.slot(s);
      double most = frailty.atStart(slot) * Math.max(1, strain) * slot.firstHazard();
      mayFail += draws.budget(slot.firstKey()) > most * Screen.JUST_ABOVE ? 0 : 1;
    }
    return mayFail <= (readErrors > 0 ? survives - 1 : survives);
  }

  /** Whether in the history of the draws the set, it may be, has too many drives down. */
  private boolean fails() {
    start();
    while (true) {
      step.run();
      int slot = nextSlot();
      double at = Math.min(next[slot], swap[slot]);
      if (at > plan.horizon()) {
        return false;
      }
      if (swap[slot] < next[slot]) {
        renew(slot, at);
      } else if (up[slot]) {
        if (down == survives || isTied(slot, at)) {
          return true;
        }
        failed(slot, at);
      } else {
        if (down == survives && mayMissBits(slot)) {
          return true;
        }
        down--;
        renew(slot, at);
        strainChanged(at);
      }
    }
  }

  /**
   * Whether then, in the history last played, the working copy without redundancy might have hidden
   * bits from whoever read it.
   */
  boolean mayHideFromRefills() {
    return copy.index() == 0 && wasBare && readErrors > 0;
  }

  private void start() {
    down = 0;
    wasBare = false;
    Arrays.fill(generation, first, end, 0);
    Arrays.fill(failures, first, end, 0);
    for (int s = first; s < end; s++) {
      frail[s] = frailty.atStart(plan.slot(s));
      begin(s, 0, frailty.ageAtStart(plan.slot(s)), plan.slot(s).firstKey());
    }
  }

  private int nextSlot() {
    int earliest = first;
    double at = NEVER;
    for (int s = first; s < end; s++) {
      double then = Math.min(next[s], swap[s]);
      if (then < at) {
        at = then;
        earliest = s;
      }
    }
    return earliest;
  }

  /** What happens at the very instant of a failure is left to the general path. */
  private boolean isTied(int slot, double at) {
    boolean tied = swap[slot] == at;
    for (int s = first; s < end; s++) {
      tied |= s != slot && (next[s] == at || swap[s] == at);
    }
    return tied;
  }

  private void failed(int slot, double at) {
    up[slot] = false;
    swap[slot] = NEVER;
    down++;
    wasBare |= down == survives;
    int k = failures[slot]++;
    next[slot] =
        times.replacedAt(plan.slot(slot), k, at) + times.rebuildHours(plan.slot(slot), k, 0);
    strainChanged(at);
  }

  private boolean mayMissBits(int slot) {
    long key = plan.slot(slot).key(Draws.READ_ERRORS, failures[slot] - 1);
    return readErrors > 0 && draws.uniform(SourceKey.with(key, 0)) > readsAll;
  }

  private void renew(int slot, double at) {
    int g = ++generation[slot];
    SlotPlan its = plan.slot(slot);
    frail[slot] = frailty.later(its, g, its.boughtAt());
    begin(slot, at, its.boughtAt(), its.key(Draws.LIFE, g));
  }

  private void begin(int slot, double from, double atAge, long key) {
    up[slot] = true;
    since[slot] = from;
    age[slot] = atAge;
    factor[slot] = frail[slot] * strainNow();
    budget[slot] = draws.budget(key);
    double replaceAt = plan.slot(slot).replaceAt();
    swap[slot] = replaceAt == NEVER ? NEVER : from + Math.max(0, replaceAt - atAge);
    schedule(slot);
  }

  private double strainNow() {
    return down > 0 ? strain : 1;
  }

  private void strainChanged(double now) {
    for (int s = first; s < end && strain != 1; s++) {
      double to = frail[s] * strainNow();
      if (up[s] && factor[s] != to) {
        settle(s, now);
        factor[s] = to;
        schedule(s);
      }
    }
  }

  private void settle(int slot, double now) {
    double from = since[slot];
    if (now > from) {
      budget[slot] -= factor[slot] * hazards.between(slot, from, age[slot], now);
      budget[slot] = Math.max(0, budget[slot]);
      age[slot] += now - from;
      since[slot] = now;
    }
  }

  private void schedule(int slot) {
    double left = factor[slot] == 1 ? budget[slot] : budget[slot] / factor[slot];
    next[slot] = factor[slot] == 0 ? NEVER : hazards.after(slot, since[slot], age[slot], left);
  }
}
