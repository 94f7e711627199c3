package lastcopy.random;

import lastcopy.number.Elementary;

/**
 * Draws that are keyed by what they are for: seed, history and source, with no state to carry.
 *
 * <p>The algorithm is pinned, because results are promised to stay the same for a seed. With {@code
 * mix64} the output function of SplitMix64 (Steele, Lea, Flood, OOPSLA 2014, with the constants of
 * Stafford's variant 13 of the 64-bit finalizer, as published in Vigna's splitmix64.c):
 *
 * <pre>
 *   history key = mix64(seed + (history + 1) · 0x9E3779B97F4A7C15)    the (history + 1)-th output of
 *                                                                   SplitMix64 with that seed
 *   bits        = mix64(history key + source key)                   source keys by {@link SourceKey}
 * </pre>
 *
 * <p>So one history can be replayed alone, threads share nothing, and adding a source moves no
 * other draw.
 */
public final class KeyedRandom {

  /** SplitMix64's increment, the golden ratio times 2^64, odd. */
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private static final double UNIT = 0x1p-53;
  private static final long UNIT_BITS = Double.doubleToRawLongBits(UNIT);
  private static final long ONE_BITS = Double.doubleToRawLongBits(1);

  private final long seed;

  /**
   * The draws of a seed.
   *
   * @param seed any value
   */
  public KeyedRandom(long seed) {
    this.seed = seed;
  }

  /**
   * The key of a history.
   *
   * @param history its number, from 0
   */
  public long historyKey(long history) {
    return mix64(seed + (history + 1) * GOLDEN);
  }

  /** The 64 bits that a source draws in a history. */
  public static long bits(long historyKey, long sourceKey) {
    return mix64(historyKey + sourceKey);
  }

  /**
   * The upper 53 bits as a uniform deviate.
   *
   * @return a multiple of 2^−53 in (0, 1]
   */
  public static double openUniform(long bits) {
    // No conversion from long, for which x86 waits until its register is free: draws would queue
    // up.
    double upper = Double.longBitsToDouble(ONE_BITS | bits >>> 12) - (1 - UNIT); // an odd number
    return upper + Double.longBitsToDouble(-(bits >>> 11 & 1) & UNIT_BITS);
  }

  /**
   * A unit-exponential deviate by inversion, −ln(uniform).
   *
   * @return from 0 to 36.74 (53 ln 2), finite
   */
  public static double exponential(long bits) {
    return 0.0 - Elementary.log(openUniform(bits)); // 0.0 − x: no negative zero
  }

  /** SplitMix64's output function, a bijection. */
  static long mix64(long z) {
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
