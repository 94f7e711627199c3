package lastcopy.history.plan;

import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.number.Elementary;
import lastcopy.random.KeyedRandom;
import lastcopy.random.SourceKey;

/**
 * The luck of one history: the only class that holds both a law and a generator. Every draw is
 * keyed by what it is for, so that adding a drive, a copy or a mishap moves no other draw.
 */
public final class Draws {

  /** Uses of a source, part of the key. */
  public static final int LIFE = 0;

  public static final int NOTICED = 1;
  public static final int ARRIVAL = 2;
  public static final int REBUILD = 3;
  public static final int AGE = 4;
  public static final int STRIKE = 5;
  public static final int TAKES = 6;
  public static final int GONE_NOTICED = 7;
  public static final int GONE_ARRIVAL = 8;
  public static final int FRAILTY = 9;
  public static final int DEFECT = 10;
  public static final int SCRUB = 11;
  public static final int DEFECT_SPOT = 12;
  public static final int READ_ERRORS = 13;
  public static final int READ_SPOTS = 14;
  public static final int REFILL_ERRORS = 15;
  public static final int REFILL_SPOTS = 16;
  public static final int BLOCK = 17;
  public static final int BLOCK_NOTICED = 18;

  /** Beyond it a Poisson count is drawn in parts, since exp(−mean) would underflow. */
  private static final double POISSON_PART = 500;

  private final KeyedRandom random;
  private long historyKey;

  public Draws(long seed) {
    random = new KeyedRandom(seed);
  }

  public void start(long history) {
    historyKey = historyKey(history);
  }

  /** The key of the history whose draws these are. */
  public long current() {
    return historyKey;
  }

  /** What makes the draws of a history its own. */
  public long historyKey(long history) {
    return random.historyKey(history);
  }

  /** The key of the n-th draw of a use of a source. */
  public static long key(long source, int use, int n) {
    return SourceKey.with(source, ((long) use << 32) | n);
  }

  /** The 53-bit uniform in (0, 1] of a key; compared with limits computed once. */
  public double uniform(long key) {
    return KeyedRandom.openUniform(KeyedRandom.bits(historyKey, key));
  }

  /** The uniform of a key in a history, as a number of units of 2^−53 from 1 to 2^53. */
  public static long unitsOf(long historyKey, long key) {
    return (KeyedRandom.bits(historyKey, key) >>> 11) + 1;
  }

  /** What is left of a law at an age: one inversion of the cumulative hazard. */
  public double remaining(Law law, double age, long key) {
    if (law instanceof Fixed) {
      return law.remaining(age, 0); // no luck in it, and a logarithm saved in every repair
    }
    return law.remaining(age, KeyedRandom.exponential(KeyedRandom.bits(historyKey, key)));
  }

  /** A unit exponential: the cumulative hazard at which something happens. */
  public double budget(long key) {
    return budget(historyKey, key);
  }

  /** The unit exponential of a key in a history. */
  public static double budget(long historyKey, long key) {
    return KeyedRandom.exponential(KeyedRandom.bits(historyKey, key));
  }

  /** A Poisson count of a mean, by inversion of one uniform for each part of the mean. */
  public int poisson(double mean, long key) {
    int count = 0;
    int part = 0;
    for (double left = mean; left > 0; left -= POISSON_PART) {
      count += smallPoisson(Math.min(left, POISSON_PART), SourceKey.with(key, part++));
    }
    return count;
  }

  private int smallPoisson(double mean, long key) {
    double left = uniform(key);
    double chance = Elementary.exp(-mean);
    int k = 0;
    while (left > chance && chance > 0) {
      left -= chance;
      chance *= mean / ++k;
    }
    return k;
  }

  /**
   * A Gamma deviate of a shape and rate 1, by Marsaglia and Tsang, ACM TOMS 26(3), 2000; a shape
   * below 1 by their boost with a uniform's power. Each try is keyed, so that nothing is carried.
   *
   * @param shape above 0
   */
  public double gamma(double shape, long key) {
    double raised = shape < 1 ? shape + 1 : shape;
    double d = raised - 1.0 / 3;
    double c = 1 / StrictMath.sqrt(9 * d);
    for (int attempt = 0; ; attempt++) {
      long tried = SourceKey.with(key, attempt);
      double x = normal(tried);
      double v = 1 + c * x;
      if (v > 0) {
        v = v * v * v;
        double u = uniform(SourceKey.with(tried, 2));
        if (Elementary.log(u) < x * x / 2 + d - d * v + d * Elementary.log(v)) {
          double boost = shape < 1 ? uniform(SourceKey.with(key, -1)) : 1;
          return d * v * (shape < 1 ? Elementary.pow(boost, 1 / shape) : 1);
        }
      }
    }
  }

  /** A standard normal deviate, by Box and Muller, Ann. Math. Statist. 29, 1958. */
  private double normal(long key) {
    double radius = StrictMath.sqrt(2 * budget(SourceKey.with(key, 0)));
    return radius * StrictMath.cos(2 * Math.PI * uniform(SourceKey.with(key, 1)));
  }

  /** A unit exponential over a rate per hour: the time to the next strike of a Poisson process. */
  public double untilNext(double perHour, long key) {
    return KeyedRandom.exponential(KeyedRandom.bits(historyKey, key)) / perHour;
  }
}
