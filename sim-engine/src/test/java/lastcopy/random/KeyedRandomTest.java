package lastcopy.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeyedRandomTest {

  // Published outputs of SplitMix64 for the seed 1234567 (Rosetta Code, "Pseudo-random numbers/
  // Splitmix64", made with Vigna's splitmix64.c).
  @Test
  void historyKeysAreSplitMix64sPublishedOutputs() {
    KeyedRandom random = new KeyedRandom(1234567);
    assertThat(random.historyKey(0)).isEqualTo(6457827717110365317L);
    assertThat(random.historyKey(1)).isEqualTo(3203168211198807973L);
    assertThat(random.historyKey(2)).isEqualTo(Long.parseUnsignedLong("9817491932198370423"));
  }

  // Against the independent implementation in Apache Commons RNG.
  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 42, Long.MIN_VALUE, Long.MAX_VALUE, 0x9E3779B97F4A7C15L})
  void historyKeysAreTheSequenceOfTheReferenceLibrary(long firstSeed) {
    for (long seed = firstSeed; seed != firstSeed + 100; seed++) {
      UniformRandomProvider reference = RandomSource.SPLIT_MIX_64.create(seed);
      KeyedRandom random = new KeyedRandom(seed);
      for (int history = 0; history < 100; history++) {
        assertThat(random.historyKey(history)).isEqualTo(reference.nextLong());
      }
    }
  }

  @Test
  void extremeBitsGiveFiniteValuesInRange() {
    assertThat(KeyedRandom.openUniform(0)).isEqualTo(0x1p-53);
    assertThat(KeyedRandom.openUniform(-1)).isEqualTo(1);
    assertThat(KeyedRandom.openUniform(Long.MAX_VALUE)).isEqualTo(0.5);
    assertThat(KeyedRandom.exponential(0)).isEqualTo(53 * StrictMath.log(2));
    assertThat(KeyedRandom.exponential(-1)).isEqualTo(0.0); // not −0.0
  }

  // By the conversion of the language itself.
  @Test
  void uniformsAreTheUpperBitsInUnits() {
    for (long i = 0; i < 10_000; i++) {
      long bits = i < 5_000 ? KeyedRandom.mix64(i) : (i - 7_500) << 11;
      assertThat(KeyedRandom.openUniform(bits)).isEqualTo(((bits >>> 11) + 1) * 0x1p-53);
    }
  }

  @Test
  void noTwoOfManySourceKeysCollide() {
    long[] keys = new long[102_400];
    int i = 0;
    for (int copy = 0; copy < 8; copy++) {
      long copyKey = SourceKey.of("copy", "c" + copy);
      for (int slot = 0; slot < 8; slot++) {
        for (String use : new String[] {"life", "noticed", "wait", "rebuild"}) {
          long useKey = SourceKey.with(SourceKey.with(copyKey, slot), SourceKey.of(use));
          for (int generation = 0; generation < 20; generation++) {
            for (int k = 0; k < 20; k++) {
              keys[i++] = SourceKey.with(SourceKey.with(useKey, generation), k);
            }
          }
        }
      }
    }
    assertThat(i).isEqualTo(keys.length);
    assertThat(Arrays.stream(keys).distinct().count()).isEqualTo(keys.length);
  }

  @Test
  void namesAreKeptApart() {
    long[] keys = {
      SourceKey.of(),
      SourceKey.of(""),
      SourceKey.of("", ""),
      SourceKey.of("ab", "c"),
      SourceKey.of("a", "bc"),
      SourceKey.of("abc"),
      SourceKey.of("c", "ab"),
      SourceKey.of("\u0101"),
      SourceKey.of("\u0001\u0001"),
    };
    assertThat(Arrays.stream(keys).distinct().count()).isEqualTo(keys.length);
  }

  // Pinned: results are promised to stay the same for a seed. Computed with Python's integers.
  @Test
  void keysStayWhatTheyAre() {
    assertThat(SourceKey.of("copy", "nas")).isEqualTo(7573028964455627153L);
    assertThat(SourceKey.with(SourceKey.of("copy", "nas"), 3)).isEqualTo(-7428442700152918904L);
    assertThat(KeyedRandom.bits(new KeyedRandom(1).historyKey(7), SourceKey.of("copy", "nas")))
        .isEqualTo(9031698673655148760L);
  }
}
