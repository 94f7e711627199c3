package lastcopy.random;

/**
 * Keys of what a draw is for: a copy's drive, a place's mishap, a shoot, a batch.
 *
 * <p>A key is made once from names ({@link #of}) and then derived by numbers ({@link #with}), one
 * level a call: slot, generation, use. Different names or numbers give different keys but for
 * chance, about n²/2^65 for n keys. The algorithm is pinned like that of {@link KeyedRandom}.
 */
public final class SourceKey {

  // FNV-1a, 64 bits (Fowler, Noll, Vo).
  private static final long FNV_BASIS = 0xCBF29CE484222325L;
  private static final long FNV_PRIME = 0x100000001B3L;

  /** Not SplitMix64's increment, so that derived keys are no sequence of history keys. */
  private static final long STEP = 0xD1342543DE82EF95L;

  private SourceKey() {}

  /**
   * The key of a list of names: FNV-1a over the UTF-16 units, low byte first, of each name and a
   * mark after it, then mixed. So ("ab", "c") and ("a", "bc") differ.
   *
   * @param parts names, in order
   */
  public static long of(String... parts) {
    long hash = FNV_BASIS;
    for (String part : parts) {
      for (int i = 0; i < part.length(); i++) {
        hash = absorb(absorb(hash, part.charAt(i) & 0xFF), part.charAt(i) >>> 8);
      }
      hash = absorb(hash, 0x100); // more than a byte: no name contains it
    }
    return KeyedRandom.mix64(hash);
  }

  /**
   * A key derived by a number: slot, generation or use.
   *
   * @param key a key
   * @param n any number; different ones give different keys
   */
  public static long with(long key, long n) {
    return KeyedRandom.mix64(key + (n + 1) * STEP);
  }

  private static long absorb(long hash, int octet) {
    return (hash ^ octet) * FNV_PRIME;
  }
}
