package lastcopy.history;

import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.random.KeyedRandom;
import lastcopy.random.SourceKey;

/**
 * The luck of one history: the only class that holds both a law and a generator. Every draw is
 * keyed by what it is for, so that adding a drive, a copy or a mishap moves no other draw.
 */
final class Draws {

  /** Uses of a source, part of the key. */
  static final int LIFE = 0;

  static final int NOTICED = 1;
  static final int ARRIVAL = 2;
  static final int REBUILD = 3;
  static final int AGE = 4;
  static final int STRIKE = 5;
  static final int TAKES = 6;
  static final int GONE_NOTICED = 7;
  static final int GONE_ARRIVAL = 8;

  private final KeyedRandom random;
  private long historyKey;

  Draws(long seed) {
    random = new KeyedRandom(seed);
  }

  void start(long history) {
    historyKey = random.historyKey(history);
  }

  /** The key of the n-th draw of a use of a source. */
  static long key(long source, int use, int n) {
    return SourceKey.with(source, ((long) use << 32) | n);
  }

  /** The 53-bit uniform in (0, 1] of a key; compared with limits computed once. */
  double uniform(long key) {
    return KeyedRandom.openUniform(KeyedRandom.bits(historyKey, key));
  }

  /** What is left of a law at an age: one inversion of the cumulative hazard. */
  double remaining(Law law, double age, long key) {
    if (law instanceof Fixed) {
      return law.remaining(age, 0); // no luck in it, and a logarithm saved in every repair
    }
    return law.remaining(age, KeyedRandom.exponential(KeyedRandom.bits(historyKey, key)));
  }

  /** A unit exponential over a rate per hour: the time to the next strike of a Poisson process. */
  double untilNext(double perHour, long key) {
    return KeyedRandom.exponential(KeyedRandom.bits(historyKey, key)) / perHour;
  }
}
