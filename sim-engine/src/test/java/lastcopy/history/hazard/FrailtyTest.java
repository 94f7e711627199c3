package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Frailties of a batch of variance v = 0.5 against the moments of the Gamma law that is left once
 * drives have survived hazards that add to A: mean k/(k + A) and variance k/(k + A)², k = 1/v
 * (Hougaard, Analysis of Multivariate Survival Data, 2000, ch. 7). Null hypotheses: within five
 * standard errors, an alarm rate of 6e-7.
 */
class FrailtyTest {

  private static final int MANY = 20_000;

  private static Plan plan(int drives, double age) {
    DriveModel model =
        DriveModel.builder("m", 1e12).fails(new Exponential(100)).age(new Fixed(age)).build();
    Medium set =
        Medium.DriveSet.builder(Arrangement.PARITY, drives).of(model).batch("b", .5).build();
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(set).build());
    return Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
  }

  /** Three drives of age 20 and mean life 100: A = 0.6. */
  @Test
  void aBatchThatHasSurvivedIsLessFrail() {
    Plan plan = plan(3, 20);
    Draws draws = new Draws(1);
    Frailty frailty = new Frailty(plan, draws);
    double sum = 0;
    double squares = 0;
    for (int history = 0; history < MANY; history++) {
      draws.start(history);
      frailty.clear();
      double z = frailty.atStart(plan.slot(0));
      assertThat(frailty.atStart(plan.slot(2))).as("shared").isEqualTo(z);
      sum += z;
      squares += z * z;
    }
    moments(sum / MANY, squares / MANY, .6);
    assertThat(frailty.ageAtStart(plan.slot(1))).isEqualTo(20);
  }

  /** One that comes later, at age 40, is a batch of its own: A = 0.4. */
  @Test
  void whatComesLaterIsABatchOfItsOwn() {
    Plan plan = plan(3, 20);
    Draws draws = new Draws(1);
    Frailty frailty = new Frailty(plan, draws);
    double sum = 0;
    double squares = 0;
    for (int history = 0; history < MANY; history++) {
      draws.start(history);
      frailty.clear();
      double z = frailty.later(plan.slot(0), 1, 40);
      assertThat(frailty.later(plan.slot(0), 2, 40)).isNotEqualTo(z);
      sum += z;
      squares += z * z;
    }
    moments(sum / MANY, squares / MANY, .4);
  }

  private static void moments(double mean, double square, double survived) {
    double rate = 2 + survived;
    double variance = 2 / rate / rate;
    assertThat(mean).isCloseTo(2 / rate, within(5 * Math.sqrt(variance / MANY)));
    double exact = variance + 4 / rate / rate;
    double fourth = 2 * 3 * 4 * 5 / Math.pow(rate, 4); // k(k+1)(k+2)(k+3)/rate⁴
    assertThat(square).isCloseTo(exact, within(5 * Math.sqrt((fourth - exact * exact) / MANY)));
  }

  /**
   * Under a bias half of the batches are drawn frail, by the two failures that a parity set dies
   * of; weights have mean 1, weighted frailties are as they fall, and no weight is above 2.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 20})
  void aBiasedBatchHasTheRatioOfItsLaws(double age) {
    Plan plan = plan(3, age);
    Draws draws = new Draws(1);
    Likelihood likelihood = new Likelihood(plan);
    double[][] factors = new double[plan.groups().count()][2 * Levels.of(plan).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    likelihood.bias(Bias.of(factors));
    Frailty frailty = new Frailty(plan, draws, likelihood);
    double weights = 0;
    double plain = 0;
    double weighted = 0;
    for (int history = 0; history < MANY; history++) {
      draws.start(history);
      frailty.clear();
      likelihood.clear();
      double z = frailty.atStart(plan.slot(0));
      double weight = likelihood.ratio();
      assertThat(weight).isLessThanOrEqualTo(2 + 1e-12);
      assertThat(likelihood.statistics().places()).isCloseTo(Math.log(weight), within(1e-9));
      weights += weight;
      plain += z;
      weighted += z * weight;
    }
    double rate = 2 + 3 * age / 100;
    assertThat(weights / MANY).isCloseTo(1, within(.025)); // a weight's variance is below 0.5
    assertThat(weighted / MANY).isCloseTo(2 / rate, within(.025));
    // half of them of shape 4: a mean of 4/rate, by commonness of the two
    assertThat(plain / MANY).isCloseTo(3 / rate, within(5 * Math.sqrt(4 / rate / rate / MANY)));
  }

  @Test
  void aDriveOfNoBatchIsAsAny() {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(100)).build();
    Medium set = Medium.DriveSet.builder(Arrangement.MIRROR, 2).of(model).build();
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(set).build());
    Plan plan = Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
    Frailty frailty = new Frailty(plan, new Draws(1));
    assertThat(frailty.atStart(plan.slot(0))).isEqualTo(1);
    assertThat(frailty.later(plan.slot(1), 1, 30)).isEqualTo(1);
  }
}
