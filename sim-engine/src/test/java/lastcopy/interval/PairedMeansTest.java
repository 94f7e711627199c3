package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PairedMeansTest {

  private static final double[] ONE = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
  private static final double[] TWO = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

  /**
   * Hours of sleep that ten patients gained by two drugs: Student, Biometrika 6, 1908. The interval
   * is that of R 4, {@code t.test(extra ~ group, sleep, paired = TRUE)} (from memory).
   */
  @Test
  void ofPairsAlone() {
    Estimate difference = PairedMeans.difference(ONE, TWO, 0.95);
    assertThat(difference.value()).isCloseTo(-1.58, within(1e-12));
    assertThat(difference.low()).isCloseTo(-2.4598858, within(1e-7));
    assertThat(difference.high()).isCloseTo(-0.7001142, within(1e-7));
  }

  /** What only one of them has counts by itself: the value is that of the two whole means. */
  @Test
  void whereOneHasMore() {
    double[] more = {1, 2, 3, 6};
    double[] fewer = {1, 3};
    // s² = 14/3 over 4 and 2 over 2; c = 1 over the pairs: 7/6 + 1 − 2·2·1/(4·2).
    double error = Math.sqrt(7 / 6.0 + 1 - 0.5);
    Estimate difference = PairedMeans.difference(more, fewer, 0.5);
    assertThat(difference.value()).isEqualTo(1);
    // Student's quartile at one degree of freedom is 1 (Cauchy).
    assertThat(difference.high()).isCloseTo(1 + error, within(1e-9));
    assertThat(difference.low()).isCloseTo(1 - error, within(1e-9));
  }

  /** What both have, and a large amount that is alike in all, is no luck. */
  @Test
  void whatIsAlikeIsExact() {
    double[] a = {1e12 + 1, 1e12 + 5, 1e12 + 3};
    double[] b = {1e12, 1e12 + 4, 1e12 + 2};
    Estimate difference = PairedMeans.difference(a, b, 0.95);
    assertThat(difference.value()).isEqualTo(1);
    assertThat(difference.high() - difference.low()).isLessThan(1e-6);
  }

  @Test
  void oneHistoryBoundsNothing() {
    Estimate difference = PairedMeans.difference(new double[] {4}, new double[] {1, 2}, 0.95);
    assertThat(difference.value()).isEqualTo(2.5);
    assertThat(difference.low()).isInfinite();
    assertThat(difference.high()).isInfinite();
  }
}
