package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairedDifferenceTest {

  /**
   * Newcombe, Statistics in Medicine 17 (1998) 2635-2650, method 10, worked in Python from his
   * formulas; the first two are cases of his (the limits .0569, .3404 and .0562, .3292 there are
   * from memory). Columns: both, only a, only b, neither; the limits. In order: the correlation is
   * negative, positive, positive but within his correction, not defined, and b is never seen.
   */
  @ParameterizedTest
  @CsvSource({
    "36, 12, 2, 0, .05692958400323875, .3404276029749406",
    "20, 12, 2, 16, .056156424841748265, .32920699540014053",
    "14, 5, 22, 9, -.5006564553633357, -.1454374841247587",
    "212, 144, 256, 707, -.11419153280506708, -.055433472684332845",
    "25, 25, 0, 0, .3485821024930205, .6335548568317142",
    "0, 0, 5, 45, -.21360231437479657, -.008975448080590046",
    "0, 0, 0, 50, -.07134759913335872, .07134759913335872",
  })
  void isNewcombesMethod10(
      long both, long onlyA, long onlyB, long neither, double low, double high) {
    long n = both + onlyA + onlyB + neither;
    Estimate difference =
        PairedRatio.of(n, both + onlyA, n, both + onlyB, n, both, onlyA, onlyB, 0.95).difference();
    assertThat(difference.value()).isCloseTo((onlyA - onlyB) / (double) n, within(1e-15));
    assertThat(difference.low()).isCloseTo(low, within(1e-9));
    assertThat(difference.high()).isCloseTo(high, within(1e-9));
    assertThat(difference.seen()).isEqualTo(both + onlyA + onlyB > 0);
  }

  /**
   * Where one layout has more histories than the other (Zou, Donner, Statistics in Medicine 27,
   * 2008): 30 of 100 against 60 of 400, of which the first 100 are paired; correlation .2047,
   * worked in Python from the formula.
   */
  @Test
  void inPartPaired() {
    Estimate difference = PairedRatio.of(100, 30, 400, 60, 100, 12, 18, 4, 0.95).difference();
    assertThat(difference.low()).isCloseTo(.06774610163636745, within(1e-9));
    assertThat(difference.high()).isCloseTo(.2445867342026733, within(1e-9));
  }

  /** Nothing paired: Newcombe's method 10 of two samples, r = 0; by the same formula. */
  @Test
  void notPaired() {
    Estimate difference = PairedRatio.of(100, 30, 400, 60, 0, 0, 0, 0, 0.95).difference();
    assertThat(difference.low()).isCloseTo(.06034944949723879, within(1e-9));
    assertThat(difference.high()).isCloseTo(.2509404931461206, within(1e-9));
  }

  @Test
  void isNeverMoreThanAll() {
    Estimate all = PairedRatio.of(50, 50, 50, 0, 50, 0, 50, 0, 0.95).difference();
    assertThat(all.value()).isEqualTo(1);
    assertThat(all.high()).isEqualTo(1);
    assertThat(all.low()).isCloseTo(1 - Math.sqrt(2) * .07134759913335872, within(1e-9));
    Estimate none = PairedRatio.of(50, 0, 50, 50, 50, 0, 0, 50, 0.95).difference();
    assertThat(none.low()).isEqualTo(-1);
    assertThat(none.high()).isCloseTo(-all.low(), within(1e-12));
  }
}
