package lastcopy.history.hazard;

import lastcopy.history.course.RecordedCourse;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.kernel.SimulationClock;

/**
 * The hazard clocks of a history: when each drive fails and each process of shocks strikes.
 *
 * <p>A source of luck draws one unit exponential, its budget, and happens when the hazard that it
 * has run up, times the factors on it, has used up the budget. Frailty and strain are factors; they
 * may change at any time, and so may the law (a drive that is off). A {@link Bias} is one factor
 * more, with a {@link Likelihood} ratio.
 *
 * <p>The factor of a bias depends on the {@link Levels level}. On the undisturbed course what
 * stands in one copy only comes and goes by the clock, without an event.
 */
public final class Clocks {

  private final Plan plan;
  private final Draws draws;
  private final SimulationClock time;
  private final Hazards hazards;
  private final Likelihood likelihood;
  private final BareWatch watch = new BareWatch();
  private final HazardClock[] clock;

  /** The clocks of a layout; a timer of the simulation clock has the number of its source. */
  public Clocks(Plan plan, Draws draws, SimulationClock time) {
    this.plan = plan;
    this.draws = draws;
    this.time = time;
    hazards = new Hazards(plan);
    likelihood = new Likelihood(plan);
    clock = new HazardClock[plan.sources()];
    for (int i = 0; i < clock.length; i++) {
      clock[i] = new HazardClock(hazards, likelihood, watch, plan.horizon(), i);
    }
  }

  /**
   * From the next history on, another bias.
   *
   * @param course the undisturbed course of all histories, or null if there is none
   */
  public void bias(Bias to, RecordedCourse course) {
    likelihood.bias(to);
    // What stands in one copy only changes by the clock; a single copy always does.
    if (likelihood.biased() && watch.times() == null && course != null && plan.copies() > 1) {
      watch.times(course.bareTimes());
      for (HazardClock each : clock) {
        each.knowsBareTimes();
      }
    }
  }

  /** The bias and its likelihood ratio. */
  public Likelihood likelihood() {
    return likelihood;
  }

  /** Back to the start of a history. */
  public void clear() {
    for (HazardClock each : clock) {
      each.clear();
    }
    hazards.clear();
    likelihood.clear();
    watch.clear();
  }

  private boolean bareUntilNow() {
    return watch.until(time.now());
  }

  /** Whether some footage stood in one copy only just before now, as it always does in one copy. */
  public boolean mayLoseNow() {
    return plan.copies() == 1 || bareUntilNow();
  }

  /** A drive begins to age, or to count, at a time. */
  public void startLife(SlotPlan slot, double from, double atAge, double multiplier, long key) {
    clock[slot.index()].age(atAge);
    start(slot.index(), multiplier, from, key);
  }

  /** A process of shocks runs towards its next. */
  public void startShock(int process, long key) {
    start(plan.slots() + process, 1, time.now(), key);
  }

  private void start(int source, double multiplier, double from, long key) {
    clock[source].factor(multiplier);
    clock[source].start(from, draws.budget(key));
    schedule(source);
  }

  /** A source has happened, as its timer said. */
  public void fired(int source) {
    if (likelihood.biased()) {
      clock[source].settle(time.now());
      likelihood.happened(clock[source].group(), bareUntilNow(), 1);
    }
    clock[source].stop();
  }

  /** A source ends without having happened. */
  public void stop(int source) {
    if (clock[source].isRunning()) {
      clock[source].settle(time.now());
      clock[source].stop();
      time.cancel(source);
    }
  }

  /** From now on the hazard of a running drive has another factor. */
  public void setFactor(int slot, double to) {
    if (clock[slot].isRunning() && clock[slot].factor() != to) {
      clock[slot].settle(time.now());
      clock[slot].factor(to);
      schedule(slot);
    }
  }

  /** From now on a running drive stands alone, its partner being down, or no longer. */
  public void standsAlone(SlotPlan slot, boolean alone) {
    int to = alone ? plan.groups().ofAlone(slot) : plan.groups().of(slot);
    HazardClock its = clock[slot.index()];
    if (likelihood.biased() && its.isRunning() && its.group() != to) {
      its.settle(time.now());
      its.group(to);
      schedule(slot.index());
    }
  }

  /** The visit that is due now does not take place: the drives of the copy stay off. */
  public void skipVisit(CopyPlan copy) {
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      if (clock[s].isRunning() && plan.slot(s).lifeOff() != null) {
        clock[s].settle(time.now());
      }
    }
    hazards.skipVisit(copy, time.now());
    for (int s = copy.firstSlot(); s < copy.endSlot(); s++) {
      if (clock[s].isRunning() && plan.slot(s).lifeOff() != null) {
        schedule(s);
      }
    }
  }

  /**
   * A Poisson count at one instant, such as of bits that cannot be read; a bias makes it larger,
   * with the likelihood ratio of two Poisson counts.
   */
  public int count(int group, double mean, long key) {
    boolean whileBare = bareUntilNow();
    int count = draws.poisson(likelihood.factor(group, whileBare) * mean, key);
    if (likelihood.biased()) {
      likelihood.passed(group, whileBare, mean);
      likelihood.happened(group, whileBare, count);
    }
    return count;
  }

  /**
   * Whether something happens at one instant with a chance. A chance p is a hazard of −ln(1 − p)
   * that is run up at once, so that a bias multiplies it like any other.
   *
   * @param chance in (0, 1)
   */
  public boolean chance(int group, double chance, long key) {
    double uniform = draws.uniform(key);
    if (!likelihood.biased()) {
      return uniform <= chance;
    }
    boolean whileBare = bareUntilNow();
    double hazard = -StrictMath.log1p(-chance);
    double budget = -StrictMath.log1p(-uniform);
    double factor = likelihood.factor(group, whileBare);
    boolean happens = factor == 1 ? uniform <= chance : budget <= factor * hazard;
    likelihood.passed(group, whileBare, happens ? Math.min(budget / factor, hazard) : hazard);
    if (happens) {
      likelihood.happened(group, whileBare, 1);
    }
    return happens;
  }

  /**
   * What is wrong now; a bias may depend on it.
   *
   * @param things how many things are wrong
   * @param onCourse whether holdings are those of the undisturbed course
   * @param oneCopyOnly whether, off the course, some footage stands in one copy only
   */
  public void levelIs(int things, boolean onCourse, boolean oneCopyOnly) {
    int depth = Math.min(things, likelihood.levels().depths() - 1);
    boolean byTheClock = onCourse && watch.times() != null;
    if (depth != likelihood.depth() || watch.differs(byTheClock, oneCopyOnly)) {
      settleAll();
      likelihood.depth(depth);
      if (byTheClock && !watch.byTheClock()) {
        lookUpAll();
      }
      watch.is(byTheClock, oneCopyOnly);
      scheduleAll();
    }
  }

  /** After the first loss histories fall as they are, so that weights stay. */
  public void endBias() {
    if (likelihood.biasing()) {
      settleAll();
      likelihood.end();
      scheduleAll();
    }
  }

  /** The likelihood ratio up to now. */
  public double weight() {
    if (!likelihood.biased()) {
      return 1;
    }
    settleAll();
    return likelihood.ratio();
  }

  /** What has run up until now is settled. */
  public void settleAll() {
    for (HazardClock each : clock) {
      if (each.isRunning()) {
        each.settle(time.now());
      }
    }
  }

  private void lookUpAll() {
    for (HazardClock each : clock) {
      if (each.isRunning()) {
        each.lookUp();
      }
    }
  }

  private void scheduleAll() {
    for (int i = 0; i < clock.length; i++) {
      if (clock[i].isRunning()) {
        schedule(i);
      }
    }
  }

  /** Whether the timer of a source only tells when it may happen at the earliest. */
  public boolean isEarliest(int source) {
    return source < clock.length && clock[source].isEarliest();
  }

  /** When the source happens whose timer only said at the earliest. */
  public void search(int source) {
    double at = clock[source].search();
    time.move(source, Math.max(at, time.of(source))); // a rounding must not turn time back
  }

  private void schedule(int source) {
    time.move(source, clock[source].happensAt());
  }
}
