package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.footage.FeedForecast;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.hazard.Bias;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.Way;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/**
 * What feeds carry while nothing fails is worked out twice: without the engine, for {@code
 * inspect}, and by the engine, whose undisturbed course it records. Over studios drawn from a fixed
 * seed, with hours, shared uplinks, first fills carried by hand and rotations, both say the same at
 * any time.
 *
 * <p>Seen red: a feed outside its hours that takes its share of the uplink in one of the two.
 */
class ForecastAndCourseTest {

  private static final int STUDIOS = 150;

  /** A continuous feed behind a copy that is being fed starts at quarters of an hour. */
  private static final double QUARTER = 0.26;

  @Test
  void bothSayTheSame() {
    RandomStudios studios = new RandomStudios(46);
    int linked = 0;
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next();
      Layout layout = studio.layouts().get(0);
      UndisturbedCourse course = new History(studio, layout, 5, Bias.NONE).course();
      linked += course.isLinked() ? 1 : 0;
      ShootTable shoots = ShootTable.even(studio.footage(), studio.horizonHours());
      FeedForecast forecast = FeedForecast.of(studio, layout, shoots);
      Plan plan = Plan.of(studio, layout);
      for (int c = 1, turn = 0; c < plan.copies(); c++) {
        boolean another = plan.copy(c).stated().equals(plan.copy(c - 1).stated());
        turn = another ? turn + 1 : 0;
        int copy = layout.indexOf(plan.copy(c).stated().id());
        for (double t = 3.3; t < studio.horizonHours(); t += 7.1) {
          double forecasts = forecast.line(copy, turn).carried(t);
          assertThat(Math.max(aged(studio, shoots, t), forecasts))
              .as("studio %s copy %s at %s of %s", i, c, t, layout)
              .isCloseTo(
                  Math.max(aged(studio, shoots, t), carried(course, plan, c, t)),
                  within(slack(plan, c, course)));
        }
      }
    }
    assertThat(linked).isGreaterThan(STUDIOS / 2);
  }

  /** The course counts as held what has aged out. */
  private static double aged(Studio studio, ShootTable shoots, double t) {
    double since = t - studio.footage().keepHours().orElse(Double.POSITIVE_INFINITY);
    return since < 0 ? 0 : shoots.total(since);
  }

  private static double slack(Plan plan, int copy, UndisturbedCourse course) {
    Way way = plan.copy(copy).way();
    boolean follows = way.source() != 0 && way.continuous() && !course.isLinked();
    return follows ? QUARTER * way.bytesPerHour() : 1e4;
  }

  private static double carried(UndisturbedCourse course, Plan plan, int c, double t) {
    course.moveTo(t, true);
    double base = course.base(c);
    double to = course.flowTo(c);
    if (to <= base) {
      return base;
    }
    Way way = plan.copy(c).way();
    double rate = course.isLinked() ? course.perHour(c) : way.bytesPerHour();
    double since = course.isLinked() ? course.since(c) : course.runStart(c);
    return Math.min(to, base + rate * (t - since));
  }
}
