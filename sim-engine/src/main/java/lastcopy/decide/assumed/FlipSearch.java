package lastcopy.decide.assumed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import lastcopy.history.History;
import lastcopy.history.report.GivenUpException;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.PairedDifferences;
import lastcopy.parallel.Workers;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.count.LossLedger;

/**
 * The value of a number at which of two layouts the other one is the safer: by halves of the
 * logarithm of a factor, from a tenth to ten times, on histories that share their luck at each
 * factor too, so that the difference of the two chances hardly jitters from one factor to the next.
 *
 * <p>The interval of the factor is that of the difference there over its slope (delta method). An
 * order that turns round more than once is not found as such: only the ends are looked at.
 */
public final class FlipSearch {

  private static final double MOST = StrictMath.log(10);
  private static final int STEPS = 7;

  /** Histories that say which layout is safer at an end; those of the steps between are more. */
  private static final int AT_ENDS = 4_096;

  private static final int BETWEEN = 16_384;

  /** How far from the turn the slope is taken, in the logarithm of the factor. */
  private static final double APART = 0.4;

  private final String one;
  private final String other;
  private final long seed;
  private final double errorRate;
  private final BooleanSupplier givesUp;

  private FlipSearch(
      String one, String other, long seed, double errorRate, BooleanSupplier givesUp) {
    this.one = one;
    this.other = other;
    this.seed = seed;
    this.errorRate = errorRate;
    this.givesUp = givesUp;
  }

  /**
   * Looks for the turn of each number.
   *
   * @param one id of a layout
   * @param other id of another
   * @param confidence of each interval, in (0, 1)
   * @param threads how many
   * @param givesUp asked every so often, on any thread; what is not found by then is not looked for
   */
  public static List<Flip> of(
      List<Assumption> numbers,
      String one,
      String other,
      long seed,
      double confidence,
      int threads,
      BooleanSupplier givesUp) {
    FlipSearch search = new FlipSearch(one, other, seed, 1 - confidence, givesUp);
    ExecutorService pool = Workers.threads(threads);
    try {
      List<Future<Flip>> found = new ArrayList<>();
      numbers.forEach(number -> found.add(pool.submit(() -> search.of(number))));
      List<Flip> flips = new ArrayList<>();
      for (Future<Flip> each : found) {
        flips.add(each.get());
      }
      return flips;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a history failed: " + e.getCause(), e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private Flip of(Assumption number) {
    try {
      boolean told = isSure(number, -MOST) && isSure(number, MOST);
      return new Flip(number, told ? turn(number) : Optional.empty(), told);
    } catch (GivenUpException e) {
      return new Flip(number, Optional.empty(), false);
    }
  }

  private Optional<Estimate> turn(Assumption number) {
    double low = -MOST;
    double high = MOST;
    double atLow = difference(number, low, AT_ENDS).value();
    double atHigh = difference(number, high, AT_ENDS).value();
    if (!(atLow * atHigh < 0)) {
      return Optional.empty();
    }
    for (int step = 0; step < STEPS; step++) {
      double middle = (low + high) / 2;
      boolean asLow = difference(number, middle, BETWEEN).value() * atLow > 0;
      low = asLow ? middle : low;
      high = asLow ? high : middle;
    }
    return Optional.of(around(number, (low + high) / 2, (high - low) / 2));
  }

  /** Whether one of the two is the safer there, and not only by luck. */
  private boolean isSure(Assumption number, double log) {
    Estimate difference = difference(number, log, AT_ENDS);
    return difference.low() > 0 || difference.high() < 0;
  }

  private Estimate around(Assumption number, double log, double step) {
    double below = difference(number, log - APART, BETWEEN).value();
    Estimate at = difference(number, log, BETWEEN);
    double above = difference(number, log + APART, BETWEEN).value();
    double slope = Math.abs(above - below) / (2 * APART);
    double half = step + (slope > 0 ? (at.high() - at.low()) / 2 / slope : 2 * MOST);
    double turn = StrictMath.exp(log);
    return new Estimate(turn, turn * StrictMath.exp(-half), turn * StrictMath.exp(half), true);
  }

  /** The chance that the one loses anything less that of the other. */
  private Estimate difference(Assumption number, double log, int histories) {
    Studio studio = number.times().apply(StrictMath.exp(log));
    boolean[] lossyOne = lossy(studio, one, histories);
    boolean[] lossyOther = lossy(studio, other, histories);
    PairedDifferences difference = new PairedDifferences(1);
    for (int i = 0; i < histories; i++) {
      difference.add(0, (lossyOne[i] ? 1 : 0) - (lossyOther[i] ? 1 : 0));
    }
    difference.addHistories(0, histories);
    return difference.estimate(errorRate, 0);
  }

  private boolean[] lossy(Studio studio, String id, int histories) {
    Layout layout =
        studio.layouts().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    History history = new History(studio, layout, seed);
    history.giveUpWhen(givesUp);
    Flags flags = new Flags(histories);
    for (int i = 0; i < histories; i++) {
      if (givesUp.getAsBoolean()) {
        throw new GivenUpException();
      }
      flags.at = i;
      history.simulate(i, flags);
    }
    return flags.lossy;
  }

  /** Which histories lost anything. */
  private static final class Flags extends LossLedger {
    private final boolean[] lossy;
    private int at;

    Flags(int histories) {
      lossy = new boolean[histories];
    }

    @Override
    public void lost(Loss loss) {
      lossy[at] = true;
    }
  }
}
