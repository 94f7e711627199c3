package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * Each of the three intervals on both sides of where the next begins; worked in Python (scipy)
   * from the documented formulas. All of 1,000 histories each; the first three have all paired, the
   * others so many.
   */
  @ParameterizedTest
  @CsvSource({
    // 19 discordant: conditional; 20: by logarithms, as the losses are at least 20
    "52, 47, 1000, 40, 12, 7, .8328907001520922, 1.5723922328242543",
    "53, 47, 1000, 40, 13, 7, .9460341616213556, 1.3441545426966297",
    "5, 5, 1000, 5, 0, 0, .41627660370093666, 2.4022488679628617",
    // few losses of b, many discordant: quotient of exact limits
    "60, 19, 1000, 4, 56, 15, 1.42362106644486, 7.433404356446112",
    "60, 20, 1000, 5, 55, 15, 1.868686940772399, 4.816216030428276",
    // most losses outside of the paired ones; then exactly half inside
    "30, 25, 100, 2, 3, 4, .4984591223002495, 2.9211167016031987",
    "20, 18, 500, 3, 7, 6, .31289154044377615, 4.3648345355752936",
    "21, 18, 500, 3, 7, 6, .40602950732644755, 3.398414684870196",
  })
  void endsAreThoseOfTheIntervalThatFits(
      long a, long b, long paired, long both, long onlyA, long onlyB, double low, double high) {
    RatioEstimate r = PairedRatio.of(1_000, a, 1_000, b, paired, both, onlyA, onlyB, 0.95);
    assertThat(r.ratio().orElseThrow()).isCloseTo((double) a / b, within(1e-12));
    assertThat(r.low().orElseThrow()).isCloseTo(low, within(1e-9));
    assertThat(r.high().orElseThrow()).isCloseTo(high, within(1e-9));
  }

  /** 30 against none of 1,000: Clopper-Pearson's lower limit over 1 − .025^(1/1000), by scipy. */
  @Test
  void theBoundIsTheQuotientOfTwoLimits() {
    RatioEstimate r = PairedRatio.of(1_000, 30, 1_000, 0, 1_000, 0, 30, 0, 0.95);
    assertThat(r.low().orElseThrow()).isCloseTo(5.521461827748106, within(1e-9));
  }

  /** One count after the other that cannot be beside the rest. */
  @ParameterizedTest
  @CsvSource({
    "5, 5, 11, 1, 1, 1", // more paired than there are
    "5, 5, 3, 2, 1, 1", // more with a loss than paired
    "2, 5, 9, 2, 1, 1", // more of a than lost by a
    "5, 2, 9, 2, 1, 1",
    "5, 5, 9, -1, 1, 1",
    "5, 5, 9, 1, -1, 1",
    "5, 5, 9, 1, 1, -1",
    "5, 5, -1, 0, 0, 0",
    "11, 5, 9, 1, 1, 1",
    "5, 11, 9, 1, 1, 1",
  })
  void refusesEachCountThatDoesNotFit(
      long a, long b, long paired, long both, long onlyA, long onlyB) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PairedRatio.of(10, a, 10, b, paired, both, onlyA, onlyB, 0.95));
  }

  /** All histories lost in both, all paired. */
  @Test
  void takesCountsThatJustFit() {
    assertThat(PairedRatio.of(10, 10, 10, 10, 10, 10, 0, 0, 0.95).ratio()).hasValue(1);
    assertThat(PairedRatio.of(10, 1, 10, 1, 2, 0, 1, 1, 0.95).ratio()).hasValue(1);
    assertThat(PairedRatio.of(10, 1, 10, 1, 0, 0, 0, 0, 0.95).ratio()).hasValue(1);
  }

  @Test
  void refusesCountsThatContradictEachOther() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PairedRatio.of(10, 1, 10, 1, 10, 2, 0, 0, 0.95))
        .withMessageStartingWith("paired counts must fit in those of the layouts: ");
  }
}
