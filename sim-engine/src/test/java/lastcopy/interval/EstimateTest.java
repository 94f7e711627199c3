package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class EstimateTest {

  private static final Estimate HALF = new Estimate(0.5, 0.4, 0.7, true);
  private static final Estimate NEVER = new Estimate(0, 0, 0.1, false);

  @Test
  void anIntervalHoldsItsEstimate() {
    assertThat(Estimate.exact(3)).isEqualTo(new Estimate(3, 3, 3, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(1, 1.1, 2, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(1, 0.5, 0.9, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(Double.NaN, 0, 1, true));
  }

  @Test
  void isCutToWhatTheFigureCanBe() {
    assertThat(new Estimate(0.9, 0.8, 1.2, true).within(0, 1))
        .isEqualTo(new Estimate(0.9, 0.8, 1, true));
    assertThat(new Estimate(1.1, 1.05, 1.2, true).within(0, 1)).isEqualTo(Estimate.exact(1));
    assertThat(new Estimate(-1, -2, 3, true).within(0, 1)).isEqualTo(new Estimate(0, 0, 1, true));
    assertThat(NEVER.within(0, 1)).isEqualTo(NEVER);
  }

  /** Up to 20 times itself an upper end is an end; beyond, nothing else is known. */
  @Test
  void farAboveItselfOnlyTheUpperEndSaysAnything() {
    assertThat(new Estimate(1, 0, 20, true).onlyAtMost()).isFalse();
    assertThat(new Estimate(1, 0, 20.1, true).onlyAtMost()).isTrue();
    assertThat(new Estimate(-1, -2, 19, true).onlyAtMost()).isFalse();
    assertThat(new Estimate(2, 0, 40, true).onlyAtMost()).isFalse();
    assertThat(NEVER.onlyAtMost()).isTrue();
    assertThat(Estimate.exact(0).onlyAtMost()).isFalse();
  }

  @Test
  void precisionIsHalfTheWidthOverTheValue() {
    assertThat(HALF.relativeHalfWidth()).isEqualTo((0.7 - 0.4) / 2 / 0.5);
    assertThat(new Estimate(-2, -3, 1, true).relativeHalfWidth()).isEqualTo(1);
    assertThat(Estimate.exact(0).relativeHalfWidth()).isZero();
    assertThat(NEVER.relativeHalfWidth()).isInfinite();
    assertThat(HALF.upTo(0.25)).isEqualTo(new Estimate(0.5, 0.4, 0.95, true));
  }
}
