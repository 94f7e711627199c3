package lastcopy.history;

import java.util.Arrays;

/**
 * The hazard clocks of a history: when each drive fails and each shock strikes.
 *
 * <p>A source of luck draws one unit exponential, its budget, and happens when the hazard that it
 * has run up, times the factors on it, has used up the budget. Frailty and strain are factors; they
 * may change at any time, and so may the law (a drive that is off). A {@link Bias} is one factor
 * more, with a {@link Likelihood} ratio.
 *
 * <p>The factor of a bias depends on the {@link Levels level}. On the undisturbed course what
 * stands in one copy only comes and goes by the clock, without an event.
 */
final class Clocks {

  private final HistoryState state;
  private final Plan plan;
  private final Hazards hazards;
  private final Likelihood likelihood;
  private final boolean[] running;
  private final double[] since;
  private final double[] age;
  private final double[] budget;
  private final double[] factor;

  /** By source, the hazard of what is there from time 0 on; null where it is not known before. */
  private final BareHazard[] firsts;

  private final boolean[] isFirst;

  /** Hazard of those from time 0 until they were last settled, and the bare part of it. */
  private final double[] allBy;

  private final double[] bareBy;
  private final boolean[] earliest;
  private BareTimes bareTimes;
  private boolean byTheClock;
  private boolean bare;
  private double lookedUp = Double.NaN;
  private int stretch;

  Clocks(HistoryState state) {
    this.state = state;
    plan = state.plan;
    hazards = new Hazards(plan);
    likelihood = new Likelihood(plan);
    int n = plan.groupOf.length;
    running = new boolean[n];
    since = new double[n];
    age = new double[n];
    budget = new double[n];
    factor = new double[n];
    firsts = new BareHazard[n];
    isFirst = new boolean[n];
    allBy = new double[n];
    bareBy = new double[n];
    earliest = new boolean[n];
  }

  void bias(Bias to) {
    likelihood.bias(to);
    if (likelihood.biased() && bareTimes == null && comesAndGoes()) {
      bareTimes = state.tracker.course().bareTimes();
      for (int i = 0; i < firsts.length; i++) {
        firsts[i] = hazards.first(i, bareTimes);
      }
    }
  }

  /** Whether what stands in one copy only changes by the clock; a single copy always does. */
  private boolean comesAndGoes() {
    return state.tracker.course() != null && plan.copies > 1;
  }

  Likelihood likelihood() {
    return likelihood;
  }

  void clear() {
    Arrays.fill(running, false);
    Arrays.fill(earliest, false);
    hazards.clear();
    likelihood.clear();
    bare = false;
    byTheClock = bareTimes != null;
  }

  /** Whether some footage has stood in one copy only just before now. */
  private boolean bareUntilNow() {
    return byTheClock ? bareTimes.bareUntil(state.now) : bare;
  }

  /** Whether some footage stood in one copy only just before now, as it always does in one copy. */
  boolean mayLoseNow() {
    return plan.copies == 1 || bareUntilNow();
  }

  /** A drive begins to age, or to count, at a time. */
  void startLife(int slot, double from, double atAge, double multiplier, long key) {
    age[slot] = atAge;
    factor[slot] = multiplier;
    start(slot, from, key);
  }

  /** A shock runs towards its next strike. */
  void startShock(int shock, long key) {
    factor[plan.slots + shock] = 1;
    start(plan.slots + shock, state.now, key);
  }

  private void start(int source, double from, long key) {
    running[source] = true;
    since[source] = from;
    isFirst[source] = firsts[source] != null && (from == 0 || hazards.isConstant(source));
    if (isFirst[source] && likelihood.biasing() && byTheClock) {
      lookUp(source, from);
    }
    budget[source] = state.draws.budget(key);
    schedule(source);
  }

  /** A source has happened, as its timer said. */
  void fired(int source) {
    if (likelihood.biased()) {
      settle(source, state.now);
      likelihood.happened(plan.groupOf[source], bareUntilNow(), 1);
    }
    running[source] = false;
  }

  /** A source ends without having happened. */
  void stop(int source) {
    if (running[source]) {
      settle(source, state.now);
      running[source] = false;
      state.agenda.cancel(source);
    }
  }

  /** From now on the hazard of a running drive has another factor. */
  void setFactor(int slot, double to) {
    if (running[slot] && factor[slot] != to) {
      settle(slot, state.now);
      factor[slot] = to;
      schedule(slot);
    }
  }

  /** The visit that is due now does not take place: the drives of the copy stay off. */
  void skipVisit(int copy) {
    for (int s = plan.firstSlot[copy]; s < plan.firstSlot[copy + 1]; s++) {
      if (running[s] && plan.lifeOff[s] != null) {
        settle(s, state.now);
      }
    }
    hazards.skipVisit(copy, state.now);
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
    boolean whileBare = bareUntilNow();
    int count = state.draws.poisson(likelihood.factor(group, whileBare) * mean, key);
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
  boolean chance(int group, double chance, long key) {
    double uniform = state.draws.uniform(key);
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
  void levelIs(int things, boolean onCourse, boolean oneCopyOnly) {
    boolean clock = onCourse && bareTimes != null;
    if (things != likelihood.depth() || clock != byTheClock || oneCopyOnly != bare) {
      settleAll();
      likelihood.depth(things);
      if (clock && !byTheClock) {
        lookUpAll();
      }
      byTheClock = clock;
      bare = oneCopyOnly;
      scheduleAll();
    }
  }

  /** After the first loss histories fall as they are, so that weights stay. */
  void endBias() {
    if (likelihood.biasing()) {
      settleAll();
      likelihood.end();
      scheduleAll();
    }
  }

  /** The likelihood ratio up to now. */
  double weight() {
    if (!likelihood.biased()) {
      return 1;
    }
    settleAll();
    return likelihood.ratio();
  }

  void settleAll() {
    for (int i = 0; i < running.length; i++) {
      if (running[i]) {
        settle(i, state.now);
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
    double from = since[source];
    if (!(now > from)) {
      return;
    }
    int group = plan.groupOf[source];
    if (!likelihood.biasing()) {
      budget[source] -= factor[source] * hazards.between(source, from, age[source], now);
    } else if (!byTheClock) {
      double ran = factor[source] * hazards.between(source, from, age[source], now);
      budget[source] -= likelihood.passed(group, bare, ran);
    } else if (isFirst[source]) {
      settleByTable(source, group, now);
    } else {
      settleByStretches(source, group, now);
    }
    budget[source] = Math.max(0, budget[source]);
    age[source] += now - from;
    since[source] = now;
  }

  private void lookUpAll() {
    for (int i = 0; i < running.length; i++) {
      if (running[i] && isFirst[i]) {
        lookUp(i, since[i]);
      }
    }
  }

  /** From a time on the hazard of a source is told apart by its table. */
  private void lookUp(int source, double from) {
    allBy[source] = from == 0 ? 0 : firsts[source].all(from);
    bareBy[source] = from == 0 ? 0 : firsts[source].bare(stretchAt(from), allBy[source]);
  }

  private void settleByTable(int source, int group, double now) {
    double all = firsts[source].all(now);
    double whileBare = firsts[source].bare(stretchAt(now), all);
    double more = whileBare - bareBy[source];
    passed(source, group, more, Math.max(0, all - allBy[source] - more));
    allBy[source] = all;
    bareBy[source] = whileBare;
  }

  /** The stretch of an instant; all sources are settled at the same. */
  private int stretchAt(double time) {
    if (time != lookedUp) {
      lookedUp = time;
      stretch = bareTimes.stretchFrom(time);
    }
    return stretch;
  }

  private void settleByStretches(int source, int group, double now) {
    double whileBare = 0;
    double otherwise = 0;
    double t = since[source];
    for (int k = bareTimes.stretchFrom(t); t < now; k++) {
      double to = Math.min(now, bareTimes.end(k));
      double ran = hazards.between(source, t, age[source] + (t - since[source]), to);
      whileBare += bareTimes.isBare(k) ? ran : 0;
      otherwise += bareTimes.isBare(k) ? 0 : ran;
      t = to;
    }
    passed(source, group, whileBare, otherwise);
  }

  private void passed(int source, int group, double whileBare, double otherwise) {
    budget[source] -= likelihood.passed(group, true, factor[source] * whileBare);
    budget[source] -= likelihood.passed(group, false, factor[source] * otherwise);
  }

  /**
   * Whether the timer of a source only tells when it may happen at the earliest: a search over many
   * stretches is put off until it is next, which it seldom is before the level changes.
   */
  boolean isEarliest(int source) {
    return source < earliest.length && earliest[source];
  }

  /** When the source happens whose timer only said at the earliest. */
  void search(int source) {
    earliest[source] = false;
    double other = factor[source] * likelihood.factor(plan.groupOf[source], false);
    double whileBare = factor[source] * likelihood.factor(plan.groupOf[source], true);
    double at = happensByStretches(source, other, whileBare);
    set(source, Math.max(at, state.agenda.time(source))); // a rounding must not turn time back
  }

  private void schedule(int source) {
    earliest[source] = false;
    set(source, happensAt(source));
  }

  private void set(int source, double at) {
    if (at <= plan.horizon) {
      state.agenda.set(source, at);
    } else {
      state.agenda.cancel(source);
    }
  }

  private double happensAt(int source) {
    int group = plan.groupOf[source];
    double other = factor[source] * likelihood.factor(group, !byTheClock && bare);
    double whileBare = byTheClock ? factor[source] * likelihood.factor(group, true) : other;
    if (other != whileBare && isFirst[source]) {
      return happensByTable(source, other, whileBare);
    }
    earliest[source] = other != whileBare;
    return happensAt(source, Math.max(other, whileBare));
  }

  private double happensAt(int source, double rate) {
    double left = rate == 1 ? budget[source] : budget[source] / rate;
    return rate == 0
        ? Double.POSITIVE_INFINITY
        : hazards.after(source, since[source], age[source], left);
  }

  private double happensByTable(int source, double other, double whileBare) {
    double run = whileBare * bareBy[source] + other * (allBy[source] - bareBy[source]);
    return firsts[source].when(whileBare, other, run + budget[source]);
  }

  private double happensByStretches(int source, double other, double whileBare) {
    double left = budget[source];
    double t = since[source];
    for (int k = bareTimes.stretchFrom(t); t <= plan.horizon; k++) {
      double to = bareTimes.end(k);
      double atAge = age[source] + (t - since[source]);
      double by = bareTimes.isBare(k) ? whileBare : other;
      double ran = by * hazards.between(source, t, atAge, Math.min(to, Math.max(t, plan.horizon)));
      if (ran >= left) {
        return Math.min(to, hazards.after(source, t, atAge, left / by));
      }
      left -= ran;
      t = to;
    }
    return Double.POSITIVE_INFINITY;
  }
}
