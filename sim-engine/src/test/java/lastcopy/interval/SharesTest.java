package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SharesTest {

  @Test
  void sharesStayBetweenNothingAndAll() {
    assertThat(Shares.ofEvents(0, 0, 0.95)).isEqualTo(new Estimate(0, 0, 1, false));
    assertThat(Shares.ofEvents(81, 263, 0.95)).isEqualTo(Proportions.of(81, 263, 0.95));
    Estimate share = Shares.ofAmounts(100, 30, 100, 30, 30, 100, 0.95); // 30 of 100 equal losses
    assertThat(share.value()).isEqualTo(0.3);
    assertThat(share.low()).isBetween(0.2, 0.25);
    assertThat(share.high()).isBetween(0.38, 0.42);
  }

  /**
   * Of 15 histories with a loss six lost 1 of 2 by this cause, four 0 of 3, five 2 of 2: 16 of 34.
   * Worked in Python from Cochran's variance of a ratio of sums; Student's quantile of 14 degrees.
   */
  @Test
  void sharesOfAmountsAreARatioOfSums() {
    Estimate share = Shares.ofAmounts(15, 16, 34, 26, 32, 80, 0.95);
    assertThat(share.value()).isEqualTo(16 / 34.0);
    assertThat(share.low()).isCloseTo(.25269733898826474, within(1e-10));
    assertThat(share.high()).isCloseTo(.7002968257862957, within(1e-10));
    Estimate two = Shares.ofAmounts(2, 2, 5, 2, 5, 13, 0.95); // 1 of 2 and 1 of 3
    assertThat(two.low()).isCloseTo(.009557111323209076, within(1e-9));
    assertThat(two.high()).isCloseTo(.9787503560389228, within(1e-9));
  }

  @Test
  void whatNothingBoundsIsFromNothingToAll() {
    assertThat(Shares.ofAmounts(5, 0, 7, 0, 0, 11, 0.95)).isEqualTo(new Estimate(0, 0, 1, false));
    assertThat(Shares.ofAmounts(1, 3, 4, 9, 12, 16, 0.95))
        .isEqualTo(new Estimate(0.75, 0, 1, true));
    assertThat(Shares.ofAmounts(5, 7, 7, 11, 11, 11, 0.95)).isEqualTo(new Estimate(1, 0, 1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> Shares.ofAmounts(5, 8, 7, 1, 1, 1, 0.95));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shares.ofAmounts(5, -1, 7, 1, 1, 1, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> Shares.ofEvents(1, 0, 0.95));
  }
}
