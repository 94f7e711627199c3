package lastcopy.simulate;

import lastcopy.interval.Estimate;
import lastcopy.interval.Means;

/**
 * Sums and squares, over histories, of the time spent bare, fragile, without hardware, refilling.
 */
final class TimeTally {

  private static final int FIGURES = 5;

  private final double[] now = new double[FIGURES];
  private final double[] sum = new double[FIGURES];
  private final double[] squares = new double[FIGURES];
  private long histories;

  void add(double bare, double fragile, double away, double refill, double most) {
    now[0] += bare;
    now[1] += fragile;
    now[2] += away;
    now[3] += refill;
    now[4] = Math.max(now[4], most);
  }

  void endHistory() {
    for (int i = 0; i < FIGURES; i++) {
      sum[i] += now[i];
      squares[i] += now[i] * now[i];
      now[i] = 0;
    }
    histories++;
  }

  void merge(TimeTally other) {
    for (int i = 0; i < FIGURES; i++) {
      sum[i] += other.sum[i];
      squares[i] += other.squares[i];
    }
    histories += other.histories;
  }

  LayoutResult.Exposure exposure(double horizonHours, double confidence) {
    double toDays = 365 / horizonHours;
    return new LayoutResult.Exposure(
        mean(0, toDays, confidence),
        mean(1, toDays, confidence),
        mean(2, toDays, confidence),
        mean(3, toDays, confidence),
        mean(4, 1, confidence),
        histories);
  }

  private Estimate mean(int i, double factor, double confidence) {
    return histories < 2
        ? Estimate.exact(sum[i] * factor)
        : Means.of(histories, sum[i] * factor, squares[i] * factor * factor, confidence);
  }
}
