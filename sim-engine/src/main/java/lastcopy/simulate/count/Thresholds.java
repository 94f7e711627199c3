package lastcopy.simulate.count;

import java.util.stream.DoubleStream;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;

/**
 * The amounts at which exceedance is asked, and the years of the curve.
 *
 * @param bytes rising
 * @param shoots rising
 * @param years every quarter of a year and the horizon, rising
 * @param mostBytes the most that can be lost in a history
 */
public record Thresholds(double[] bytes, double[] shoots, double[] years, double mostBytes) {

  private static final double[] SHOOTS = {0.25, 0.5, 0.75, 0.9, 1, 2, 4, 13, 26, 52};
  private static final int EVEN_ROWS = 40;

  /** Amounts a rounding below a threshold still count as having reached it. */
  private static final double ROUNDING = 1 + 1e-9;

  public static Thresholds of(Studio studio) {
    Footage footage = studio.footage();
    double first = footage.shoots().sizeBytes();
    double total = ShootTable.even(footage, studio.horizonHours()).total(studio.horizonHours());
    double clip = Math.min(footage.clipBytes(), total);
    DoubleStream even =
        java.util.stream.IntStream.range(0, EVEN_ROWS)
            .mapToDouble(i -> clip * StrictMath.pow(total / clip, i / (double) (EVEN_ROWS - 1)));
    DoubleStream named = DoubleStream.of(SHOOTS).filter(s -> s != 2).map(s -> s * first);
    double[] bytes =
        DoubleStream.concat(DoubleStream.of(clip), DoubleStream.concat(named, even))
            .sorted()
            .distinct()
            .toArray();
    return new Thresholds(bytes, SHOOTS, years(studio.years()), most(studio, total));
  }

  /** The first row of the curve that a loss after so many years counts in. */
  public int firstYearWith(double lossYears) {
    int i = years.length - 1;
    while (i > 0 && lossYears <= years[i - 1]) {
      i--;
    }
    return i;
  }

  /** How many rows, from the first on, an amount reaches. */
  static int reached(double[] rows, double amount) {
    int i = 0;
    while (i < rows.length && rows[i] <= amount * ROUNDING) {
      i++;
    }
    return i;
  }

  private static double[] years(double horizon) {
    return DoubleStream.concat(
            DoubleStream.iterate(0.25, y -> y < horizon, y -> y + 0.25), DoubleStream.of(horizon))
        .toArray();
  }

  /** With random spacing more may be shot than on average: ten standard deviations more. */
  private static double most(Studio studio, double expected) {
    Shoots shoots = studio.footage().shoots();
    if (shoots.spacing() == Shoots.Spacing.EVEN) {
      return expected;
    }
    double n = studio.horizonHours() / shoots.everyHours();
    return expected * (1 + 10 / Math.sqrt(n)) + 20 * shoots.sizeBytes();
  }
}
