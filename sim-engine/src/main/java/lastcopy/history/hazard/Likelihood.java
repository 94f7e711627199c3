package lastcopy.history.hazard;

import lastcopy.history.plan.Plan;
import lastcopy.number.Elementary;

/**
 * Importance sampling: the bias of a history and its likelihood ratio so far: of a point process of
 * intensity bλ against λ it is a factor 1/b for each event, and exp(∫(b − 1)λ dt) for the time
 * without (Brémaud, Point Processes and Queues, 1981, ch. VI). After the first loss histories fall
 * as they are, so that weights stay.
 */
public final class Likelihood {

  private final int groups;
  private final Levels levels;
  private Bias bias = Bias.NONE;
  private PathStatistics statistics;
  private boolean off;
  private int depth;
  private double logRatio;

  Likelihood(Plan plan) {
    groups = plan.groups().count();
    levels = Levels.of(plan);
  }

  void bias(Bias to) {
    bias = to;
    if (biased() && statistics == null) {
      statistics = new PathStatistics(groups, levels.count());
    }
  }

  /** Whether histories are biased. */
  public boolean biased() {
    return !bias.isNone();
  }

  /** Whether a bias still raises what happens; not after the first loss. */
  public boolean biasing() {
    return biased() && !off;
  }

  /** What sources did; null before the first bias. */
  public PathStatistics statistics() {
    return statistics;
  }

  /** What a bias tells apart. */
  public Levels levels() {
    return levels;
  }

  void clear() {
    depth = 0;
    logRatio = 0;
    off = false;
    if (biased()) {
      statistics.clear();
    }
  }

  /** How many things are wrong. */
  int depth() {
    return depth;
  }

  void depth(int things) {
    depth = things;
  }

  void end() {
    statistics.close();
    off = true;
  }

  /** The factor on the hazard of a group while some footage stands in one copy only, or not. */
  double factor(int group, boolean whileBare) {
    return biasing() ? bias.factor(group, levels.of(depth, whileBare)) : 1;
  }

  void happened(int group, boolean whileBare, int count) {
    logRatio -= count * Elementary.log(factor(group, whileBare));
    statistics.happened(group, levels.of(depth, whileBare), count);
  }

  /** Hazard has been run up; what it was with the bias. */
  double passed(int group, boolean whileBare, double ran) {
    double b = factor(group, whileBare);
    statistics.ran(group, levels.of(depth, whileBare), ran);
    logRatio += b == 1 ? 0 : (b - 1) * ran; // a certain life runs up an infinite hazard
    return b * ran;
  }

  /**
   * Hazard has passed that any bias raises alike by a multiple of itself.
   *
   * @param raise the factor less 1
   * @param ran the hazard itself
   * @param happened whether it ended in an event
   */
  public void raised(double raise, double ran, boolean happened) {
    if (raise > 0) {
      double log = raise * ran - (happened ? StrictMath.log1p(raise) : 0);
      logRatio += log;
      statistics.placed(log);
    }
  }

  /** Something was put in a place under a bias, at this likelihood ratio. */
  public void placed(double ratio) {
    double log = Elementary.log(ratio);
    logRatio += log;
    statistics.placed(log);
  }

  double ratio() {
    return Elementary.exp(logRatio);
  }
}
