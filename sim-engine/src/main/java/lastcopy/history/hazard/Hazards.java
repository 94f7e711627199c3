package lastcopy.history.hazard;

import java.util.Arrays;
import lastcopy.history.course.BareTimes;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * The hazard of each source of luck over time, without any factor: of drives that age, of drives
 * that are off between visits, of processes of shocks.
 */
public final class Hazards {

  private final Plan plan;
  private final int slots;
  private final double[] skipUntil;

  // By source: they are asked for at every step of a set that is played alone.
  private final Law[] life;
  private final Law[] lifeOff;
  private final double[] perHour;

  /** The hazards of a layout's sources. */
  public Hazards(Plan plan) {
    this.plan = plan;
    slots = plan.slots();
    skipUntil = new double[plan.copies()];
    life = new Law[slots];
    lifeOff = new Law[slots];
    perHour = new double[plan.sources()];
    for (int s = 0; s < slots; s++) {
      life[s] = plan.slot(s).life();
      lifeOff[s] = plan.slot(s).lifeOff();
    }
    for (int i = 0; i < plan.shocks(); i++) {
      perHour[slots + i] = plan.shock(i).perHour();
    }
  }

  /** Back to the start of a history. */
  public void clear() {
    Arrays.fill(skipUntil, 0);
  }

  /** The visit of a copy that is due now does not take place: its drives stay off. */
  void skipVisit(CopyPlan copy, double now) {
    skipUntil[copy.index()] = now + copy.visits().hours();
  }

  int groupOf(int source) {
    return plan.groupOf(source);
  }

  /** Whether a source's hazard per hour is the same at all times. */
  boolean isConstant(int source) {
    return source >= slots || (lifeOff[source] == null && life[source] instanceof Exponential);
  }

  /**
   * The hazard of what is there at time 0, or of a constant one; null if it is not known before.
   */
  BareHazard first(int source, BareTimes times) {
    if (source >= slots) {
      return new BareHazard(times, new Exponential(1 / perHour[source]), 0);
    }
    SlotPlan slot = plan.slot(source);
    double age = slot.agesByTheClock() ? ((Fixed) slot.age()).hours() : 0;
    boolean finite = slot.life().cumulativeHazard(age + plan.horizon()) < Double.POSITIVE_INFINITY;
    return finite && (slot.agesByTheClock() || isConstant(source))
        ? new BareHazard(times, slot.life(), age)
        : null;
  }

  /** When a source of an age at a time will have run up so much hazard. */
  public double after(int source, double from, double atAge, double left) {
    if (source >= slots) {
      return from + left / perHour[source];
    }
    if (lifeOff[source] == null) {
      return from + life[source].remaining(atAge, left);
    }
    double t = from;
    double age = atAge;
    double still = left;
    while (t <= plan.horizon()) {
      double next = nextChange(source, t);
      Law law = lawUntil(source, next);
      double ran = between(law, t, age, next);
      if (ran >= still) {
        return t + law.remaining(age, still);
      }
      still -= ran;
      age += next - t;
      t = next;
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The hazard that a source of an age at a time runs up from then to another. */
  public double between(int source, double from, double atAge, double to) {
    if (source >= slots) {
      return (to - from) * perHour[source];
    }
    if (lifeOff[source] == null) {
      return between(life[source], from, atAge, to);
    }
    double sum = 0;
    double at = atAge;
    for (double t = from; t < to; ) {
      double next = Math.min(to, nextChange(source, t));
      sum += between(lawUntil(source, next), t, at, next);
      at += next - t;
      t = next;
    }
    return sum;
  }

  private static double between(Law law, double from, double atAge, double to) {
    return law.cumulativeHazard(atAge + to - from) - law.cumulativeHazard(atAge);
  }

  private double nextChange(int slot, double time) {
    int copy = plan.slot(slot).copy();
    double next = plan.copy(copy).visits().nextChange(time);
    return skipUntil[copy] > time ? Math.min(next, skipUntil[copy]) : next;
  }

  /** The law in the stretch that ends at a time: that of a drive that is on, or off. */
  private Law lawUntil(int slot, double end) {
    int copy = plan.slot(slot).copy();
    boolean on = end > skipUntil[copy] && plan.copy(copy).visits().goingOn(end);
    return on ? life[slot] : lifeOff[slot];
  }
}
