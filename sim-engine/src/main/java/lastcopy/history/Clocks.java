package lastcopy.history;

import lastcopy.law.Law;
import lastcopy.number.Elementary;

/**
 * The hazard clocks of a history: when each drive fails and each striker strikes.
 *
 * <p>A source of luck draws one unit exponential, its budget, and happens when the hazard that it
 * has run up, times the factors on it, has used up the budget. Frailty and strain are factors; they
 * may change at any time, and so may the law (a drive that is off). A {@link Bias} is one factor
 * more, with the likelihood ratio of a point process of intensity bλ against λ: a factor 1/b for
 * each event, and exp(∫(b − 1)λ dt) for the time without (Brémaud, Point Processes and Queues,
 * 1981, ch. VI).
 */
final class Clocks {

  private final Stage stage;
  private final Plan plan;
  private final boolean[] running;
  private final double[] since;
  private final double[] age;
  private final double[] budget;
  private final double[] factor;
  private final double[] skipUntil;
  private Bias bias = Bias.NONE;
  private boolean biased;
  private Effort effort;
  private boolean biasIsOff;
  private int depth;
  private double logWeight;

  Clocks(Stage stage) {
    this.stage = stage;
    plan = stage.plan;
    int n = plan.groupOf.length;
    running = new boolean[n];
    since = new double[n];
    age = new double[n];
    budget = new double[n];
    factor = new double[n];
    skipUntil = new double[plan.copies];
  }

  void bias(Bias to) {
    bias = to;
    biased = !to.isNone();
    if (biased && effort == null) {
      effort = new Effort(plan.groups, plan.depths());
    }
  }

  boolean biased() {
    return biased;
  }

  Effort effort() {
    return effort;
  }

  void clear() {
    java.util.Arrays.fill(running, false);
    java.util.Arrays.fill(skipUntil, Double.NEGATIVE_INFINITY);
    depth = 0;
    logWeight = 0;
    biasIsOff = false;
    if (biased) {
      effort.clear();
    }
  }

  private double biasOf(int source) {
    return biased && !biasIsOff ? bias.factor(plan.groupOf[source], depth) : 1;
  }

  /** A drive begins to age, or to count, at a time. */
  void startLife(int slot, double from, double atAge, double multiplier, long key) {
    age[slot] = atAge;
    factor[slot] = multiplier;
    start(slot, from, key);
  }

  /** A striker runs towards its next strike. */
  void startStriker(int striker, long key) {
    factor[plan.slots + striker] = 1;
    start(plan.slots + striker, stage.now, key);
  }

  private void start(int source, double from, long key) {
    running[source] = true;
    since[source] = from;
    budget[source] = stage.draws.budget(key);
    schedule(source);
  }

  /** A source has happened, as its timer said. */
  void fired(int source) {
    if (biased) {
      settle(source, stage.now);
      logWeight -= Elementary.log(biasOf(source));
      effort.happened(plan.groupOf[source], depth, 1);
    }
    running[source] = false;
  }

  /** A source ends without having happened. */
  void stop(int source) {
    if (running[source]) {
      settle(source, stage.now);
      running[source] = false;
      stage.agenda.cancel(source);
    }
  }

  /** From now on the hazard of a running drive has another factor. */
  void setFactor(int slot, double to) {
    if (running[slot] && factor[slot] != to) {
      settle(slot, stage.now);
      factor[slot] = to;
      schedule(slot);
    }
  }

  /** The visit that is due now does not take place: the drives of the copy stay off. */
  void skipVisit(int copy) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (running[s] && plan.lifeOff[s] != null) {
        settle(s, stage.now);
      }
    }
    skipUntil[copy] = stage.now + plan.visits[copy].hours();
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (running[s] && plan.lifeOff[s] != null) {
        schedule(s);
      }
    }
  }

  /**
   * A Poisson count at one instant, such as of bits that cannot be read; a bias makes it larger,
   * with the likelihood ratio of two Poisson counts.
   */
  int count(int group, double mean, long key) {
    double b = biased && !biasIsOff ? bias.factor(group, depth) : 1;
    int count = stage.draws.poisson(b * mean, key);
    if (biased) {
      effort.ran(group, depth, mean);
      effort.happened(group, depth, count);
      logWeight += (b - 1) * mean - count * Elementary.log(b);
    }
    return count;
  }

  /** So many things are wrong now; a bias may depend on it. */
  void depthIs(int now) {
    if (biased && now != depth && !biasIsOff) {
      settleAll();
      depth = now;
      scheduleAll();
    }
  }

  /** After the first loss histories fall as they are, so that weights stay. */
  void endBias() {
    if (biased && !biasIsOff) {
      settleAll();
      effort.close();
      biasIsOff = true;
      scheduleAll();
    }
  }

  /** The likelihood ratio up to now. */
  double weight() {
    if (!biased) {
      return 1;
    }
    settleAll();
    return Elementary.exp(logWeight);
  }

  void settleAll() {
    for (int i = 0; i < running.length; i++) {
      if (running[i]) {
        settle(i, stage.now);
      }
    }
  }

  private void scheduleAll() {
    for (int i = 0; i < running.length; i++) {
      if (running[i]) {
        schedule(i);
      }
    }
  }

  private void settle(int source, double now) {
    if (!(now > since[source])) {
      return;
    }
    double ran = factor[source] * hazard(source, since[source], age[source], now);
    double b = biasOf(source);
    if (biased) {
      effort.ran(plan.groupOf[source], depth, ran);
      logWeight += b == 1 ? 0 : (b - 1) * ran; // a certain life runs up an infinite hazard
    }
    budget[source] = Math.max(0, budget[source] - b * ran);
    age[source] += now - since[source];
    since[source] = now;
  }

  private void schedule(int source) {
    double rate = factor[source] * biasOf(source);
    double left = rate == 1 ? budget[source] : budget[source] / rate;
    double at = rate == 0 ? Double.POSITIVE_INFINITY : after(source, left);
    if (at <= plan.horizon) {
      stage.agenda.set(source, at);
    } else {
      stage.agenda.cancel(source);
    }
  }

  /** When a source will have run up so much hazard more. */
  private double after(int source, double left) {
    if (source >= plan.slots) {
      return since[source] + left / plan.strikers[source - plan.slots].perHour();
    }
    if (plan.lifeOff[source] == null) {
      return since[source] + plan.life[source].remaining(age[source], left);
    }
    double t = since[source];
    double atAge = age[source];
    double still = left;
    while (t <= plan.horizon) {
      double next = nextChange(source, t);
      Law law = lawUntil(source, next);
      double ran = law.cumulativeHazard(atAge + next - t) - law.cumulativeHazard(atAge);
      if (ran >= still) {
        return t + law.remaining(atAge, still);
      }
      still -= ran;
      atAge += next - t;
      t = next;
    }
    return Double.POSITIVE_INFINITY;
  }

  private double hazard(int source, double from, double atAge, double to) {
    if (source >= plan.slots) {
      return (to - from) * plan.strikers[source - plan.slots].perHour();
    }
    if (plan.lifeOff[source] == null) {
      Law law = plan.life[source];
      return law.cumulativeHazard(atAge + to - from) - law.cumulativeHazard(atAge);
    }
    double sum = 0;
    double at = atAge;
    for (double t = from; t < to; ) {
      double next = Math.min(to, nextChange(source, t));
      Law law = lawUntil(source, next);
      sum += law.cumulativeHazard(at + next - t) - law.cumulativeHazard(at);
      at += next - t;
      t = next;
    }
    return sum;
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
