package lastcopy.footage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lastcopy.scenario.Periodic;

/**
 * Works out the runs of one feed while nothing fails: a fluid queue with gates. Times are hours,
 * positions bytes, rates bytes per hour.
 */
final class FeedRuns {

  private final double rate;
  private final double horizon;
  private final DoubleUnaryOperator aged;
  private final List<FeedLine.Run> runs = new ArrayList<>();
  private final double atStart;
  private double across;

  /**
   * A feed that has moved nothing yet.
   *
   * @param rate bytes per hour, above 0
   * @param horizon no run starts after it
   * @param aged the number of bytes that have aged out by a time; they are not fed
   * @param atStart what the target holds at the start
   */
  FeedRuns(double rate, double horizon, DoubleUnaryOperator aged, double atStart) {
    this.rate = rate;
    this.horizon = horizon;
    this.aged = aged;
    this.atStart = atStart;
    this.across = atStart;
  }

  /**
   * Runs by the clock.
   *
   * @param held what the source holds for a run that starts at a time
   * @param more a time after which, at the earliest, the source holds more than at a time
   * @param longest the longest that a run may last before it is cut, infinite if it is not
   */
  FeedLine scheduled(
      Periodic due, DoubleUnaryOperator held, DoubleUnaryOperator more, double longest) {
    double start = due.at();
    while (start <= horizon) {
      double end = run(start, held.applyAsDouble(start), longest);
      // However many were due while this one was going, one starts when it ends.
      double next = Math.max(due.after(start), end);
      boolean idle = end == start; // all runs until there is more are
      start = idle ? Math.max(next, due.from(more.applyAsDouble(start))) : next;
    }
    return done();
  }

  /** Continuous, from the working copy: a run whenever something waits, new shoots included. */
  FeedLine continuous(ShootTable shoots) {
    double start = 0;
    while (start <= horizon) {
      double end = run(start, shoots.total(start), Double.POSITIVE_INFINITY);
      start = end > start ? end : nextShoot(shoots, start);
    }
    return done();
  }

  /** Continuous, from a fed copy: the flow follows the source's own flow when it has caught up. */
  FeedLine following(FeedLine source) {
    double from = 0;
    for (int i = 0; i < source.runCount(); i++) {
      FeedLine.Run run = source.run(i);
      follow(from, run.start(), source.carried(from), 0);
      double slope = (run.to() - run.from()) / (run.end() - run.start());
      follow(run.start(), run.end(), run.from(), slope);
      from = run.end();
    }
    follow(from, Double.POSITIVE_INFINITY, source.carried(from), 0);
    return done();
  }

  private FeedLine done() {
    return new FeedLine(atStart, runs, runs);
  }

  private double run(double start, double held, double longest) {
    double from = Math.max(across, aged.applyAsDouble(start));
    if (held <= from) {
      return start;
    }
    double hours = (held - from) / rate;
    double to = hours > longest ? from + rate * longest : held;
    double end = start + Math.min(hours, longest);
    // A run too short for the clock to show would never let it advance.
    add(start, Math.max(end, Math.nextUp(start)), from, to);
    return runs.get(runs.size() - 1).end();
  }

  private void follow(double start, double end, double level, double slope) {
    if (end <= start || start > horizon) {
      return;
    }
    double caught = start;
    if (across < level) {
      double hours = rate > slope ? (level - across) / (rate - slope) : Double.POSITIVE_INFINITY;
      caught = Math.min(end, start + hours);
      double to = hours >= end - start ? across + rate * (end - start) : level + slope * hours;
      add(start, caught, across, to);
    }
    if (caught < end && slope > 0) {
      double to = across + Math.min(rate, slope) * (end - caught);
      add(caught, end, across, Math.min(to, level + slope * (end - start)));
    }
  }

  private void add(double start, double end, double from, double to) {
    if (to > from && end > start) {
      runs.add(new FeedLine.Run(start, end, from, to));
      across = to;
    }
  }

  private static double nextShoot(ShootTable shoots, double t) {
    int k = shoots.shotBy(t);
    return k < shoots.count() ? shoots.time(k) : Double.POSITIVE_INFINITY;
  }
}
