package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * When a source happens and at what likelihood ratio, by hand from the unit exponential that it
 * draws: a drive of 1 an hundred hours beside the others of {@link HazardsTest}.
 */
class ClocksTest extends ClocksFixture {

  private static final int FIRE = 3;

  @Test
  void aDriveFailsWhenItsBudgetIsUsedUp() {
    start(new Exponential(100), Bias.NONE, null);
    live(5, 0);
    assertThat(time.of(0)).isCloseTo(5 + 100 * budget, within(1e-9));
    clocks.startShock(0, KEY);
    assertThat(time.of(FIRE)).isCloseTo(500 * budget, within(1e-9));
    assertThat(clocks.weight()).isEqualTo(1);
    assertThat(clocks.isEarliest(0)).isFalse();
    assertThat(clocks.isEarliest(plan.sources())).as("a timer of another kind").isFalse();
  }

  /** A quarter of its life passes, then the hazard is five times as high, then as before. */
  @Test
  void aFactorCountsFromNowOn() {
    start(new Exponential(100), Bias.NONE, null);
    live(0, 0);
    time.passTo(25 * budget);
    clocks.setFactor(0, 5);
    assertThat(time.of(0)).isCloseTo(25 * budget + 15 * budget, within(1e-9));
    time.passTo(30 * budget);
    clocks.setFactor(0, 1);
    assertThat(time.of(0)).isCloseTo(30 * budget + 50 * budget, within(1e-9));
    clocks.setFactor(1, 5);
    assertThat(time.isSet(1)).as("it does not run").isFalse();
  }

  /** (30/100)² = 0.09 at first, 0.25 when the factor becomes 2, 0.36 when it is 1 again. */
  @Test
  void ageIsCarriedOn() {
    start(new Weibull(2, 100, 0), Bias.NONE, null);
    double drawn = startWithBudget(.5, 1);
    live(0, 30);
    time.passTo(20);
    clocks.setFactor(0, 2);
    double left = drawn - (.25 - .09);
    assertThat(time.of(0)).isCloseTo(20 + 100 * Math.sqrt(.25 + left / 2) - 50, within(1e-9));
    time.passTo(30);
    clocks.setFactor(0, 1);
    left -= 2 * (.36 - .25);
    assertThat(time.of(0)).isCloseTo(30 + 100 * Math.sqrt(.36 + left) - 60, within(1e-9));
  }

  @Test
  void withAFactorOfNoneADriveDoesNotFail() {
    start(new Exponential(100), Bias.NONE, null);
    live(0, 0);
    clocks.setFactor(0, 0);
    assertThat(time.of(0)).isInfinite();
  }

  /** A fire of 0.002 an hour and a theft of 0.004. */
  @Test
  void eachKindOfShockHasItsOwnRate() {
    Place studio =
        Place.of(
            "studio",
            new Mishap("fire", new Rate(.002), 1),
            new Mishap("theft", new Rate(.004), 1));
    start(alone(Arrangement.SINGLE, 1, studio), Bias.NONE, null);
    clocks.startShock(0, KEY);
    clocks.startShock(1, KEY);
    assertThat(time.of(1)).isCloseTo(budget / .002, within(1e-9));
    assertThat(time.of(2)).isCloseTo(budget / .004, within(1e-9));
  }

  /** A working copy by itself, each drive of 1 an hundred hours. */
  private static Plan alone(Arrangement arrangement, int drives, Place place) {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(100)).build();
    Medium set = Medium.DriveSet.builder(arrangement, drives).of(model).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(set).at(place).build());
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    return Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
  }

  /** Another history, in which the drive's budget is in a range. */
  private double startWithBudget(double above, double below) {
    long history = 0;
    do {
      draws.start(history++);
    } while (draws.budget(KEY) < above || draws.budget(KEY) > below);
    return draws.budget(KEY);
  }

  @Test
  void whatStopsDoesNotHappen() {
    start(new Exponential(100), Bias.NONE, null);
    live(0, 0);
    clocks.stop(0);
    assertThat(time.isSet(0)).isFalse();
    clocks.setFactor(0, 9);
    assertThat(time.isSet(0)).isFalse();
    live(0, 0);
    time.clear();
    clocks.clear();
    clocks.setFactor(0, 9);
    assertThat(time.isSet(0)).as("nothing runs").isFalse();
  }

  /**
   * Four times as likely until one thing is wrong, then half as likely: the ratio of an event at
   * depth 1 is 1/0.5 · exp((4 − 1)·hazard before + (0.5 − 1)·hazard after).
   */
  @Test
  void aBiasIsAFactorAndCarriesItsRatio() {
    Law life = new Exponential(100);
    start(life, bias(life, 4, .5), null);
    live(0, 0);
    assertThat(time.of(0)).isCloseTo(25 * budget, within(1e-9));
    time.passTo(10 * budget);
    clocks.levelIs(1, false, false);
    double left = budget - .4 * budget;
    double at = 10 * budget + 100 * left / .5;
    assertThat(time.of(0)).isCloseTo(at, within(1e-9));
    assertThat(clocks.weight()).isCloseTo(Math.exp(3 * .1 * budget), within(1e-12));
    time.passTo(at);
    clocks.fired(0);
    double ratio = Math.exp(3 * .1 * budget - .5 * 1.2 * budget) / .5;
    assertThat(clocks.weight()).isCloseTo(ratio, within(1e-9));
    assertThat(clocks.mayLoseNow()).isFalse();
    PathStatistics did = clocks.likelihood().statistics();
    assertThat(did.events(0, 0)).isZero();
    assertThat(did.events(0, 1)).isEqualTo(1);
    assertThat(did.hazard(0, 0)).isCloseTo(.1 * budget, within(1e-12));
    assertThat(did.hazard(0, 1)).isCloseTo(1.2 * budget, within(1e-12));
    time.passTo(at + 50);
    assertThat(clocks.weight()).as("it does not run any more").isCloseTo(ratio, within(1e-9));
  }

  /** Nothing happens for a while: exp((4 − 1)·hazard) whenever it is asked for. */
  @Test
  void theRatioIsThatOfNow() {
    Law life = new Exponential(100);
    start(life, bias(life, 4), null);
    live(0, 0);
    time.passTo(10 * budget);
    assertThat(clocks.weight()).isCloseTo(Math.exp(.3 * budget), within(1e-12));
    time.passTo(20 * budget);
    assertThat(clocks.weight()).isCloseTo(Math.exp(.6 * budget), within(1e-12));
  }

  /** Twice as likely with nothing wrong, five times from three things on: 0.2 + 0.5 + 0.3. */
  @Test
  void deeperTroubleThanIsToldApartCountsAsTheDeepest() {
    Law life = new Exponential(100);
    start(life, bias(life, 2, 3, 4, 5), null);
    live(0, 0);
    time.passTo(10 * budget);
    clocks.levelIs(99, false, false);
    assertThat(time.of(0)).isCloseTo(10 * budget + 80 * budget / 5, within(1e-9));
    time.passTo(20 * budget);
    clocks.levelIs(0, false, false);
    assertThat(time.of(0)).isCloseTo(20 * budget + 30 * budget / 2, within(1e-9));
  }

  /** Four times as likely, eight times while something is bare; the next history begins anew. */
  @Test
  void offTheCourseItIsAsWasSaidLast() {
    Law life = new Exponential(100);
    start(life, bias(life, 4, 4, 4, 4, 8, 8, 8, 8), null);
    live(0, 0);
    clocks.levelIs(0, false, true);
    assertThat(clocks.mayLoseNow()).isTrue();
    assertThat(time.of(0)).isCloseTo(100 * budget / 8, within(1e-9));
    time.clear();
    clocks.clear();
    live(0, 0);
    assertThat(clocks.mayLoseNow()).isFalse();
    assertThat(time.of(0)).isCloseTo(100 * budget / 4, within(1e-9));
  }

  /**
   * Of pairs, four times as likely with its partner beside it, eight times alone: 0.4 of the budget
   * by 10, 0.4 more by 15, the rest by 20.
   */
  @Test
  void aDriveThatStandsAloneIsOfAnotherGroup() {
    Plan pairs = alone(Arrangement.PAIRS, 4, Place.of("studio"));
    double[][] factors = new double[pairs.groups().count()][2 * Levels.of(pairs).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    int alone = pairs.groups().ofAlone(pairs.slot(0));
    Arrays.fill(factors[pairs.groups().of(pairs.slot(0))], 4);
    Arrays.fill(factors[alone], 8);
    start(pairs, Bias.of(factors), null);
    live(0, 0);
    time.passTo(10 * budget);
    clocks.standsAlone(plan.slot(0), true);
    assertThat(time.of(0)).isCloseTo(17.5 * budget, within(1e-9));
    time.passTo(15 * budget);
    clocks.standsAlone(plan.slot(0), false);
    assertThat(time.of(0)).isCloseTo(20 * budget, within(1e-9));
    double ratio = Math.exp(3 * .1 * budget + 7 * .05 * budget);
    assertThat(clocks.weight()).isCloseTo(ratio, within(1e-9));
    clocks.standsAlone(plan.slot(0), true);
    clocks.fired(0);
    assertThat(clocks.likelihood().statistics().events(alone, 0)).isEqualTo(1);
    assertThat(clocks.weight()).isCloseTo(ratio / 8, within(1e-9));
    live(15 * budget, 0);
    assertThat(time.of(0)).as("another drive").isCloseTo(40 * budget, within(1e-9));
    clocks.standsAlone(plan.slot(1), true);
    assertThat(time.isSet(1)).as("it does not run").isFalse();
  }

  @Test
  void afterTheFirstLossHistoriesFallAsTheyAre() {
    Law life = new Exponential(100);
    start(life, bias(life, 4), null);
    live(0, 0);
    time.passTo(10 * budget);
    clocks.endBias();
    assertThat(time.of(0)).isCloseTo(10 * budget + 60 * budget, within(1e-9));
    double weight = clocks.weight();
    assertThat(weight).isCloseTo(Math.exp(.3 * budget), within(1e-12));
    time.passTo(60 * budget);
    clocks.fired(0);
    assertThat(clocks.weight()).isCloseTo(weight, within(1e-12));
    assertThat(clocks.likelihood().biasing()).isFalse();
    assertThat(clocks.likelihood().statistics().events(0, 0)).as("not counted").isZero();
    clocks.clear();
    assertThat(clocks.weight()).isEqualTo(1);
    assertThat(clocks.likelihood().biasing()).isTrue();
    assertThat(clocks.likelihood().statistics().hazard(0, 0)).isZero();
  }

  /** What ends without having happened has run up its hazard until then. */
  @Test
  void whatStopsHasPassedItsHazard() {
    Law life = new Exponential(100);
    start(life, bias(life, 4), null);
    live(0, 0);
    time.passTo(10 * budget);
    clocks.stop(0);
    time.passTo(20 * budget);
    assertThat(clocks.weight()).isCloseTo(Math.exp(3 * .1 * budget), within(1e-12));
    live(20 * budget, 0);
    time.passTo(45 * budget);
    clocks.fired(0);
    assertThat(clocks.likelihood().statistics().events(0, 0)).isEqualTo(1);
    clocks.clear();
    assertThat(clocks.likelihood().statistics().events(0, 0)).as("another history").isZero();
  }

  /** Off at 0.01 an hour all the while, since the visit that is due at 10 h does not take place. */
  @Test
  void aDriveWhoseVisitIsSkippedIsSetAnew() {
    start(new Exponential(100), Bias.NONE, null);
    double left = startWithBudget(.2, .5);
    clocks.startLife(plan.slot(1), 0, 0, 1, KEY);
    assertThat(time.of(1)).isLessThan(10 + 100 * (left - .1));
    time.passTo(10);
    clocks.skipVisit(plan.copy(1));
    assertThat(time.of(1)).isCloseTo(100 * left, within(1e-9));
    assertThat(time.isSet(2)).as("the other turn does not run").isFalse();
    time.clear();
    clocks.clear();
    clocks.startLife(plan.slot(1), 0, 0, 1, KEY);
    assertThat(time.of(1)).as("another history").isLessThan(10 + 100 * (left - .1));
  }

  /** On at 0.1 from 10 to 13 h, off at 0.01 else: 0.85 by 58 h, when the second visit is due. */
  @Test
  void onlyTheVisitThatIsDueIsSkipped() {
    start(new Exponential(100), Bias.NONE, null);
    double left = startWithBudget(.9, 1.3) - .85;
    clocks.startLife(plan.slot(1), 0, 0, 1, KEY);
    clocks.startShock(0, KEY);
    double fire = time.of(FIRE);
    time.passTo(58);
    clocks.skipVisit(plan.copy(1));
    assertThat(time.of(1)).isCloseTo(58 + 100 * left, within(1e-9));
    clocks.skipVisit(plan.copy(2));
    assertThat(time.of(1)).isCloseTo(58 + 100 * left, within(1e-9));
    assertThat(time.of(FIRE)).isEqualTo(fire);
  }

  /** A chance of 0.3 under a bias of 3 is 1 − 0.7³; its ratio makes up for it. */
  @Test
  void aBiasedChanceHasTheRatioOfItsHazard() {
    Law life = new Exponential(100);
    start(life, bias(life, 3), null);
    double sum = 0;
    int happened = 0;
    for (int history = 0; history < 20_000; history++) {
      draws.start(history);
      clocks.clear();
      if (clocks.chance(0, .3, KEY)) {
        happened++;
        sum += clocks.weight();
      }
    }
    double exact = 1 - .7 * .7 * .7;
    assertThat(happened / 20_000.0).isCloseTo(exact, within(5 * Math.sqrt(exact * .343 / 20_000)));
    assertThat(sum / 20_000).isCloseTo(.3, within(.01));
  }

  /** Counts of mean 0.5 under a bias of 4: mean 2, and 0.5 again with their ratios. */
  @Test
  void aBiasedCountHasTheRatioOfTwoPoissonLaws() {
    Law life = new Exponential(100);
    start(life, bias(life, 4), null);
    double plain = 0;
    double weighted = 0;
    for (int history = 0; history < 20_000; history++) {
      draws.start(history);
      clocks.clear();
      int count = clocks.count(0, .5, KEY);
      plain += count;
      weighted += count * clocks.weight();
      double ratio = Math.exp(1.5) / Math.pow(4, count);
      assertThat(clocks.weight()).isCloseTo(ratio, within(1e-12));
    }
    assertThat(plain / 20_000).isCloseTo(2, within(5 * Math.sqrt(2.0 / 20_000)));
    assertThat(weighted / 20_000).isCloseTo(.5, within(.02));
  }

  @Test
  void withoutABiasChancesAreTheirUniforms() {
    start(new Exponential(100), Bias.NONE, null);
    double uniform = draws.uniform(KEY);
    assertThat(clocks.chance(0, uniform, KEY)).isTrue();
    assertThat(clocks.chance(0, Math.nextDown(uniform), KEY)).isFalse();
    assertThat(clocks.count(0, 3, KEY)).isEqualTo(draws.poisson(3, KEY));
  }

  @Test
  void whatABiasLeavesAsItIsIsItsUniform() {
    Law life = new Exponential(100);
    start(life, bias(life, 1), null);
    double uniform = draws.uniform(KEY);
    assertThat(clocks.chance(0, uniform, KEY)).isTrue();
    assertThat(clocks.chance(0, Math.nextDown(uniform), KEY)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.POSITIVE_INFINITY, Double.NaN})
  void aFactorIsAboveNoneAndFinite(double factor) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Bias.of(new double[][] {{1, factor}}))
        .withMessage("a factor must be above 0 and finite: " + factor);
  }

  @Test
  void levelsAreDepthsTwice() {
    Levels levels = new Levels(5);
    assertThat(levels.count()).isEqualTo(10);
    assertThat(levels.of(3, false)).isEqualTo(3);
    assertThat(levels.of(3, true)).isEqualTo(8);
    assertThat(levels.depth(8)).isEqualTo(3);
    assertThat(Levels.of(HazardsTest.plan(new Exponential(1))).depths())
        .as("three copies of one drive each, and nothing wrong")
        .isEqualTo(4);
  }
}
