package lastcopy.decide.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;
import org.junit.jupiter.api.Test;

/** The rules by which picks are settled, on intervals by hand. */
class RulesTest {

  private static final Zone ZONE = new Zone(1.25, 1.01, 1.1);

  /** A candidate of which all is known to a half-width, each relative to its value. */
  private static Bounds candidate(int number, double cost, double chance, double width) {
    return new Bounds(number, about(chance, width), about(cost, width / 100));
  }

  private static Estimate about(double value, double width) {
    return new Estimate(value, value * (1 - width), value * (1 + width), true);
  }

  private static List<Integer> numbers(Front front) {
    return front.members().stream().map(Bounds::candidate).toList();
  }

  /** 1/(1·2) + 1/(2·3) + ... = 1, the telescoping series. */
  @Test
  void allLooksAtAllCandidatesAndPairsTogetherSpendTheWhole() {
    ErrorBudget budget = new ErrorBudget(0.05, 200);
    double spent = 0;
    for (ErrorBudget.Of what : ErrorBudget.Of.values()) {
      for (int look = 0; look < 100_000; look++) {
        spent += 200 * (1 - budget.confidence(what, look));
      }
    }
    for (int look = 0; look < 100_000; look++) {
      spent += 200 * 199 * (budget.ofPlainPair(look) + 4 * budget.ofBiasedPair(look));
    }
    assertThat(spent).isCloseTo(0.05, within(1e-6));
  }

  @Test
  void theFirstLookAtOneOfTwentyGetsHalfOfATwentieth() {
    assertThat(new ErrorBudget(0.05, 20).confidence(ErrorBudget.Of.PLAIN, 0))
        .isCloseTo(1 - 0.05 * 0.35 / 20 / 2, within(1e-15));
  }

  @Test
  void whatIsSurelyDearerAndRiskierIsBeaten() {
    List<Bounds> all =
        List.of(
            candidate(0, 100, 0.1, 0.1), // cheap
            candidate(1, 120, 0.2, 0.1), // dearer and riskier than 0
            candidate(2, 120, 0.105, 0.1), // perhaps no riskier than 0
            candidate(3, 100.05, 0.3, 0.1), // perhaps no dearer than 0
            candidate(4, 200, 0.01, 0.1)); // safer than all
    assertThat(Beaten.of(all).stream().boxed()).containsExactly(1);
  }

  @Test
  void nobodyBeatsItself() {
    Bounds exact = new Bounds(0, Estimate.exact(0.1), Estimate.exact(10));
    Bounds safe = new Bounds(1, Estimate.exact(0), Estimate.exact(20));
    assertThat(Beaten.of(List.of(exact, safe)).isEmpty()).isTrue();
  }

  @Test
  void theFrontGoesFromTheCheapestToTheSafest() {
    Front front =
        Front.of(
            List.of(
                candidate(0, 300, 0.01, 0.01),
                candidate(1, 100, 0.1, 0.01),
                candidate(2, 200, 0.2, 0.01),
                candidate(3, 200, 0.05, 0.01)),
            ZONE,
            Pairs.UNKNOWN);
    assertThat(numbers(front)).containsExactly(1, 3, 0);
    assertThat(front.open()).isEmpty();
  }

  @Test
  void whatIsAlikeIsOnTheFrontOnce() {
    Front front =
        Front.of(
            List.of(
                candidate(0, 100, 0.1, 0.01),
                candidate(1, 150, 0.097, 0.01), // 3 % safer is no step
                candidate(2, 100.1, 0.04, 0.01)), // a thousandth dearer, and much safer
            ZONE,
            Pairs.UNKNOWN);
    assertThat(numbers(front)).containsExactly(2);
    assertThat(front.open()).isEmpty();
  }

  @Test
  void whatIsNotSurelyCoveredIsOpen() {
    Front front =
        Front.of(
            List.of(candidate(0, 100, 0.1, 0.3), candidate(1, 150, 0.1, 0.3)), ZONE, Pairs.UNKNOWN);
    assertThat(numbers(front)).containsExactly(0);
    assertThat(front.open()).containsExactly(new Rivalry(1, 0, true, false));
  }

  /** Red if the pairs are asked the wrong way round, or for more than the zone leaves. */
  @Test
  void whatPairsTellAlikeIsCovered() {
    List<Bounds> all = List.of(candidate(0, 100, 0.1, 0.3), candidate(1, 150, 0.1, 0.3));
    Pairs alike =
        (candidate, more, than) -> {
          assertThat(more).isCloseTo(0.25 * 0.07, within(1e-12)); // of the low end of the other
          return candidate == 0 && than == 1;
        };
    assertThat(Front.of(all, ZONE, alike).open()).isEmpty();
    assertThat(Pick.safestWithin(200, all, ZONE, alike).open()).isEmpty();
    Pairs theOtherWay = (candidate, more, than) -> candidate == 1;
    assertThat(Front.of(all, ZONE, theOtherWay).open()).hasSize(1);
    assertThat(Pick.safestWithin(200, all, ZONE, theOtherWay).open()).hasSize(1);
  }

  @Test
  void theCheapestUnderTheTarget() {
    List<Bounds> all =
        List.of(
            candidate(0, 100, 0.11, 0.01),
            candidate(1, 120, 0.09, 0.01),
            candidate(2, 140, 0.02, 0.01));
    Pick pick = Pick.cheapestUnder(0.1, all, ZONE);
    assertThat(pick.answer()).contains(all.get(1));
    assertThat(pick.open()).isEmpty();
  }

  @Test
  void atTheTargetItsSideIsOpen() {
    List<Bounds> all = List.of(candidate(0, 100, 0.101, 0.2), candidate(1, 120, 0.05, 0.2));
    Pick pick = Pick.cheapestUnder(0.1, all, ZONE);
    assertThat(pick.answer()).contains(all.get(1));
    assertThat(pick.open()).containsExactly(new Rivalry(0, 1, true, false));
  }

  /** A tenth beyond the target may be judged by its estimate, however wide the interval is. */
  @Test
  void nearTheTargetTheEstimateDecides() {
    List<Bounds> all = List.of(candidate(0, 100, 0.101, 0.05), candidate(1, 120, 0.05, 0.05));
    assertThat(Pick.cheapestUnder(0.1, all, ZONE).open()).isEmpty();
  }

  @Test
  void underNoTargetThereIsNoAnswerAndTheSafestIsNearest() {
    List<Bounds> all = List.of(candidate(0, 100, 0.3, 0.01), candidate(1, 120, 0.2, 0.01));
    Pick pick = Pick.cheapestUnder(0.1, all, ZONE);
    assertThat(pick.answer()).isEmpty();
    assertThat(pick.open()).isEmpty();
    assertThat(Pick.safest(all)).contains(all.get(1));
  }

  @Test
  void theSafestWithinTheBudgetIsTheCheaperOfTwoAlike() {
    List<Bounds> all =
        List.of(
            candidate(0, 100, 0.3, 0.01),
            candidate(1, 120, 0.1, 0.01),
            candidate(2, 140, 0.099, 0.01),
            candidate(3, 200, 0.01, 0.01));
    Pick pick = Pick.safestWithin(150, all, ZONE, Pairs.UNKNOWN);
    assertThat(pick.answer()).contains(all.get(1));
    assertThat(pick.open()).isEmpty();
  }

  @Test
  void aRivalWithinTheBudgetIsOpenUntilItSurelyIsNoSafer() {
    List<Bounds> all = List.of(candidate(0, 100, 0.1, 0.3), candidate(1, 120, 0.11, 0.3));
    assertThat(Pick.safestWithin(150, all, ZONE, Pairs.UNKNOWN).open())
        .containsExactly(new Rivalry(1, 0, true, false));
  }

  /**
   * Five inventory policies, of which the one of the least cost is wanted: the example of ranking
   * and selection in Law, Simulation Modeling and Analysis (4th ed. 2007, section 10.4), a first
   * stage of 20 runs each and what the second stage comes to; means and variances as printed there,
   * quoted from memory. The book picks the second; by runs of this kind it is never beaten, and of
   * so many runs as the book takes in the end it is the answer.
   */
  @Test
  void aPublishedExampleOfFivePolicies() {
    double[] means = {126.48, 121.92, 127.16, 130.71, 144.07};
    double[] variances = {14.52, 7.96, 9.45, 8.25, 6.20};
    int[] runs = {110, 61, 72, 63, 47};
    ErrorBudget budget = new ErrorBudget(0.1, 5);
    List<Bounds> all = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      double sum = runs[i] * means[i];
      double squares = (runs[i] - 1) * variances[i] + sum * means[i];
      Estimate cost = Means.of(runs[i], sum, squares, budget.confidence(ErrorBudget.Of.COST, 0));
      // Each policy's "chance" rises with its number, so that cost alone beats.
      all.add(new Bounds(i, Estimate.exact(0.1 + (i == 1 ? 0 : 0.1)), cost));
    }
    assertThat(Beaten.of(all).stream().boxed()).containsExactly(0, 2, 3, 4);
    Front front = Front.of(all, ZONE, Pairs.UNKNOWN);
    assertThat(numbers(front)).containsExactly(1);
    assertThat(front.open()).isEmpty();
    // Student's quantile at 60 degrees of freedom and 1 - 0.1·0.2/5/2, by hand, times the
    // deviation.
    assertThat(all.get(1).cost().high() - 121.92)
        .isCloseTo(3.2317 * Math.sqrt(7.96 / 61), within(0.002));
  }
}
