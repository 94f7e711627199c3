package lastcopy.worlds.surface;

/**
 * What histories in worlds say of one figure, a row for each world.
 *
 * @param points the standard normal deviates of each world
 * @param replicates which of the independent sets of worlds each is of, from 0
 * @param histories in each, at least 1
 * @param sums over the histories of each, at least 0, as a chance or an amount
 * @param squares the sums of the squares
 */
public record Observations(
    double[][] points, int[] replicates, double[] histories, double[] sums, double[] squares) {

  int size() {
    return sums.length;
  }

  /** The mean over all histories. */
  double mean() {
    double sum = 0;
    double count = 0;
    for (int w = 0; w < sums.length; w++) {
      sum += sums[w];
      count += histories[w];
    }
    return sum / count;
  }

  /** How many histories lost nothing, of a figure that is a chance. */
  double spared() {
    double spared = 0;
    for (int w = 0; w < sums.length; w++) {
      spared += histories[w] - sums[w];
    }
    return spared;
  }

  /** How many equal histories the sums are worth (Kish). */
  double effective() {
    double sum = 0;
    double square = 0;
    for (int w = 0; w < sums.length; w++) {
      sum += sums[w];
      square += squares[w];
    }
    return sum > 0 ? sum * (sum / square) : 0;
  }

  /** The square of the sampling error of the mean of a world, as its histories say. */
  double noise(int world) {
    double mean = sums[world] / histories[world];
    return Math.max(0, squares[world] / histories[world] - mean * mean) / histories[world];
  }
}
