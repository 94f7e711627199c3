package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class IndependentRatioTest {

  private static final Estimate A = new Estimate(0.02, 0.01, 0.04, true);
  private static final Estimate B = new Estimate(0.01, 0.0025, 0.02, true);
  private static final Estimate NONE = new Estimate(0, 0, 0.001, false);

  /** By hand: factors 2 and 2 combine to 2^√2; 2 and 4 to 2^√5. */
  @Test
  void distancesCombineOnLogarithms() {
    RatioEstimate r = IndependentRatio.of(A, B);
    assertThat(r.ratio().orElseThrow()).isEqualTo(2);
    assertThat(r.low().orElseThrow()).isCloseTo(2 / Math.pow(2, Math.sqrt(2)), within(1e-12));
    assertThat(r.high().orElseThrow()).isCloseTo(2 * Math.pow(2, Math.sqrt(5)), within(1e-12));
    assertThat(r.difference().low()).isCloseTo(0.01 - Math.sqrt(2) * 0.01, within(1e-15));
    assertThat(r.difference().high()).isCloseTo(0.01 + Math.hypot(.02, .0075), within(1e-15));
  }

  @Test
  void whatWasNeverSeenGivesABound() {
    RatioEstimate b = IndependentRatio.of(A, NONE);
    assertThat(b.ratio()).isEmpty();
    assertThat(b.low().orElseThrow()).isCloseTo(10, within(1e-12));
    assertThat(b.high()).isEmpty();
    RatioEstimate a = IndependentRatio.of(NONE, A);
    assertThat(a.low()).isEmpty();
    assertThat(a.high().orElseThrow()).isCloseTo(0.1, within(1e-12));
    assertThat(IndependentRatio.of(NONE, NONE).difference().seen()).isFalse();
  }

  @Test
  void aChanceThatMayBeNothingGivesNoUpperEnd() {
    RatioEstimate r = IndependentRatio.of(A, new Estimate(0.01, 0, 0.02, true));
    assertThat(r.high().orElseThrow()).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
