package lastcopy.history.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.LongToDoubleFunction;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Draws against the laws they follow, by the distributions of commons-statistics. Null hypotheses:
 * each share or moment is within five standard errors of its exact one, an alarm rate of 6e-7.
 */
class DrawsTest {

  private static final int MANY = 20_000;

  private final Draws draws = new Draws(5);

  @BeforeEach
  void start() {
    draws.start(17);
  }

  private static double mean(LongToDoubleFunction of) {
    double sum = 0;
    for (long key = 0; key < MANY; key++) {
      sum += of.applyAsDouble(key);
    }
    return sum / MANY;
  }

  private static void isShare(double seen, double exact) {
    double error = Math.sqrt(exact * (1 - exact) / MANY);
    assertThat(seen).isCloseTo(exact, within(5 * error));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 4})
  void smallCountsArePoisson(double mean) {
    PoissonDistribution exact = PoissonDistribution.of(mean);
    for (int k = 0; k < 4; k++) {
      int count = k;
      isShare(mean(key -> draws.poisson(mean, key) == count ? 1 : 0), exact.probability(count));
    }
    assertThat(draws.poisson(0, 1)).isZero();
  }

  /** Beyond 500 they are drawn in parts; mean and variance are still the same. */
  @Test
  void largeCountsArePoisson() {
    double mean = 1_200;
    double seen = mean(key -> draws.poisson(mean, key) - mean);
    double variance = mean(key -> Math.pow(draws.poisson(mean, key) - mean, 2));
    assertThat(seen).isCloseTo(0, within(5 * Math.sqrt(mean / MANY)));
    assertThat(variance).isCloseTo(mean, within(5 * mean * Math.sqrt(2.0 / MANY)));
  }

  /** Shapes below 1 and above; where 10, 50 and 90 % are below. */
  @ParameterizedTest
  @ValueSource(doubles = {0.4, 1, 5})
  void gammaDeviatesAreGamma(double shape) {
    GammaDistribution exact = GammaDistribution.of(shape, 1);
    for (double share : new double[] {.1, .5, .9}) {
      double at = exact.inverseCumulativeProbability(share);
      isShare(mean(key -> draws.gamma(shape, key) < at ? 1 : 0), share);
    }
  }

  /** What is left at age 30 of a life of 40 on average: as much again; of a Weibull one, less. */
  @Test
  void livesAreInvertedHazards() {
    double budget = draws.budget(9);
    assertThat(draws.uniform(9)).isCloseTo(Math.exp(-budget), within(1e-12));
    assertThat(draws.remaining(new Exponential(40), 30, 9)).isCloseTo(40 * budget, within(1e-9));
    double life = draws.remaining(new Weibull(2, 10, 0), 30, 9);
    assertThat(Math.pow((30 + life) / 10, 2) - 9).isCloseTo(budget, within(1e-9));
    assertThat(draws.remaining(new Fixed(50), 30, 9)).isEqualTo(20);
    assertThat(draws.untilNext(0.25, 9)).isCloseTo(4 * budget, within(1e-12));
  }

  @Test
  void aHistoryHasItsOwnLuck() {
    double here = draws.uniform(9);
    assertThat(Draws.unitsOf(draws.historyKey(17), 9)).isEqualTo((long) (here * (1L << 53)));
    assertThat(Draws.budget(draws.historyKey(17), 9)).isEqualTo(draws.budget(9));
    draws.start(18);
    assertThat(draws.uniform(9)).isNotEqualTo(here);
    draws.start(17);
    assertThat(draws.uniform(9)).isEqualTo(here);
  }

  @ParameterizedTest
  @CsvSource({"1,0,0", "1,1,0", "1,0,1", "2,0,0"})
  void keysTellSourcesUsesAndNumbersApart(long source, int use, int n) {
    long other = Draws.key(3, 2, 5);
    assertThat(Draws.key(source, use, n)).isNotEqualTo(other).isEqualTo(Draws.key(source, use, n));
    assertThat(Draws.key(1, use, n + 1)).isNotEqualTo(Draws.key(1, use, n));
    assertThat(Draws.key(1, use + 1, n)).isNotEqualTo(Draws.key(1, use, n));
    assertThat(Draws.key(1, use + 1, n)).isNotEqualTo(Draws.key(1, use, n + 1));
  }
}
