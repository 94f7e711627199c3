package lastcopy.footage;

/** Looks up in rising numbers, such as the times of shoots, that are more or less evenly spaced. */
public final class Rising {

  /** Beyond so many steps from where even spacing would put a value it is searched by halves. */
  private static final int STEPS = 16;

  private Rising() {}

  /**
   * How many of the first numbers of an array are below a value.
   *
   * @param numbers rising
   * @param size how many of them count
   * @param value not NaN
   */
  public static int below(double[] numbers, int size, double value) {
    if (size == 0 || !(value > numbers[0])) {
      return 0;
    }
    if (!(value <= numbers[size - 1])) {
      return size;
    }
    double share = (value - numbers[0]) / (numbers[size - 1] - numbers[0]);
    int i = Math.min((int) (share * size), size - 1);
    for (int step = 0; step < STEPS; step++) {
      if (numbers[i] < value) {
        i++;
      } else if (numbers[i - 1] < value) {
        return i;
      } else {
        i--;
      }
    }
    return byHalves(numbers, size, value);
  }

  private static int byHalves(double[] numbers, int size, double value) {
    int low = 0;
    int high = size;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (numbers[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
