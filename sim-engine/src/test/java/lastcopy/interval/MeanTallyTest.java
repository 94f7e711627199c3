package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * Worked in Python (numpy, scipy) from the documented formula: both factors at half the error
   * rate. In order: Student's interval of the amounts, cut to what is possible; what was not seen;
   * a lower end from the smallest; a single amount.
   */
  @ParameterizedTest
  @CsvSource({
    "2 2.5 3 2 2.5, 3, .002366624833911913, .0381471549978933",
    "2 2.5 3 2 2.5, 100, .002366624833911913, .758125997273945",
    "1 9, 20, .000018690775694729968, .16194872537347377",
    "7, 20, .000001100636520752208, .12727570114063208",
  })
  void fewAreTheirChanceTimesTheirMean(String amounts, double possible, double low, double high) {
    MeanTally tally = new MeanTally();
    for (String amount : amounts.split(" ", -1)) {
      tally.add(Double.parseDouble(amount));
    }
    tally.addHistories(1_000);
    Estimate estimate = tally.estimate(0.95, possible);
    assertThat(estimate.low()).isCloseTo(low, within(1e-10));
    assertThat(estimate.high()).isCloseTo(high, within(1e-9));
  }

  /** 30 amounts are many, unless a giant outweighs them: effectively 5 here (69²/939). */
  @Test
  void thirtyAlikeAreMany() {
    assertThat(equal(29).estimate(0.95, 10).high()).isCloseTo(.09789174106556597, within(1e-9));
    assertThat(equal(30).estimate(0.95, 10).high()).isCloseTo(.043280570162105646, within(1e-9));
    assertThat(equal(30).estimate(0.95, .04).high()).isCloseTo(.043280570162105646, within(1e-9));
    MeanTally uneven = equal(39);
    uneven.add(30);
    assertThat(uneven.estimate(0.95, 50).low()).isCloseTo(.0009525066564789325, within(1e-9));
    assertThat(uneven.estimate(0.95, 50).high()).isCloseTo(1.8025355759917308, within(1e-9));
  }

  private static MeanTally equal(int amounts) {
    MeanTally tally = new MeanTally();
    for (int i = 0; i < amounts; i++) {
      tally.add(1);
    }
    tally.addHistories(1_000);
    return tally;
  }

  /**
   * None of 1,000 was larger than 3 of 100: the limit of that chance, 1 − .05^(1/1000), times 97.
   */
  @Test
  void whatWasNeverSeenIsTheLimitOfItsChanceTimesWhatItAdds() {
    MeanTally tally = equal(5);
    tally.add(3);
    assertThat(tally.unseen(0.95, 100)).isCloseTo(.29015120587424714, within(1e-12));
    assertThat(tally.unseen(0.95, 2)).isZero();
  }

  @Test
  void tellsWhatItHas() {
    MeanTally tally = equal(5);
    tally.add(3);
    assertThat(tally.histories()).isEqualTo(1_000);
    assertThat(tally.nonZero()).isEqualTo(6);
    assertThat(tally.sum()).isEqualTo(8);
    assertThat(tally.sumSquares()).isEqualTo(14);
    assertThat(tally.mean()).isEqualTo(0.008);
  }

  @Test
  void refusesHistoriesThatDoNotFit() {
    MeanTally tally = equal(5);
    assertThatIllegalArgumentException().isThrownBy(() -> tally.addHistories(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> tally.estimate(0.95, -1));
    assertThat(tally.estimate(0.95, 0).value()).isEqualTo(0.005);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tally.add(Double.POSITIVE_INFINITY))
        .withMessage("amount must be above 0 and finite: Infinity");
    assertThatIllegalStateException().isThrownBy(() -> new MeanTally().estimate(0.95, 1));
    MeanTally more = new MeanTally();
    more.add(1);
    more.add(1);
    more.addHistories(1);
    assertThatIllegalStateException().isThrownBy(() -> more.estimate(0.95, 1));
    more.addHistories(1);
    assertThat(more.estimate(0.95, 1).value()).isEqualTo(1);
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
  void aSingleAmountBoundsNothing() {
    assertThat(Means.of(1, 9, 81, 0.95))
        .isEqualTo(new Estimate(9, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true));
    assertThat(Means.of(3, 0, 0, 0.95)).isEqualTo(Estimate.exact(0));
    assertThat(Means.ofAmounts(3, 0, 0, 0.95)).isEqualTo(Estimate.exact(0));
    assertThatIllegalArgumentException().isThrownBy(() -> Means.of(0, 0, 0, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> Means.of(2, Double.NaN, 1, 0.95));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Means.of(2, 1, Double.POSITIVE_INFINITY, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> Means.of(2, 1, -1, 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> Means.ofAmounts(2, -1, 1, 0.95));
  }

  @Test
  void refusesAnAmountOfNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MeanTally().add(0))
        .withMessage("amount must be above 0 and finite: 0.0");
  }
}
