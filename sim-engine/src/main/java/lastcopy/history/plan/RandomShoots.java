package lastcopy.history.plan;

import java.util.Arrays;
import lastcopy.footage.ShootTable;
import lastcopy.random.SourceKey;

/** Shoots that come at random: those of the history of the draws. */
public final class RandomShoots {

  private final Plan plan;
  private final Draws draws;
  private double[] times = new double[64];
  private ShootTable table;
  private long drawn;

  public RandomShoots(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  /** The shoots up to and including the horizon. */
  ShootTable ofHistory() {
    if (table == null || draws.current() != drawn) {
      drawn = draws.current();
      table = until(plan.horizon());
    }
    return table;
  }

  /** The shoots up to and including a time in hours. */
  public ShootTable until(double end) {
    double mean = plan.studio().footage().shoots().everyHours();
    long source = SourceKey.of("shoot");
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
}
