package lastcopy.history.course;

import java.util.Arrays;
import lastcopy.footage.Rising;
import lastcopy.footage.ShootTable;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.random.SourceKey;

/** Shoots that come at random: those of the history of the draws. */
public final class RandomShoots {

  private static final long SOURCE = SourceKey.of("shoot");

  private final Plan plan;
  private final Draws draws;
  private double[] times = new double[64];
  private ShootTable table;

  /** The history whose shoots are being drawn; how many have been, and when the next comes. */
  private long drawn;

  private int count;
  private double next = Double.NaN;

  public RandomShoots(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
  }

  /** The shoots up to and including the horizon. */
  ShootTable ofHistory() {
    if (table == null || draws.current() != drawn) {
      table = until(plan.horizon());
    }
    return table;
  }

  /** The shoots up to and including a time in hours. */
  public ShootTable until(double end) {
    double rate = 1 / plan.studio().footage().shoots().everyHours();
    if (draws.current() != drawn || Double.isNaN(next)) {
      drawn = draws.current();
      table = null;
      count = 0;
      next = draws.untilNext(rate, SourceKey.with(SOURCE, 0));
    }
    while (next <= end) {
      if (count == times.length) {
        times = Arrays.copyOf(times, 2 * count);
      }
      times[count++] = next;
      next += draws.untilNext(rate, SourceKey.with(SOURCE, count));
    }
    int first = Rising.below(times, count, Math.nextUp(end));
    return ShootTable.at(plan.studio().footage(), times, first);
  }
}
