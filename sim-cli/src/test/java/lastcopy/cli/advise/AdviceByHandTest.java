package lastcopy.cli.advise;

import static lastcopy.cli.advise.MadeAdvice.BEST;
import static lastcopy.cli.advise.MadeAdvice.MIRROR;
import static lastcopy.cli.advise.MadeAdvice.USUAL;
import static lastcopy.cli.advise.MadeAdvice.WORST;
import static lastcopy.cli.compare.SampleComparison.seen;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.decide.Advice;
import lastcopy.decide.Advice.About;
import lastcopy.interval.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each answer of an advice where it is true, and where another one is. */
class AdviceByHandTest {

  private static final String OPEN = "That is the likeliest answer; it is not settled (see below).";

  private final MadeAdvice made = new MadeAdvice();

  @ParameterizedTest
  @CsvSource({"0.2, 20", "0.29, 29", "0.0025, 0.25", "0.00001, 0.001", "1, 100"})
  void theTargetIsToldAsItWasAskedFor(double target, String percent) {
    made.target = OptionalDouble.of(target);
    made.underTarget = Optional.of(USUAL);
    assertThat(made.words())
        .contains(
            "The cheapest layout in which at most "
                + percent
                + " % of studios lose footage within 5 years is \"A drive: main 1 x usual\""
                + " (one-3) at EUR 200, with which 185 (180 to 190) of 1,000 studios lose any. ")
        .doesNotContain("Nearest", "There is no layout", "is the safest for its cost", OPEN);
  }

  @Test
  void whereNothingKeepsTheTargetTheSafestIsNearest() {
    made.target = OptionalDouble.of(0.001);
    assertThat(made.words())
        .contains(
            "There is no layout in which at most 0.1 % of studios lose footage within 5 years."
                + " Nearest comes \"A drive: main 2 x best, main mirror\" (one-8) at EUR 1,000,"
                + " with which 2.4 (2.2 to 2.6) of 1,000 studios lose any.")
        .doesNotContain("The cheapest layout", OPEN);
    made.safest = Optional.empty();
    assertThat(made.words()).contains("footage within 5 years. Today's").doesNotContain("Nearest");
  }

  /** As for the answer itself: one whose interval holds the target may keep it after all. */
  @Test
  void thatNothingKeepsALimitMayNotBeSettled() {
    made.target = OptionalDouble.of(0.0023);
    made.budget = OptionalDouble.of(39.5);
    assertThat(made.words()).doesNotContain(OPEN);
    made.open(About.TARGET, MIRROR, MIRROR);
    assertThat(made.words())
        .containsOnlyOnce(OPEN)
        .contains("lose any. " + OPEN + " No layout costs EUR 39.50 or less over 5 years.")
        .contains("The cheapest is \"A drive\" (one) at EUR 40, with which")
        .contains("Not settled: whether one-8 stays within the target. More time");
    made.open(About.BUDGET, WORST, WORST);
    assertThat(made.words())
        .contains("lose any. " + OPEN + " Today's layout is \"A drive\" (one) at EUR 40, with")
        .contains("within the target. Not settled: whether one stays within the budget. More time");
  }

  @Test
  void anAnswerIsNotSettledWhereItsOwnQuestionIsOpen() {
    made.target = OptionalDouble.of(0.2);
    made.underTarget = Optional.of(USUAL);
    made.budget = OptionalDouble.of(510);
    made.withinBudget = Optional.of(BEST);
    made.open(About.FRONT, MIRROR, BEST);
    assertThat(made.words())
        .contains(
            "The safest layout for at most EUR 510 over 5 years is \"A drive: main 1 x best\""
                + " (one-5) at EUR 500, with which 49 (47 to 51) of 1,000 studios lose any. Today")
        .doesNotContain(OPEN);
    made.open(About.BUDGET, MIRROR, BEST);
    assertThat(made.words())
        .containsOnlyOnce(OPEN)
        .contains("49 (47 to 51) of 1,000 studios lose any. " + OPEN);
    made.open(About.TARGET, BEST, USUAL);
    assertThat(made.words()).contains("185 (180 to 190) of 1,000 studios lose any. " + OPEN);
  }

  /** The cheapest by its cost, wherever it stands; what has no cost is none. */
  @Test
  void theCheapestIsToldWhereNothingIsWithinTheBudget() {
    made.budget = OptionalDouble.of(30);
    made.candidates.set(1, MadeAdvice.of(USUAL, seen(0.185, 0.005), 35));
    assertThat(made.words())
        .contains("No layout costs EUR 30 or less over 5 years. The cheapest is")
        .contains("The cheapest is \"A drive: main 1 x usual\" (one-3) at EUR 35, with");
  }

  @Test
  void withoutLimitsTheFrontIsTheAnswer() {
    assertThat(made.words())
        .contains(
            "5 years? Each of 4 layouts is the safest for its cost, from \"A drive\" (one) at"
                + " EUR 40, with which 376 (370 to 382) of 1,000 studios lose any to \"A drive:"
                + " main 2 x best, main mirror\" (one-8) at EUR 1,000, with which 2.4 (2.2 to 2.6) of"
                + " 1,000 studios lose any. Today's layout is")
        .doesNotContain("The safest is", "is the safest too");
    made.front = List.of(USUAL);
    assertThat(made.words())
        .contains("The cheapest layout is the safest too: \"A drive: main 1 x usual\" (one-3) at")
        .doesNotContain("is the safest for its cost", "The safest is");
  }

  @Test
  void withoutPricesTheSafestIsTheAnswer() {
    made.withoutPrices();
    assertThat(made.words())
        .contains(
            "The safest is \"A drive: main 2 x best, main mirror\" (one-8), with which 2.4 (2.2 to 2.6)")
        .contains("Today's layout is \"A drive\" (one), with which 376 (370 to 382)")
        .contains("The file prices nothing, so only risk is compared.")
        .doesNotContain("EUR", "The front", "Cost", "is the safest too");
    made.target = OptionalDouble.of(0.2);
    made.underTarget = Optional.of(BEST);
    assertThat(made.words())
        .contains("A layout in which at most 20 % of studios lose footage within 5 years is \"A")
        .doesNotContain("The cheapest layout", "The safest is");
  }

  @Test
  void aStepTellsWhatItCostsAndWhatItBuys() {
    made.step(seen(160, 2), seen(-0.191, 0.004));
    assertThat(made.words())
        .contains(
            "Step by step: From one to one-3 (main 1 x usual): EUR 160 (158 to 162) more over 5"
                + " years, 376 of 1,000 studios down to 185: 191 (187 to 195) fewer. What")
        .doesNotContain("could not be told", "hardly any", "at most EUR");
  }

  @Test
  void aStepThatMayBuyNothingSaysSo() {
    made.step(seen(160, 2), seen(-0.004, 0.004));
    assertThat(made.words())
        .contains("whether fewer lose any could not be told (376 and 185 of 1,000 studios).")
        .doesNotContain("down to", "fewer.");
  }

  /** A hundredth of 40, which is what the first costs, is nothing; a wide guess is not. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 0.2, hardly any more to pay",
    "0.2, 0.21, at most EUR 0.41 more over 5 years",
    "0.2, 0.19, hardly any more to pay",
    "300, 310, at most EUR 610 more over 5 years",
    "300, 300, at most EUR 600 more over 5 years",
    "300, 299.5, EUR 300 (1 to 600) more over 5 years"
  })
  void onlyWhatIsLittleIsHardlyAnything(double more, double half, String told) {
    made.step(seen(more, half), seen(-0.191, 0.004));
    assertThat(made.words()).contains("(main 1 x usual): " + told + ", 376 of");
  }

  @Test
  void aStepToALayoutOfAnotherKindNamesNoChange() {
    made.yaml =
        MadeAdvice.YAML
            + "  two: {title: Other, copies: {main: {drives: 1 x usual, noticed: 1 h}}}\n";
    made.candidates.add(MadeAdvice.of("two", seen(0.2, 0.005), 210));
    made.front = List.of(WORST, "two");
    made.steps.add(
        new Advice.NextStep(WORST, "two", Optional.of(Estimate.exact(170)), seen(-0.176, 0.004)));
    assertThat(made.words()).contains("From one to two: EUR 170 more over 5 years, 376 of");
  }

  /** Of 1,000 as long as the rarest of those that are named makes one studio. */
  @Test
  void oneDenominatorShowsAllThatAreNamed() {
    made.candidates.set(3, MadeAdvice.of(MIRROR, seen(0.00024, 0.00002), 1_000));
    assertThat(made.words()).contains("Lose any, of 10,000").contains("2.4 (2.2 to 2.6)");
    made.front = List.of(WORST, USUAL, BEST);
    assertThat(made.words()).contains("Lose any, of 1,000 ").doesNotContain("10,000");
    made.target = OptionalDouble.of(0.001);
    made.underTarget = Optional.of(MIRROR);
    assertThat(made.words()).contains("Lose any, of 10,000");
    made.underTarget = Optional.empty();
    made.withinBudget = Optional.of(MIRROR);
    assertThat(made.words()).contains("Lose any, of 10,000");
  }
}
