package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The interval of a mean of skewed amounts. Its transformation is that of P. Hall, "On the removal
 * of skewness by transformation", JRSS B 54 (1992) 221-228: with W the studentised mean and s its
 * skewness over the root of the number of histories, g(W) = W + s·W²/3 + s²·W³/27 + s/6 is taken as
 * normal (here as Student's).
 *
 * <p>Sabotage seen red, each: the correction left out (both t), its sign turned, 3, 6 or the cube
 * root changed, s without the root of the number of histories.
 */
class HallsCorrectionTest {

  private static final int SAMPLES = 20_000;

  /**
   * Ends by scipy and numpy from the formulas alone, with all moments about the mean of all
   * histories and Student's quantile at n·m₂²/m₄ degrees of freedom. In the columns: how many
   * histories have 1 and another amount, that amount, how many histories there are, the lower end
   * by Hall, the upper end by logarithms and by Hall, of which the higher counts.
   */
  @ParameterizedTest
  @CsvSource({
    "30, 12, 4, 100, .5449067897859403, 1.0974267133911368, 1.0951989720185966",
    "90, 0, 2, 100, .8125534003385246, .9679422633618898, .9548220817685678",
  })
  void endsAreThoseByHand(
      int ones,
      int others,
      double other,
      long histories,
      double lowByHall,
      double highByLogarithm,
      double highByHall) {
    MeanTally plain = new MeanTally();
    WeightedTally weighted = new WeightedTally();
    for (int i = 0; i < ones + others; i++) {
      plain.add(i < ones ? 1 : other);
      weighted.add(i < ones ? 1 : other);
    }
    plain.addHistories(histories);
    weighted.addHistories(histories);
    for (Estimate e : new Estimate[] {plain.estimate(.95, 9), weighted.estimate(.95, 9)}) {
      assertThat(e.low()).isCloseTo(lowByHall, within(1e-9));
      assertThat(e.high()).isCloseTo(Math.max(highByLogarithm, highByHall), within(1e-9));
    }
  }

  /** Both ends are Hall's here: put back into his equation they give Student's quantile. */
  @Test
  void theEndsSolveHallsEquation() {
    MeanTally tally = new MeanTally();
    for (int i = 0; i < 78; i++) {
      tally.add(i < 50 ? 1 : i < 70 ? 3 : 6);
    }
    tally.addHistories(1_000);
    Estimate estimate = tally.estimate(0.95, 6);
    double mean = 0.158; // 50·1 + 20·3 + 8·6
    double second = 0.518 - mean * mean; // 50·1 + 20·9 + 8·36
    double third = 2.318 - 3 * mean * 0.518 + 2 * mean * mean * mean; // 50·1 + 20·27 + 8·216
    double s = third / Math.pow(second, 1.5) / Math.sqrt(1_000);
    double error = Math.sqrt(second / 999);
    double t = 2.069522786069116; // at 22.82753 degrees of freedom, by scipy
    assertThat(hall((mean - estimate.low()) / error, s)).isCloseTo(t, within(1e-9));
    assertThat(hall((mean - estimate.high()) / error, s)).isCloseTo(-t, within(1e-9));
  }

  private static double hall(double w, double s) {
    return w + s * w * w / 3 + s * s * w * w * w / 27 + s / 6;
  }

  /**
   * Means of lognormal amounts of spread 1.5, 100 of them, whose exact mean is exp(1.5²/2). Null
   * hypothesis: at most 5 % of intervals of 95 % miss it; 4.3 % do, and 6.7 % where Hall's
   * correction is taken out. Alarm rate 1e-6 by the exact binomial.
   */
  @Test
  void skewedMeansAreCovered() {
    UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(1);
    var normal = ZigguratSampler.NormalizedGaussian.of(random);
    double truth = Math.exp(1.5 * 1.5 / 2);
    int missed = 0;
    for (int sample = 0; sample < SAMPLES; sample++) {
      MeanTally tally = new MeanTally();
      for (int i = 0; i < 100; i++) {
        tally.add(Math.exp(1.5 * normal.sample()));
      }
      tally.addHistories(100);
      Estimate estimate = tally.estimate(0.95, 1e9);
      missed += estimate.low() <= truth && truth <= estimate.high() ? 0 : 1;
    }
    int most = BinomialDistribution.of(SAMPLES, 0.05).inverseSurvivalProbability(1e-6);
    assertThat(missed).isLessThanOrEqualTo(most);
  }
}
