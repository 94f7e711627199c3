package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
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
 * When a drive fails under a bias that depends on whether some footage stands in one copy only,
 * which on the undisturbed course comes and goes by the clock: by hand, stretch by stretch.
 */
class BareClocksTest extends ClocksFixture {

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
    start(life, byWhatIsBare(life), course());
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
    Plan aged = HazardsTest.plan(DriveModel.builder("m", 1e12).fails(life).age(new Fixed(20)));
    start(aged, byWhatIsBare(life), course());
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
    start(life, byWhatIsBare(life), course());
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

  /** A drive of constant hazard that comes at 20 h, while something is bare until 30 h. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aLaterDriveOfConstantHazardIsLookedUp(long history) {
    Law life = new Exponential(100);
    start(life, byWhatIsBare(life), course());
    draws.start(history);
    clocks.clear();
    live(20, 0);
    assertThat(clocks.isEarliest(0)).isFalse();
    double at = 20 + happens(draws.budget(KEY), new double[] {0, 10, 20, 25}, .01);
    assertThat(time.of(0)).isCloseTo(at, within(1e-9));
    time.passTo(at);
    clocks.fired(0);
    double bare = Math.min(at, 30) - 20 + Math.max(0, Math.min(at, 45) - 40);
    double ratio = Math.exp(.01 * (at - 20 - bare) + .05 * bare) / (isBare(at) ? 6 : 2);
    assertThat(clocks.weight()).isCloseTo(ratio, within(1e-9));
  }

  /** By the end of the year half of the budget, if all were bare one and a half of it. */
  @Test
  void whatIsSearchedMayNotHappenByTheHorizon() {
    draws.start(1);
    Law life = new Weibull(2, 2 * 8_760 / Math.sqrt(draws.budget(KEY)), 0);
    start(life, byWhatIsBare(life), course());
    live(5, 0);
    assertThat(time.of(0)).isLessThan(8_760);
    clocks.search(0);
    assertThat(time.of(0)).isInfinite();
  }

  /** On the course the clock tells what is bare, whatever was said of the time off it. */
  @Test
  void onTheCourseOnlyTheClockCounts() {
    Law life = new Exponential(100);
    start(life, byWhatIsBare(life), course());
    live(0, 0);
    clocks.levelIs(0, true, true);
    double at = happens(budget, new double[] {10, 30, 40, 45}, .01);
    assertThat(time.of(0)).isCloseTo(at, within(1e-9));
    time.passTo(5);
    assertThat(clocks.mayLoseNow()).isFalse();
  }

  /** What stands in a single copy is bare at all times, whatever a course says. */
  @Test
  void aSingleCopyIsAlwaysBare() {
    DriveModel model = DriveModel.builder("m", 1e12).fails(new Exponential(100)).build();
    Medium set = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Layout layout = Layout.of("l", Copy.builder("main").on(set).build());
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Plan single = Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
    double[][] factors = new double[single.groups().count()][2 * Levels.of(single).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 2);
      Arrays.fill(each, each.length / 2, each.length, 6);
    }
    start(single, Bias.of(factors), course());
    live(0, 0);
    clocks.levelIs(0, true, true);
    assertThat(clocks.mayLoseNow()).isTrue();
    assertThat(time.of(0)).isCloseTo(100 * budget / 6, within(1e-9));
  }
}
