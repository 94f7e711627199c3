package lastcopy.worlds;

import lastcopy.random.KeyedRandom;
import lastcopy.random.SourceKey;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.special.Erf;

/**
 * Where possible worlds are drawn: replicates, independent of each other, of a Sobol sequence
 * (direction numbers of Joe and Kuo, 2008), each with a digital shift of its own (L'Ecuyer,
 * Lemieux, in Modeling Uncertainty, 2002). So any number of rows of one point a replicate is spread
 * evenly over what is not known, each point by itself is one of the normal law, and what the
 * replicates differ by tells how far their mean is known.
 */
final class WorldPoints {

  /** Independent sets of worlds: Student's quantile of 15 degrees of freedom is 2.13, not 1.96. */
  static final int REPLICATES = 16;

  private static final double ROOT_2 = Math.sqrt(2);
  private static final int DIGITS = 52;
  private static final double SCALE = 1L << DIGITS;
  private static final long KEY = SourceKey.of("world");

  private final SobolSequenceGenerator sequence;
  private final KeyedRandom random;

  /**
   * The worlds of a seed.
   *
   * @param deviates how many unknowns there are, from 1 to 1,000
   */
  WorldPoints(int deviates, long seed) {
    sequence = new SobolSequenceGenerator(deviates); // reads its table of direction numbers
    random = new KeyedRandom(seed);
  }

  /** The standard normal deviates of a world: the point of a row in a replicate. */
  synchronized double[] point(int replicate, int row) {
    long shift = random.historyKey(replicate);
    double[] point = sequence.skipTo(row);
    for (int i = 0; i < point.length; i++) {
      long bits = KeyedRandom.bits(shift, SourceKey.with(KEY, i)) >>> (Long.SIZE - DIGITS);
      point[i] = normal((long) (point[i] * SCALE) ^ bits);
    }
    return point;
  }

  /** In the middle of its cell, so never at an end; the same to the last digit on any machine. */
  private static double normal(long digits) {
    return ROOT_2 * Erf.erfInv(2 * ((digits + 0.5) / SCALE) - 1);
  }
}
