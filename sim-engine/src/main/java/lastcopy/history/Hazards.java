package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * The hazard of each source of luck over time, without any factor: of drives that age, of drives
 * that are off between visits, of shocks.
 */
final class Hazards {

  private final Plan plan;
  private final double[] skipUntil;

  Hazards(Plan plan) {
    this.plan = plan;
    skipUntil = new double[plan.copies];
  }

  void clear() {
    Arrays.fill(skipUntil, Double.NEGATIVE_INFINITY);
  }

  /** The visit of a copy that is due now does not take place: its drives stay off. */
  void skipVisit(int copy, double now) {
    skipUntil[copy] = now + plan.visits[copy].hours();
  }

  /** Whether a source's hazard per hour is the same at all times. */
  boolean isConstant(int source) {
    return source >= plan.slots
        || (plan.lifeOff[source] == null && plan.life[source] instanceof Exponential);
  }

  /**
   * The hazard of what is there at time 0, or of a constant one; null if it is not known before.
   */
  BareHazard first(int source, BareTimes times) {
    if (source >= plan.slots) {
      double perHour = plan.shocks[source - plan.slots].perHour();
      return new BareHazard(times, new Exponential(1 / perHour), 0);
    }
    boolean known = plan.age[source] instanceof Fixed && plan.lifeOff[source] == null;
    double age = known ? ((Fixed) plan.age[source]).hours() : 0;
    Law law = plan.life[source];
    boolean finite = law.cumulativeHazard(age + plan.horizon) < Double.POSITIVE_INFINITY;
    return finite && (known || isConstant(source)) ? new BareHazard(times, law, age) : null;
  }

  /** When a source of an age at a time will have run up so much hazard. */
  double after(int source, double from, double atAge, double left) {
    if (source >= plan.slots) {
      return from + left / plan.shocks[source - plan.slots].perHour();
    }
    if (plan.lifeOff[source] == null) {
      return from + plan.life[source].remaining(atAge, left);
    }
    double t = from;
    double age = atAge;
    double still = left;
    while (t <= plan.horizon) {
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
  double between(int source, double from, double atAge, double to) {
    if (source >= plan.slots) {
      return (to - from) * plan.shocks[source - plan.slots].perHour();
    }
    if (plan.lifeOff[source] == null) {
      return between(plan.life[source], from, atAge, to);
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
    int copy = plan.copyOfSlot[slot];
    double next = plan.visits[copy].nextChange(time);
    return skipUntil[copy] > time ? Math.min(next, skipUntil[copy]) : next;
  }

  /** The law in the stretch that ends at a time: that of a drive that is on, or off. */
  private Law lawUntil(int slot, double end) {
    int copy = plan.copyOfSlot[slot];
    boolean on = end > skipUntil[copy] && plan.visits[copy].goingOn(end);
    return on ? plan.life[slot] : plan.lifeOff[slot];
  }
}
