package lastcopy.interval;

/** Sums of the first to the fourth power of the amounts of a number of histories. Mutable. */
final class SumsOfPowers {

  private static final int MOST = 4;

  private final double[] sums = new double[MOST + 1];
  private long histories;

  /** Adds the amount of a history that has some; histories are counted by themselves. */
  void add(double amount) {
    double power = 1;
    for (int k = 1; k <= MOST; k++) {
      power *= amount;
      sums[k] += power;
    }
  }

  void addHistories(long count) {
    histories += count;
  }

  void merge(SumsOfPowers other) {
    histories += other.histories;
    for (int k = 1; k <= MOST; k++) {
      sums[k] += other.sums[k];
    }
  }

  long histories() {
    return histories;
  }

  /** The sum of a power, from 1 to 4. */
  double sum(int power) {
    return sums[power];
  }

  /** The mean over all histories. */
  double mean() {
    return histories == 0 ? 0 : sums[1] / histories;
  }

  /** The second to fourth central moment, summed over the histories. */
  double central(int power) {
    if (histories == 0) {
      return 0;
    }
    double m = mean();
    return switch (power) {
      case 2 -> sums[2] - m * sums[1];
      case 3 -> sums[3] - 3 * m * sums[2] + 2 * m * m * sums[1];
      case 4 -> sums[4] - 4 * m * sums[3] + 6 * m * m * sums[2] - 3 * m * m * m * sums[1];
      default -> throw new IllegalArgumentException("power must be 2 to 4: " + power);
    };
  }
}
