package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MeanTallyTest {

  @Test
  void noneSeenIsAtMostTheLimitOfTheChanceTimesTheLargest() {
    MeanTally tally = new MeanTally();
    tally.addHistories(1_000);
    Estimate estimate = tally.estimate(0.95, 2e13);
    assertThat(estimate.seen()).isFalse();
    assertThat(estimate.high()).isCloseTo(2e13 * .00299125, within(1e6)); // 1 − .05^(1/1000)
  }

  @Test
  void oneSeenHasAnIntervalUpToWhatWasNotSeen() {
    MeanTally tally = new MeanTally();
    tally.addHistories(1_000);
    tally.add(1);
    Estimate estimate = tally.estimate(0.95, 100);
    assertThat(estimate.value()).isEqualTo(0.001);
    assertThat(estimate.low()).isPositive();
    assertThat(estimate.high()).isGreaterThan(0.5);
  }

  @Test
  void mergingIsAddingAll() {
    MeanTally whole = new MeanTally();
    MeanTally left = new MeanTally();
    MeanTally right = new MeanTally();
    for (int i = 1; i <= 100; i++) {
      whole.add(i);
      (i <= 40 ? left : right).add(i);
    }
    whole.addHistories(1_000);
    left.addHistories(400);
    right.addHistories(600);
    left.merge(right);
    assertThat(left.estimate(0.95, 100)).isEqualTo(whole.estimate(0.95, 100));
    assertThat(left.largest()).isEqualTo(100);
  }

  // Sleep data of Student, Biometrika 6 (1908): extra hours, drug 2; t interval .8976775, 3.7623225
  // (R).
  @Test
  void ordinaryMeansHaveStudentsInterval() {
    double[] hours = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    double sum = 0;
    double squares = 0;
    for (double x : hours) {
      sum += x;
      squares += x * x;
    }
    Estimate estimate = Means.of(10, sum, squares, 0.95);
    assertThat(estimate.low()).isCloseTo(.8976775, within(1e-6));
    assertThat(estimate.high()).isCloseTo(3.7623225, within(1e-6));
  }

  /** Times of 1 h and 9 h: Student's interval (12.706 of 1 degree) would begin at −45.8 h. */
  @Test
  void amountsAreNeverNegative() {
    assertThat(Means.of(2, 10, 82, 0.95).low()).isCloseTo(-45.82, within(0.01));
    assertThat(Means.ofAmounts(2, 10, 82, 0.95).low()).isZero();
    assertThat(Means.ofAmounts(2, 10, 82, 0.95).high()).isCloseTo(55.82, within(0.01));
    assertThat(Means.ofAmounts(1, 9, 81, 0.95).low()).isZero();
  }

  @Test
  void sharesStayBetweenNothingAndAll() {
    assertThat(Shares.ofEvents(0, 0, 0.95)).isEqualTo(new Estimate(0, 0, 1, false));
    assertThat(Shares.ofEvents(81, 263, 0.95)).isEqualTo(Proportions.of(81, 263, 0.95));
    Estimate share = Shares.ofAmounts(100, 30, 100, 30, 30, 100, 0.95); // 30 of 100 equal losses
    assertThat(share.value()).isEqualTo(0.3);
    assertThat(share.low()).isBetween(0.2, 0.25);
    assertThat(share.high()).isBetween(0.38, 0.42);
  }

  @Test
  void refusesAnAmountOfNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MeanTally().add(0))
        .withMessage("amount must be above 0 and finite: 0.0");
  }
}
