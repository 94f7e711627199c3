package lastcopy.history.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RepairTimes;
import lastcopy.number.Elementary;

/**
 * Decides quickly, without a queue and without an allocation, that nothing is lost in a history:
 * sets of drives fail and heal, and either copies other than the working copy go, or one copy or
 * place goes, for once, with nothing on it that is nowhere else. In doubt it says no, and the
 * history is played in full; since every draw is keyed by what it is for, both see the same luck.
 * Of the histories of {@link HistoryLanes} what can be is decided together.
 */
public final class Screen {

  /** A factor for what something is held against: rounding never hides that it happens. */
  static final double JUST_ABOVE = 1 + 1e-9;

  private final Plan plan;
  private final Draws draws;
  private final boolean decides;
  private final double[] limit;
  private final long[] keys;
  private final SetsAlone sets;
  private final LoneOutage outage;
  private final FirstFill firstFill;

  /** Sources, slots or shocks, of which one at most that takes the working copy may happen. */
  private final int[] serious;

  /** Those of them that spare the working copy come first, in any number. */
  private final int sparing;

  /** Of those that spare it, which take it only if they are noticed late. */
  private final boolean[] atDesk;

  private final long[] firstKey;

  private final double[] firstLimit;

  private final HistoryLanes lanes;

  /** Histories in which surely nothing is lost, or if so by one source only. */
  private long safe;

  /** By lane, a source that takes the working copy and may happen; −1 if none. */
  private final int[] only = new int[HistoryLanes.SIZE];

  /**
   * The screen of a layout.
   *
   * @param course its undisturbed course, or null if there is none
   * @param effects by copy, all that can befall it: nothing is decided where some of it is unknown
   * @param step run for each step of what may be long
   */
  public Screen(
      Plan plan, Draws draws, UndisturbedCourse course, List<Set<Effect>> effects, Runnable step) {
    this.plan = plan;
    this.draws = draws;
    limit = limits();
    keys = IntStream.range(0, limit.length).mapToLong(this::key).toArray();
    firstFill = new FirstFill(plan, LoneOutage.longestRefill(plan), keys);
    decides = firstFill.mayPass() && effects.stream().noneMatch(of -> of.contains(Effect.UNKNOWN));
    lanes = new HistoryLanes(draws);
    RepairTimes times = new RepairTimes(plan, draws);
    sets = new SetsAlone(plan, draws, times, lanes, limit, effects, step);
    outage = new LoneOutage(plan, draws, times, course, limit, lanes);
    int[] all =
        IntStream.range(0, limit.length)
            .filter(i -> i >= plan.slots() || !sets.decides(plan.slot(i).copy()))
            .toArray();
    int[] spare = IntStream.of(all).filter(outage::sparesWork).toArray();
    sparing = spare.length;
    atDesk = new boolean[sparing];
    for (int i = 0; i < sparing; i++) {
      atDesk[i] = outage.isAtDesk(spare[i]);
    }
    serious =
        IntStream.concat(IntStream.of(spare), IntStream.of(all).filter(i -> !outage.sparesWork(i)))
            .toArray();
    firstKey = IntStream.of(serious).mapToLong(this::key).toArray();
    firstLimit = IntStream.of(serious).mapToDouble(i -> limit[i]).toArray();
  }

  /** Uniforms below them surely mean that a source does not happen by the horizon. */
  private double[] limits() {
    double[] all = new double[plan.sources()];
    for (int i = 0; i < all.length; i++) {
      double hazard =
          i < plan.slots()
              ? plan.slot(i).firstHazard()
              : plan.shock(i - plan.slots()).perHour() * plan.horizon();
      boolean shared = i < plan.slots() && plan.slot(i).batch() >= 0;
      all[i] = shared && hazard > 0 ? 0 : below(hazard);
    }
    return all;
  }

  /** Uniforms below it surely mean that a source does not run up a hazard. */
  static double below(double hazard) {
    return Elementary.exp(-hazard) * (1 - 1e-9); // a little lower: rounding never hides an event
  }

  private long key(int source) {
    return source < plan.slots()
        ? plan.slot(source).firstKey()
        : plan.shock(source - plan.slots()).key(0);
  }

  /** Whether surely nothing fails, strikes or has to be filled in the history of the draws. */
  public boolean nothingHappens() {
    for (int i = 0; i < limit.length; i++) {
      if (draws.uniform(keys[i]) >= limit[i]) {
        return false;
      }
    }
    return decides && plan.copy(0).startsFull();
  }

  /**
   * Whether surely nothing is lost in a history; draws are then those of that history.
   *
   * @param number its number
   */
  public boolean nothingIsLost(long number) {
    if (!decides) {
      return false;
    }
    if (!lanes.holds(number)) {
      lanes.moveTo(number);
      decide();
    }
    int i = (int) (number & (HistoryLanes.SIZE - 1));
    if ((safe >>> i & 1) == 0) {
      return false;
    }
    if (only[i] < 0) {
      return true; // while the working copy stands it holds whatever the others do
    }
    draws.start(number);
    return outage.losesNothing(only[i], firstOfSparing());
  }

  private void decide() {
    long some = 0;
    long several = 0;
    Arrays.fill(only, -1);
    for (int s = sparing; s < firstKey.length; s++) {
      long happens = lanes.atLeast(firstLimit[s], firstKey[s]);
      several |= some & happens;
      some |= happens;
      for (long left = happens; left != 0; left &= left - 1) {
        only[Long.numberOfTrailingZeros(left)] = serious[s];
      }
    }
    safe = ~(several | firstFill.disturbed(lanes));
    for (int s = 0; s < sparing; s++) {
      if (atDesk[s]) {
        long struck = safe & lanes.atLeast(firstLimit[s], firstKey[s]);
        safe &= ~outage.mayBeNoticedLate(serious[s], struck);
      }
    }
    safe &= ~sets.fail(safe, this::takesOther);
  }

  /** Whether, in a lane, a copy may go that is refilled from the working copy. */
  private boolean takesOther(int history) {
    for (int s = 0; s < sparing; s++) {
      long below = HistoryLanes.below(firstLimit[s]);
      if (outage.takesOther(serious[s]) && lanes.isAtLeast(below, history, firstKey[s]) != 0) {
        return true;
      }
    }
    return false;
  }

  /** A time before which surely nothing happens that spares the working copy. */
  private double firstOfSparing() {
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sparing; i++) {
      if (draws.uniform(firstKey[i]) >= firstLimit[i]) {
        first = Math.min(first, outage.first(serious[i]));
      }
    }
    return first;
  }
}
