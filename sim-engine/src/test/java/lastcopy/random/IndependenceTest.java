package lastcopy.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongBinaryOperator;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Neighbouring keys give independent uniform draws. Each case is a grid of draws; a neighbour in a
 * row and in a column is what differs by one history, source, generation or use.
 *
 * <p>Null hypothesis of each test: the draws are independent and uniform. Sample size 2^20, alarm
 * rate 1e-6 each, with fixed seeds. Sabotage that turns them red: drop either mixing step of bits.
 * A dependence of 0.005 in the correlation is found (5 standard deviations).
 */
class IndependenceTest {

  private static final int SIDE = 1 << 10;
  private static final double ALARM_RATE = 1e-6;
  private static final int CELLS = 16;

  static Stream<Arguments> grids() {
    KeyedRandom random = new KeyedRandom(1);
    long drive = SourceKey.with(SourceKey.of("copy", "nas", "life"), 0);
    return Stream.of(
        Arguments.of(
            "history by source",
            (LongBinaryOperator)
                (h, s) -> KeyedRandom.bits(random.historyKey(h), SourceKey.with(drive, s))),
        Arguments.of(
            "generation by use, one history",
            (LongBinaryOperator)
                (g, u) ->
                    KeyedRandom.bits(
                        random.historyKey(0), SourceKey.with(SourceKey.with(drive, g), u))),
        Arguments.of(
            "history by named source",
            (LongBinaryOperator)
                (h, s) -> KeyedRandom.bits(random.historyKey(h), SourceKey.of("drive" + s))),
        Arguments.of(
            "seed by history",
            (LongBinaryOperator)
                (seed, h) -> KeyedRandom.bits(new KeyedRandom(seed).historyKey(h), drive)));
  }

  @ParameterizedTest(name = "{0}: H0 single draws are uniform in their upper and lower bits")
  @MethodSource("grids")
  void drawsAreUniform(String name, LongBinaryOperator draw) {
    for (int shift : new int[] {56, 11}) {
      long[] counts = new long[256];
      for (int i = 0; i < SIDE; i++) {
        for (int j = 0; j < SIDE; j++) {
          counts[(int) (draw.applyAsLong(i, j) >>> shift) & 255]++;
        }
      }
      assertThat(chiSquare(counts)).isBetween(quantile(255, true), quantile(255, false));
    }
  }

  @ParameterizedTest(name = "{0}: H0 neighbours fall independently into 16 x 16 cells")
  @MethodSource("grids")
  void neighboursFallIndependently(String name, LongBinaryOperator draw) {
    long[] alongRow = new long[CELLS * CELLS];
    long[] alongColumn = new long[CELLS * CELLS];
    // Disjoint pairs, so that the chi-square law is exact enough.
    for (int i = 0; i < SIDE; i += 2) {
      for (int j = 0; j < SIDE; j += 2) {
        int here = (int) (draw.applyAsLong(i, j) >>> 60);
        alongRow[here * CELLS + (int) (draw.applyAsLong(i, j + 1L) >>> 60)]++;
        alongColumn[here * CELLS + (int) (draw.applyAsLong(i + 1L, j) >>> 60)]++;
      }
    }
    assertThat(chiSquare(alongRow)).isBetween(quantile(255, true), quantile(255, false));
    assertThat(chiSquare(alongColumn)).isBetween(quantile(255, true), quantile(255, false));
  }

  @ParameterizedTest(name = "{0}: H0 neighbours are uncorrelated")
  @MethodSource("grids")
  void neighboursAreUncorrelated(String name, LongBinaryOperator draw) {
    double row = 0;
    double column = 0;
    for (int i = 0; i < SIDE; i++) {
      for (int j = 0; j < SIDE; j++) {
        double here = centred(draw.applyAsLong(i, j));
        row += here * centred(draw.applyAsLong(i, j + 1L));
        column += here * centred(draw.applyAsLong(i + 1L, j));
      }
    }
    // Each product has mean 0 and variance 1/144; products of a chain are uncorrelated.
    double limit = 4.8916 * SIDE / 12.0; // two-sided normal quantile of 1e-6
    assertThat(Math.abs(row)).isLessThan(limit);
    assertThat(Math.abs(column)).isLessThan(limit);
  }

  @ParameterizedTest(name = "{0}: H0 half of the 64 bits differ between neighbours")
  @MethodSource("grids")
  void neighboursDifferInHalfOfTheirBits(String name, LongBinaryOperator draw) {
    long differing = 0;
    for (int i = 0; i < SIDE; i++) {
      for (int j = 0; j < SIDE; j++) {
        differing += Long.bitCount(draw.applyAsLong(i, j) ^ draw.applyAsLong(i, j + 1L));
      }
    }
    double pairs = (double) SIDE * SIDE;
    assertThat(Math.abs(differing - 32 * pairs)).isLessThan(4.8916 * Math.sqrt(16 * pairs));
  }

  private static double centred(long bits) {
    return KeyedRandom.openUniform(bits) - 0.5;
  }

  private static double chiSquare(long[] counts) {
    double total = 0;
    for (long count : counts) {
      total += count;
    }
    double expected = total / counts.length;
    double sum = 0;
    for (long count : counts) {
      sum += (count - expected) * (count - expected) / expected;
    }
    return sum;
  }

  private static double quantile(double degreesOfFreedom, boolean lower) {
    ChiSquaredDistribution law = ChiSquaredDistribution.of(degreesOfFreedom);
    return lower
        ? law.inverseCumulativeProbability(ALARM_RATE / 2)
        : law.inverseSurvivalProbability(ALARM_RATE / 2);
  }
}
