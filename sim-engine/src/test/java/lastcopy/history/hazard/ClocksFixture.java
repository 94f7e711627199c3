package lastcopy.history.hazard;

import java.util.Arrays;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.kernel.SimulationClock;
import lastcopy.law.Law;

/** A history's clocks, with nothing around them, beside the layout of {@link HazardsTest}. */
abstract class ClocksFixture {

  static final long KEY = 77;

  final Draws draws = new Draws(3);
  Plan plan;
  SimulationClock time;
  Clocks clocks;
  double budget;

  void start(Law life, Bias bias, RecordedCourse course) {
    start(HazardsTest.plan(life), bias, course);
  }

  void start(Plan compiled, Bias bias, RecordedCourse course) {
    plan = compiled;
    time = new SimulationClock(plan.timers().priorities(), plan.horizon());
    clocks = new Clocks(plan, draws, time);
    draws.start(1);
    clocks.bias(bias, course);
    clocks.clear();
    budget = draws.budget(KEY);
  }

  void live(double from, double age) {
    clocks.startLife(plan.slot(0), from, age, 1, KEY);
  }

  /** A factor on the working copy's drive by level, and 1 elsewhere. */
  Bias bias(Law life, double... byLevel) {
    Plan of = HazardsTest.plan(life);
    double[][] factors = new double[of.groups().count()][2 * Levels.of(of).depths()];
    for (double[] each : factors) {
      Arrays.fill(each, 1);
    }
    System.arraycopy(byLevel, 0, factors[0], 0, byLevel.length);
    return Bias.of(factors);
  }

  /** Twice the hazard of the working copy's drive, six times while something is bare. */
  Bias byWhatIsBare(Law life) {
    double[] byLevel = new double[2 * Levels.of(HazardsTest.plan(life)).depths()];
    Arrays.fill(byLevel, 0, byLevel.length / 2, 2);
    Arrays.fill(byLevel, byLevel.length / 2, byLevel.length, 6);
    return bias(life, byLevel);
  }
}
