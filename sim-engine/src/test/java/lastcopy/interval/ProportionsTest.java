package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProportionsTest {

  // Cases of Newcombe, Statistics in Medicine 17 (1998) 857-872; exact limits computed with R 4.2.
  @ParameterizedTest
  @CsvSource({
    "81, 263, .252737, .367622",
    "15, 148, .057844, .161650",
    "1, 29, .000873, .177644",
  })
  void agreesWithNewcombesCases(long successes, long n, double low, double high) {
    Estimate estimate = Proportions.of(successes, n, 0.95);
    assertThat(estimate.value()).isEqualTo((double) successes / n);
    assertThat(estimate.low()).isCloseTo(low, within(5e-7));
    assertThat(estimate.high()).isCloseTo(high, within(5e-7));
    assertThat(estimate.seen()).isTrue();
  }

  // 1 − .05^(1/1000); the rule of three of Hanley, Lippman-Hand, JAMA 249 (1983) says about 3/n.
  @Test
  void noSuccessGivesTheExactOneSidedLimit() {
    Estimate estimate = Proportions.of(0, 1000, 0.95);
    assertThat(estimate.high()).isCloseTo(.00299125, within(5e-9));
    assertThat(estimate.low()).isZero();
    assertThat(estimate.seen()).isFalse();
  }

  @Test
  void noSuccessKeepsItsDigitsAtManyHistories() {
    // -ln(.05)/1e12, where 1 − .05^(1/n) computed as written would have lost most digits
    assertThat(Proportions.of(0, 1_000_000_000_000L, 0.95).high())
        .isCloseTo(2.995732273553991e-12, within(1e-23));
  }

  @Test
  void allSuccessesHaveAnUpperEndOfOne() {
    Estimate estimate = Proportions.of(20, 20, 0.95);
    assertThat(estimate.high()).isEqualTo(1);
    assertThat(estimate.low()).isCloseTo(Math.pow(.025, 1 / 20.0), within(1e-9));
  }

  // For rare events the limits are those of a Poisson count: two-sided 95 % limits for 1 to 5
  // events .02532, 5.57164 ... 1.62349, 11.66833 (chi-square quantiles, R 4.2). n p = k, p about
  // 1e-9.
  @ParameterizedTest
  @CsvSource({
    "1, .02532, 5.57164",
    "2, .24221, 7.22469",
    "3, .61867, 8.76727",
    "4, 1.08987, 10.24159",
    "5, 1.62349, 11.66833"
  })
  void rareEventsAgreeWithPoissonLimits(long events, double low, double high) {
    for (long n : new long[] {1_000_000_000L, 10_000_000_000L}) {
      assertThat(Proportions.of(events, n, 0.95).low() * n).isCloseTo(low, within(1e-5));
      assertThat(Proportions.of(events, n, 0.95).high() * n).isCloseTo(high, within(1e-5));
    }
  }

  // The limits of the failures among successes: those of the rare event, seen from the other side.
  @ParameterizedTest
  @CsvSource({"1, .02532, 5.57164", "5, 1.62349, 11.66833"})
  void nearlyAllIsAsExactAsHardlyAny(long failures, double low, double high) {
    long n = 10_000_000_000L;
    Estimate estimate = Proportions.of(n - failures, n, 0.95);
    assertThat((1 - estimate.high()) * n).isCloseTo(low, within(1e-4));
    assertThat((1 - estimate.low()) * n).isCloseTo(high, within(1e-4));
  }

  // Exact: the binomial summed over all outcomes, no sampling. The grid crosses every step of the
  // limits finely enough to find a dip; 1e-9 is for rounding.
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 20, 100, 400})
  void coversAtLeastAsOftenAsItSays(int n) {
    for (double confidence : new double[] {0.8, 0.95, 0.99}) {
      Estimate[] estimates = new Estimate[n + 1];
      for (int k = 0; k <= n; k++) {
        estimates[k] = Proportions.of(k, n, confidence);
      }
      for (int i = 1; i < 1_000; i++) {
        double p = i / 1_000.0 * i / 1_000.0; // closer together where p is small
        // The one-sided limit of none may add its other half of the error rate.
        assertThat(coverage(estimates, n, p))
            .isGreaterThanOrEqualTo(1 - 1.5 * (1 - confidence) - 1e-9);
        estimates[0] = new Estimate(0, 0, Proportions.upperOfNone(n, (1 - confidence) / 2), false);
        assertThat(coverage(estimates, n, p)).isGreaterThanOrEqualTo(confidence - 1e-9);
        estimates[0] = Proportions.of(0, n, confidence);
      }
    }
  }

  private static double coverage(Estimate[] estimates, int n, double p) {
    BinomialDistribution binomial = BinomialDistribution.of(n, p);
    double sum = 0;
    for (int k = 0; k <= n; k++) {
      if (estimates[k].low() <= p && p <= estimates[k].high()) {
        sum += binomial.probability(k);
      }
    }
    return sum;
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.of(1, 0, 0.95))
        .withMessage("number of histories must be at least 1: 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.of(3, 2, 0.95))
        .withMessage("successes must be from 0 to 2 (the number of histories): 3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.of(1, 2, Double.NaN))
        .withMessage("confidence must be in (0, 1): NaN");
    for (double confidence : new double[] {0, 1}) {
      assertThatIllegalArgumentException().isThrownBy(() -> Proportions.of(1, 2, confidence));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Proportions.of(-1, 2, 0.95));
  }
}
