package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PairedRatioTest {

  @Test
  void aLayoutNeverSeenToLoseGivesOnlyABound() {
    RatioEstimate b = PairedRatio.of(1_000, 50, 1_000, 0, 1_000, 0, 50, 0, 0.95);
    assertThat(b.ratio()).isEmpty();
    assertThat(b.high()).isEmpty();
    assertThat(b.low().orElseThrow()).isBetween(5.0, 50.0);
    RatioEstimate a = PairedRatio.of(1_000, 0, 1_000, 50, 1_000, 0, 0, 50, 0.95);
    assertThat(a.ratio()).isEmpty();
    assertThat(a.low()).isEmpty();
    assertThat(a.high().orElseThrow() * b.low().orElseThrow()).isCloseTo(1, within(1e-12));
  }

  @Test
  void neitherSeenGivesNoRatioAtAll() {
    RatioEstimate none = PairedRatio.of(1_000, 0, 2_000, 0, 1_000, 0, 0, 0, 0.95);
    assertThat(none.ratio()).isEmpty();
    assertThat(none.low()).isEmpty();
    assertThat(none.high()).isEmpty();
    assertThat(none.difference().seen()).isFalse();
    assertThat(none.difference().low()).isNegative();
  }

  // ln(ratio) by hand: p 0.1 and 0.05 of 10,000, all losses of b also losses of a, so that the
  // variance is (1/500 − 1/1000) exactly, as for a binomial share of 500 among 1,000.
  @Test
  void sharedLuckTakesItsCovarianceOff() {
    RatioEstimate r = PairedRatio.of(10_000, 1_000, 10_000, 500, 10_000, 500, 500, 0, 0.95);
    assertThat(r.ratio().orElseThrow()).isEqualTo(2);
    double factor = Math.exp(1.959963984540054 * Math.sqrt(0.001));
    assertThat(r.high().orElseThrow()).isCloseTo(2 * factor, within(1e-9));
    assertThat(r.low().orElseThrow()).isCloseTo(2 / factor, within(1e-9));
  }

  @Test
  void fewDiscordantHistoriesStillExcludeOrIncludeEqualityExactly() {
    // 6 against 0 discordant: even the exact test at half the error rate, 2·2^−6 = .031, keeps 1.
    RatioEstimate six = PairedRatio.of(9_999, 106, 9_999, 100, 9_999, 100, 6, 0, 0.95);
    assertThat(six.low().orElseThrow()).isLessThan(1);
    // 10 against 0: 2·2^−10 = .002 excludes it.
    RatioEstimate ten = PairedRatio.of(9_999, 110, 9_999, 100, 9_999, 100, 10, 0, 0.95);
    assertThat(ten.low().orElseThrow()).isGreaterThan(1);
    assertThat(ten.high().orElseThrow()).isBetween(1.1, 1.3);
  }

  @Test
  void refusesCountsThatContradictEachOther() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PairedRatio.of(10, 1, 10, 1, 10, 2, 0, 0, 0.95))
        .withMessageStartingWith("paired counts must fit in those of the layouts: ");
  }
}
