package lastcopy.history.hazard;

import lastcopy.history.course.BareTimes;

/**
 * The clock of one source of luck: what is left of the unit exponential that it drew, and since
 * when its hazard has been running.
 */
final class HazardClock {

  private final Hazards hazards;
  private final Likelihood likelihood;
  private final BareWatch watch;
  private final double horizon;
  private final int source;

  /** The group that it is in as a rule; of drives of pairs it may be another at times. */
  private final int usualGroup;

  private int group;

  /** The hazard of what is there from time 0 on; null where it is not known before. */
  private BareHazard first;

  private boolean isFirst;

  /** Its hazard from time 0 until it was last settled, and the bare part of it. */
  private double allBy;

  private double bareBy;

  private boolean running;
  private double since;
  private double age;
  private double budget;
  private double factor;
  private boolean earliest;

  HazardClock(Hazards hazards, Likelihood likelihood, BareWatch watch, double horizon, int source) {
    this.hazards = hazards;
    this.likelihood = likelihood;
    this.watch = watch;
    this.horizon = horizon;
    this.source = source;
    usualGroup = hazards.groupOf(source);
    group = usualGroup;
  }

  /** From now on it may look its hazard up. */
  void knowsBareTimes() {
    first = hazards.first(source, watch.times());
  }

  void clear() {
    running = false;
    earliest = false;
  }

  boolean isRunning() {
    return running;
  }

  double factor() {
    return factor;
  }

  void factor(double to) {
    factor = to;
  }

  /** A drive begins to age, or to count. */
  void age(double hours) {
    age = hours;
  }

  int group() {
    return group;
  }

  void group(int to) {
    group = to;
  }

  void start(double from, double drawn) {
    running = true;
    group = usualGroup;
    since = from;
    isFirst = first != null && (from == 0 || hazards.isConstant(source));
    if (isFirst && likelihood.biasing() && watch.byTheClock()) {
      lookUp(from);
    }
    budget = drawn;
  }

  void stop() {
    running = false;
  }

  /** What has run up until now is taken from the budget. */
  void settle(double now) {
    double from = since;
    if (!(now > from)) {
      return;
    }
    if (!likelihood.biasing()) {
      budget -= factor * hazards.between(source, from, age, now);
    } else if (!watch.byTheClock()) {
      double ran = factor * hazards.between(source, from, age, now);
      budget -= likelihood.passed(group, watch.bare(), ran);
    } else if (isFirst) {
      settleByTable(now);
    } else {
      settleByStretches(now);
    }
    budget = Math.max(0, budget);
    age += now - from;
    since = now;
  }

  /** From now on its hazard is told apart by its table. */
  void lookUp() {
    if (isFirst) {
      lookUp(since);
    }
  }

  private void lookUp(double from) {
    allBy = from == 0 ? 0 : first.all(from);
    bareBy = from == 0 ? 0 : first.bare(watch.stretchAt(from), allBy);
  }

  private void settleByTable(double now) {
    double all = first.all(now);
    double whileBare = first.bare(watch.stretchAt(now), all);
    double more = whileBare - bareBy;
    passed(more, Math.max(0, all - allBy - more));
    allBy = all;
    bareBy = whileBare;
  }

  private void settleByStretches(double now) {
    BareTimes times = watch.times();
    double whileBare = 0;
    double otherwise = 0;
    double t = since;
    for (int k = times.stretchFrom(t); t < now; k++) {
      double to = Math.min(now, times.end(k));
      double ran = hazards.between(source, t, age + (t - since), to);
      whileBare += times.isBare(k) ? ran : 0;
      otherwise += times.isBare(k) ? 0 : ran;
      t = to;
    }
    passed(whileBare, otherwise);
  }

  private void passed(double whileBare, double otherwise) {
    budget -= likelihood.passed(group, true, factor * whileBare);
    budget -= likelihood.passed(group, false, factor * otherwise);
  }

  /**
   * Whether the last {@link #happensAt} only told when it may happen at the earliest: a search over
   * many stretches is put off until it is next, which it seldom is before the level changes.
   */
  boolean isEarliest() {
    return earliest;
  }

  /** When it happens if nothing changes, or at the earliest. */
  double happensAt() {
    double other = factor * likelihood.factor(group, !watch.byTheClock() && watch.bare());
    double whileBare = watch.byTheClock() ? factor * likelihood.factor(group, true) : other;
    earliest = false;
    if (other != whileBare && isFirst) {
      double run = whileBare * bareBy + other * (allBy - bareBy);
      return first.when(whileBare, other, run + budget);
    }
    earliest = other != whileBare;
    return happensAt(Math.max(other, whileBare));
  }

  private double happensAt(double rate) {
    double left = rate == 1 ? budget : budget / rate;
    return rate == 0 ? Double.POSITIVE_INFINITY : hazards.after(source, since, age, left);
  }

  /** When it happens, whose clock only said at the earliest. */
  double search() {
    earliest = false;
    BareTimes times = watch.times();
    double other = factor * likelihood.factor(group, false);
    double whileBare = factor * likelihood.factor(group, true);
    double left = budget;
    double t = since;
    for (int k = times.stretchFrom(t); t <= horizon; k++) {
      double to = times.end(k);
      double atAge = age + (t - since);
      double by = times.isBare(k) ? whileBare : other;
      double ran = by * hazards.between(source, t, atAge, Math.min(to, Math.max(t, horizon)));
      if (ran >= left) {
        return Math.min(to, hazards.after(source, t, atAge, left / by));
      }
      left -= ran;
      t = to;
    }
    return Double.POSITIVE_INFINITY;
  }
}
