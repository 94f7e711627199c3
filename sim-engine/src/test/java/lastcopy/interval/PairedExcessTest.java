package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairedExcessTest {

  /** Where neither happens alone: (1 − p)^n is half the error rate, by hand. */
  @Test
  void twinsAreAlikeWithinTheRuleOfThree() {
    assertThat(PairedExcess.high(0, 0, 1_000, 0.05))
        .isCloseTo(1 - Math.pow(0.025, 0.001), within(1e-12));
  }

  /**
   * Of 10 in 100 the exact 95 % interval is from 4.90 to 17.62 % (Clopper and Pearson; the example
   * is in most tables, here from memory), of 2 from 0.24 to 7.04 %.
   */
  @Test
  void whatHappensAloneMoreOftenIsAtLeastSoMuch() {
    assertThat(PairedExcess.high(10, 2, 100, 0.05)).isCloseTo(0.1762 - 0.0024, within(2e-4));
    assertThat(PairedExcess.high(2, 10, 100, 0.05)).isCloseTo(0.0704 - 0.0490, within(2e-4));
  }

  /** The chance that the limit is below the true difference, by the multinomial law itself. */
  @ParameterizedTest
  @CsvSource({"0.02, 0.0", "0.05, 0.05", "0.3, 0.1", "0.1, 0.3", "0.5, 0.5", "0.9, 0.05"})
  void errsAtMostAsStated(double onlyFirst, double onlySecond) {
    double errorRate = 0.2;
    int n = 30;
    double errs = 0;
    for (int i = 0; i <= n; i++) {
      for (int j = 0; i + j <= n; j++) {
        if (PairedExcess.high(i, j, n, errorRate) < onlyFirst - onlySecond) {
          errs += chance(i, j, n, onlyFirst, onlySecond);
        }
      }
    }
    assertThat(errs).isLessThanOrEqualTo(errorRate);
  }

  private static double chance(int i, int j, int n, double p, double q) {
    double ways =
        CombinatoricsUtils.binomialCoefficientDouble(n, i)
            * CombinatoricsUtils.binomialCoefficientDouble(n - i, j);
    return ways * Math.pow(p, i) * Math.pow(q, j) * Math.pow(Math.max(0, 1 - p - q), n - i - j);
  }

  @Test
  void countsThatDoNotFitAreRefused() {
    assertThatThrownBy(() -> PairedExcess.high(6, 5, 10, 0.05))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
