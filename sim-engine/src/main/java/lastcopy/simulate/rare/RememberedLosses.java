package lastcopy.simulate.rare;

import java.util.Arrays;
import lastcopy.interval.PairedDifferences;

/**
 * Which of the first biased histories of a layout lose, and what each weighs, to hold them against
 * those of another layout, which share their luck. Mutable.
 */
final class RememberedLosses {

  private final int most;
  private int[] numbers = new int[8];
  private double[] weights = new double[8];
  private int size;

  /**
   * Remembers none yet.
   *
   * @param most so many histories, the first, at most
   */
  RememberedLosses(int most) {
    this.most = most;
  }

  int most() {
    return most;
  }

  /** Remembers a loss, later than all before it. */
  void add(long number, double weight) {
    if (number < most) {
      if (size == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * size);
        weights = Arrays.copyOf(weights, 2 * size);
      }
      numbers[size] = (int) number;
      weights[size++] = weight;
    }
  }

  /** Adds those of later histories. */
  void append(RememberedLosses later) {
    for (int i = 0; i < later.size; i++) {
      add(later.numbers[i], later.weights[i]);
    }
  }

  /**
   * What each of the first histories weighs more than another's, which is 0 where both lose alike.
   */
  PairedDifferences less(RememberedLosses other, int first) {
    PairedDifferences differences = new PairedDifferences(1);
    differences.addHistories(0, first);
    int j = 0;
    for (int i = 0; i < size && numbers[i] < first; i++) {
      while (j < other.size && other.numbers[j] < numbers[i]) {
        differences.add(0, -other.weights[j++]);
      }
      boolean both = j < other.size && other.numbers[j] == numbers[i];
      differences.add(0, weights[i] - (both ? other.weights[j++] : 0));
    }
    for (; j < other.size && other.numbers[j] < first; j++) {
      differences.add(0, -other.weights[j]);
    }
    return differences;
  }
}
