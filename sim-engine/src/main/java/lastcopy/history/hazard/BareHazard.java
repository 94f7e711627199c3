package lastcopy.history.hazard;

import lastcopy.history.course.BareTimes;
import lastcopy.law.Law;

/**
 * The hazard of one source of luck from time 0 on, told apart by whether some footage stands in one
 * copy only: reckoned once at the edges, looked up in the logarithm of their number. Immutable.
 */
final class BareHazard {

  private final BareTimes times;
  private final Law law;
  private final double age;
  private final double atStart;
  private final double[] all;
  private final double[] bare;

  /**
   * The hazard of a source.
   *
   * @param law its law, of finite hazard at all edges
   * @param age its age in hours at time 0
   */
  BareHazard(BareTimes times, Law law, double age) {
    this.times = times;
    this.law = law;
    this.age = age;
    atStart = law.cumulativeHazard(age);
    all = new double[times.edges() + 1];
    bare = new double[times.edges() + 1];
    for (int k = 0; k < times.edges(); k++) {
      all[k + 1] = all(times.end(k));
      bare[k + 1] = bare[k] + (times.isBare(k) ? all[k + 1] - all[k] : 0);
    }
  }

  /** Cumulative hazard from 0 to a time. */
  double all(double time) {
    return law.cumulativeHazard(age + time) - atStart;
  }

  /**
   * The part of it that falls while some footage stands in one copy only.
   *
   * @param stretch the one that goes on at the time, or begins then
   * @param allSoFar the cumulative hazard from 0 to the time
   */
  double bare(int stretch, double allSoFar) {
    return bare[stretch] + (times.isBare(stretch) ? allSoFar - all[stretch] : 0);
  }

  /**
   * When the hazard since 0 reaches a value, times {@code whileBare} where some footage stands in
   * one copy only, and times {@code other} elsewhere.
   */
  double when(double whileBare, double other, double value) {
    int low = 0;
    int high = times.edges();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (weighted(whileBare, other, middle + 1) < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    double left = Math.max(0, value - weighted(whileBare, other, low));
    double from = times.start(low);
    double more = law.remaining(age + from, left / (times.isBare(low) ? whileBare : other));
    return Math.min(times.end(low), from + more); // a rounding must not leave the stretch
  }

  private double weighted(double whileBare, double other, int edge) {
    return whileBare * bare[edge] + other * (all[edge] - bare[edge]);
  }
}
