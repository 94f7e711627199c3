package lastcopy.history;

import java.util.Arrays;
import lastcopy.random.SourceKey;

/**
 * A set of drives by itself, whose drives matter to each other: by strain, by a frailty that they
 * share, by bits that cannot be read once the last redundancy is used up; or are swapped at a
 * planned age. It is played in one history after another, with the draws and the sums of the
 * general path ({@link Lives}, {@link Clocks}, {@link Repairs}), and without all that other copies
 * need.
 */
final class PlayedSet {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Plan plan;
  private final Draws draws;
  private final RepairTimes times;
  private final Runnable step;
  private final Frailty frailty;
  private final Hazards hazards;
  private final int copy;
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
  private int down;
  private boolean wasBare;

  /**
   * The set of a copy.
   *
   * @param step run for each failure, repair and swap
   */
  PlayedSet(Plan plan, Draws draws, RepairTimes times, int copy, Runnable step) {
    this.step = step;
    this.plan = plan;
    this.draws = draws;
    this.times = times;
    this.copy = copy;
    frailty = new Frailty(plan, draws);
    hazards = new Hazards(plan);
    hazards.clear();
    first = plan.firstSlot[copy];
    end = plan.firstSlot[copy + 1];
    double bits = 8 * mostBytesRead();
    readsAll = plan.evenShoots ? Screen.below(bits * plan.readErrors[copy]) : 0;
    up = new boolean[plan.slots];
    generation = new int[plan.slots];
    failures = new int[plan.slots];
    frail = new double[plan.slots];
    since = new double[plan.slots];
    age = new double[plan.slots];
    budget = new double[plan.slots];
    factor = new double[plan.slots];
    next = new double[plan.slots];
    swap = new double[plan.slots];
  }

  private double mostBytesRead() {
    int drives = end - first;
    return Math.max(plan.shoots.total(plan.horizon), drives * plan.driveSize[copy]);
  }

  /** Whether nothing but what is played here can happen to the set of a copy. */
  static boolean stands(Plan plan, RepairTimes times, int copy) {
    boolean itself =
        plan.survives[copy] > 0
            && !plan.shelf[copy]
            && plan.defects[copy] == null
            && !times.dependOnWhatIsHeld(copy);
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      itself &= plan.lifeOff[s] == null;
    }
    return itself;
  }

  /** The histories of a lanes in which a drive may fail by the horizon. */
  long happens(HistoryLanes lanes, double[] limit) {
    long some = 0;
    for (int s = first; s < end; s++) {
      some |= lanes.atLeast(limit[s], plan.firstLifeKey[s]);
    }
    return some;
  }

  /** Whether in the history of the draws the set, it may be, has too many drives down. */
  boolean fails() {
    start();
    while (true) {
      step.run();
      int slot = nextSlot();
      double at = Math.min(next[slot], swap[slot]);
      if (at > plan.horizon) {
        return false;
      }
      if (swap[slot] < next[slot]) {
        renew(slot, at);
      } else if (up[slot]) {
        if (down == plan.survives[copy] || isTied(slot, at)) {
          return true;
        }
        failed(slot, at);
      } else {
        if (down == plan.survives[copy] && mayMissBits(slot)) {
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
    return copy == 0 && wasBare && plan.readErrors[copy] > 0;
  }

  private void start() {
    down = 0;
    wasBare = false;
    frailty.clear();
    Arrays.fill(generation, first, end, 0);
    Arrays.fill(failures, first, end, 0);
    for (int s = first; s < end; s++) {
      frail[s] = frailty.atStart(s);
      begin(s, 0, frailty.ageAtStart(s), plan.firstLifeKey[s]);
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
    wasBare |= down == plan.survives[copy];
    int k = failures[slot]++;
    next[slot] = times.replacedAt(slot, k, at) + times.rebuildHours(slot, k, 0);
    strainChanged(at);
  }

  private boolean mayMissBits(int slot) {
    long key = Draws.key(plan.slotSource[slot], Draws.READ_ERRORS, failures[slot] - 1);
    return plan.readErrors[copy] > 0 && draws.uniform(SourceKey.with(key, 0)) > readsAll;
  }

  private void renew(int slot, double at) {
    int g = ++generation[slot];
    frail[slot] = frailty.later(slot, g, plan.boughtAt[slot]);
    begin(slot, at, plan.boughtAt[slot], Draws.key(plan.slotSource[slot], Draws.LIFE, g));
  }

  private void begin(int slot, double from, double atAge, long key) {
    up[slot] = true;
    since[slot] = from;
    age[slot] = atAge;
    factor[slot] = frail[slot] * strain();
    budget[slot] = draws.budget(key);
    swap[slot] =
        plan.replaceAt[slot] == NEVER ? NEVER : from + Math.max(0, plan.replaceAt[slot] - atAge);
    schedule(slot);
  }

  private double strain() {
    return down > 0 ? plan.strain[copy] : 1;
  }

  private void strainChanged(double now) {
    for (int s = first; s < end && plan.strain[copy] != 1; s++) {
      double to = frail[s] * strain();
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
