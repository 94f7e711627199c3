package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.RecordedCourse;
import lastcopy.kernel.SimulationClock;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.DriveModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * When a source happens and at what likelihood ratio, by hand from the unit exponential that it
 * draws: a drive of 1 an hundred hours beside the others of {@link HazardsTest}.
 */
class ClocksTest {

  private static final long KEY = 77;
  private static final int FIRE = 3;

  private final Draws draws = new Draws(3);
  private Plan plan;
  private SimulationClock time;
  private Clocks clocks;
  private double budget;

  private void start(Law life, Bias bias, RecordedCourse course) {
    start(HazardsTest.plan(life), bias, course);
  }

  private void start(Plan compiled, Bias bias, RecordedCourse course) {
    plan = compiled;
    time = new SimulationClock(plan.timers().priorities(), plan.horizon());
    clocks = new Clocks(plan, draws, time);
    draws.start(1);
    clocks.bias(bias, course);
    clocks.clear();
    budget = draws.budget(KEY);
  }

  private void live(double from, double age) {
    clocks.startLife(plan.slot(0), from, age, 1, KEY);
  }

  /** A factor on the working copy's drive by level, and 1 elsewhere. */
  private Bias bias(Law life, double... byLevel) {
    Plan of = HazardsTest.plan(life);
    double[][] factors = new double[of.groups().count()][2 * Levels.of(of).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    System.arraycopy(byLevel, 0, factors[0], 0, byLevel.length);
    return Bias.of(factors);
  }

  @Test
  void aDriveFailsWhenItsBudgetIsUsedUp() {
    start(new Exponential(100), Bias.NONE, null);
    live(5, 0);
    assertThat(time.of(0)).isCloseTo(5 + 100 * budget, within(1e-9));
    clocks.startShock(0, KEY);
    assertThat(time.of(FIRE)).isCloseTo(500 * budget, within(1e-9));
    assertThat(clocks.weight()).isEqualTo(1);
    assertThat(clocks.isEarliest(0)).isFalse();
    assertThat(clocks.isEarliest(99)).isFalse();
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

  @Test
  void ageIsCarriedOn() {
    start(new Weibull(2, 100, 0), Bias.NONE, null);
    live(0, 30);
    time.passTo(20);
    clocks.setFactor(0, 2);
    double left = budget - (.25 - .09);
    double age = left > 0 ? 100 * Math.sqrt(.25 + left / 2) : 50;
    assertThat(time.of(0)).isCloseTo(20 + age - 50, within(1e-9));
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
    clocks.clear();
    clocks.setFactor(0, 9);
    assertThat(time.of(0)).as("nothing runs").isNotEqualTo(100 * budget / 9);
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
    long history = 0;
    while (draws.budget(KEY) < .2 || draws.budget(KEY) > .5) {
      draws.start(history++);
    }
    double left = draws.budget(KEY);
    clocks.startLife(plan.slot(1), 0, 0, 1, KEY);
    assertThat(time.of(1)).isLessThan(10 + 100 * (left - .1));
    time.passTo(10);
    clocks.skipVisit(plan.copy(1));
    assertThat(time.of(1)).isCloseTo(100 * left, within(1e-9));
    assertThat(time.isSet(2)).as("the other turn does not run").isFalse();
  }

  /** Bare from 10 to 30 and from 40 to 45 h. */
  private static RecordedCourse course() {
    RecordedCourse course = new RecordedCourse(0, 0, 0);
    course.append(10, 0, 1, 0);
    course.append(30, 20, 0, 0);
    course.append(40, 20, 1, 0);
    course.append(45, 25, 0, 0);
    return course;
  }

  /** Twice the hazard where nothing is bare, six times where something is, told by the clock. */
  private static double happens(double budget, double[] edges, double hazardPerHour) {
    double left = budget;
    double from = 0;
    for (int k = 0; ; k++) {
      double by = hazardPerHour * (k % 2 == 0 ? 2 : 6);
      double to = k < edges.length ? edges[k] : Double.POSITIVE_INFINITY;
      if (left <= by * (to - from)) {
        return from + left / by;
      }
      left -= by * (to - from);
      from = to;
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void onTheCourseABiasDependsOnWhatIsBare(long history) {
    Law life = new Exponential(100);
    double[] byLevel = new double[2 * Levels.of(HazardsTest.plan(life)).depths()];
    Arrays.fill(byLevel, 0, byLevel.length / 2, 2);
    Arrays.fill(byLevel, byLevel.length / 2, byLevel.length, 6);
    start(life, bias(life, byLevel), course());
    draws.start(history);
    clocks.clear();
    live(0, 0);
    double edges = happens(draws.budget(KEY), new double[] {10, 30, 40, 45}, .01);
    assertThat(time.of(0)).isCloseTo(edges, within(1e-9));
    double bare = Math.max(0, Math.min(edges, 30) - 10) + Math.max(0, Math.min(edges, 45) - 40);
    time.passTo(edges);
    boolean whileBare = (edges > 10 && edges <= 30) || (edges > 40 && edges <= 45);
    assertThat(clocks.mayLoseNow()).isEqualTo(whileBare);
    clocks.fired(0);
    double log = (2 - 1) * .01 * (edges - bare) + (6 - 1) * .01 * bare;
    assertThat(clocks.weight()).isCloseTo(Math.exp(log) / (whileBare ? 6 : 2), within(1e-9));
  }

  /**
   * Off the course from 15 to 35 h, where nothing is bare though the clock says so until 30, by a
   * drive that has been there since the start, so that it is looked up in its table: of constant
   * hazard, and of one that rises from an age of 20 h on.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void awayFromTheCourseAndBack(long history) {
    away(new Exponential(100), history, t -> t / 100);
    away(new Weibull(2, 60, 0), history, t -> Math.pow((20 + t) / 60, 2));
  }

  private void away(Law life, long history, DoubleUnaryOperator hazard) {
    double[] byLevel = new double[2 * Levels.of(HazardsTest.plan(life)).depths()];
    Arrays.fill(byLevel, 0, byLevel.length / 2, 2);
    Arrays.fill(byLevel, byLevel.length / 2, byLevel.length, 6);
    Plan aged = HazardsTest.plan(DriveModel.builder("m", 1e12).fails(life).age(new Fixed(20)));
    start(aged, bias(life, byLevel), course());
    draws.start(history);
    clocks.clear();
    clocks.levelIs(0, true, false);
    live(0, 20);
    double[] edges = {0, 10, 15, 35, 40, 45, 1e9};
    double[] factors = {2, 6, 2, 2, 6, 2};
    double left = draws.budget(KEY);
    double log = 0;
    for (int k = 0; k < factors.length; k++) {
      double ran = hazard.applyAsDouble(edges[k + 1]) - hazard.applyAsDouble(edges[k]);
      if (factors[k] * ran >= left) {
        double at = time.of(0);
        double whole = hazard.applyAsDouble(edges[k]) + left / factors[k];
        assertThat(hazard.applyAsDouble(at)).isCloseTo(whole, within(1e-9));
        time.passTo(at);
        clocks.fired(0);
        log += (factors[k] - 1) * left / factors[k];
        assertThat(clocks.weight()).isCloseTo(Math.exp(log) / factors[k], within(1e-9));
        return;
      }
      left -= factors[k] * ran;
      log += (factors[k] - 1) * ran;
      if (edges[k + 1] == 15 || edges[k + 1] == 35) {
        time.passTo(edges[k + 1]);
        clocks.levelIs(0, edges[k + 1] == 35, false);
      }
    }
  }

  /** A drive that ages and came at 5 h is no first one: it is searched stretch by stretch. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aLaterDriveIsSearched(long history) {
    Law life = new Weibull(2, 30, 0);
    double[] byLevel = new double[2 * Levels.of(HazardsTest.plan(life)).depths()];
    Arrays.fill(byLevel, 0, byLevel.length / 2, 2);
    Arrays.fill(byLevel, byLevel.length / 2, byLevel.length, 6);
    start(life, bias(life, byLevel), course());
    draws.start(history);
    clocks.clear();
    live(5, 0);
    assertThat(clocks.isEarliest(0)).isTrue();
    assertThat(time.of(0)).isLessThanOrEqualTo(searched(draws.budget(KEY)) + 1e-9);
    clocks.search(0);
    assertThat(clocks.isEarliest(0)).isFalse();
    double at = searched(draws.budget(KEY));
    assertThat(time.of(0)).isCloseTo(at, within(1e-6));
    time.passTo(at);
    clocks.fired(0);
    double bare = 0;
    double all = Math.pow((at - 5) / 30, 2);
    for (double t = 5; t < at; t += 1e-3) {
      bare += isBare(t) ? Math.pow((t + 1e-3 - 5) / 30, 2) - Math.pow((t - 5) / 30, 2) : 0;
    }
    double ratio = Math.exp(all - bare + 5 * bare) / (isBare(at) ? 6 : 2);
    assertThat(clocks.weight() / ratio).isCloseTo(1, within(1e-2));
  }

  private static boolean isBare(double t) {
    return (t > 10 && t <= 30) || (t > 40 && t <= 45);
  }

  /** Small steps of ((t − 5)/30)² with the factor of each. */
  private static double searched(double budget) {
    double left = budget;
    double t = 5;
    while (left > 0) {
      double step = Math.pow((t + 1e-6 - 5) / 30, 2) - Math.pow((t - 5) / 30, 2);
      double jump = 1e-6;
      if (left > step * 6 * 1_000) {
        jump = 1e-3;
        step = Math.pow((t + jump - 5) / 30, 2) - Math.pow((t - 5) / 30, 2);
      }
      left -= step * (isBare(t + jump / 2) ? 6 : 2);
      t += jump;
    }
    return t;
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
