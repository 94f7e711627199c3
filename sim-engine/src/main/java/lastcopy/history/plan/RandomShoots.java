package lastcopy.history.plan;

import java.util.Arrays;
import lastcopy.footage.ShootTable;
import lastcopy.random.SourceKey;

/** Shoots that come at random: those of the history of the draws. */
public final class RandomShoots {

  private final Plan plan;
  private final Draws draws;

  public RandomShoots(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  /** The shoots up to and including a time in hours. */
  public ShootTable until(double end) {
    double mean = plan.studio().footage().shoots().everyHours();
    long source = SourceKey.of("shoot");
    double[] times = new double[16];
    int n = 0;
    double at = draws.untilNext(1 / mean, SourceKey.with(source, 0));
    while (at <= end) {
      if (n == times.length) {
        times = Arrays.copyOf(times, 2 * n);
      }
      times[n++] = at;
      at += draws.untilNext(1 / mean, SourceKey.with(source, n));
    }
    return ShootTable.at(plan.studio().footage(), Arrays.copyOf(times, n));
  }

  /**
   * Whether a copy surely holds all that was shot by a time up to which nothing happened: a bound
   * on the end of the run that carries each shoot, which starts when all before it is across.
   *
   * @param copy not the working copy
   */
  public boolean areHeld(int copy, double time) {
    Way way = plan.copy(copy).way();
    if (way.source() != 0 || plan.copy(copy).rotates()) {
      return false; // what is fed from a fed copy, or in turns, is not reckoned
    }
    ShootTable shoots = until(time);
    double across = plan.copy(copy).startsFull() ? 0 : carried(way, 0, shoots.onHand());
    for (int k = 0; k < shoots.count(); k++) {
      across = carried(way, Math.max(across, shoots.time(k)), shoots.size(k));
    }
    return across < time;
  }

  private static double carried(Way way, double from, double bytes) {
    return way.dueAfter(from)
        + bytes / way.bytesPerHour() * (1 + 1e-9)
        + 1e-6; // no rounding makes it earlier
  }
}
