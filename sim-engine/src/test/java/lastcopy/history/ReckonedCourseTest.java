package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import lastcopy.history.course.ReckonedCourse;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.hazard.Bias;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.FeedBuilder;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.LayoutBuilder;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * The course reckoned from shoots against the one that the engine records, run by run, over drawn
 * layouts: where shoots come by the clock both are of the same shoots.
 *
 * <p>Red if a run due at the instant of a shoot carries it, if one that falls due while the last is
 * going starts late, if a run is over before its end.
 */
class ReckonedCourseTest {

  private static final int LAYOUTS = 200;
  private static final int LOOKS = 300;
  private static final double HOURS = 2_000;
  private static final double GB = 1e9;

  private final SplittableRandom random = new SplittableRandom(7);

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private double oneOf(double... values) {
    return values[random.nextInt(values.length)];
  }

  private Copy copy(String id, int feeds) {
    DriveModel model =
        DriveModel.builder("drive", 90 * Units.TB).fails(new Exponential(1e30)).build();
    CopyBuilder copy =
        Copy.builder(id).on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build());
    if (feeds > 0) {
      FeedBuilder feed = Feed.from("main").link(oneOf(2, 5, 20, 1_000) * GB / 3_600);
      if (random.nextInt(4) == 0) {
        feed.continuous();
      } else {
        feed.every(oneOf(6, 24, 40, 168), oneOf(0, 2, 17));
      }
      copy.fed(feed.build()).startsFull(random.nextInt(4) > 0);
    }
    return copy.build();
  }

  /** Shoots that fall on runs, or between them; links that keep up, or do not for long. */
  private Studio studio() {
    Shoots shoots =
        new Shoots(oneOf(24, 40, between(20, 60)), between(10, 60) * GB, Shoots.Spacing.EVEN);
    FootageBuilder footage =
        Footage.builder(shoots).onHand(oneOf(0, 300) * GB).growth(oneOf(0, 0.5));
    LayoutBuilder layout = Layout.builder("l");
    for (int c = 0; c <= 1 + random.nextInt(2); c++) {
      layout.copy(copy(c == 0 ? "main" : "fed" + c, c));
    }
    return Studio.builder("s", HOURS / Units.HOURS_PER_YEAR)
        .footage(footage.build())
        .layout(layout.build())
        .build();
  }

  @Test
  void asRecorded() {
    for (int i = 0; i < LAYOUTS; i++) {
      Studio studio = studio();
      Layout layout = studio.layouts().get(0);
      Plan plan = Plan.of(studio, layout);
      UndisturbedCourse recorded = new History(studio, layout, 5, Bias.NONE, true).course();
      ReckonedCourse reckoned = new ReckonedCourse(plan, new Draws(5));
      reckoned.begin(plan.shoots());
      assertThat(reckoned.isWhole(true)).isTrue();
      for (int k = 0; k < LOOKS; k++) {
        double at = look(plan, recorded, k);
        for (boolean inclusive : new boolean[] {true, false}) {
          assertSame(
              recorded, reckoned, at, inclusive, plan.copies(), "layout " + i + " " + studio);
        }
        assertThat(reckoned.bareHours(at)).isCloseTo(recorded.bareHours(at), within(1e-6));
        assertThat(reckoned.mostBare(0, at)).isCloseTo(recorded.mostBare(0, at), within(1e-3));
      }
    }
  }

  /** An instant at random, or at which something changes. */
  private double look(Plan plan, UndisturbedCourse course, int k) {
    double at = between(0, HOURS);
    if (k % 3 == 0) {
      return plan.shoots().time(random.nextInt(plan.shoots().count()));
    }
    if (k % 3 == 1) {
      course.moveTo(at, true);
      int copy = 1 + random.nextInt(plan.copies() - 1);
      double bytes = course.flowTo(copy) - course.base(copy);
      double hours = random.nextBoolean() ? bytes / plan.copy(copy).way().bytesPerHour() : 0;
      return bytes > 0 ? Math.min(HOURS, course.runStart(copy) + hours) : at;
    }
    return at;
  }

  private static void assertSame(
      UndisturbedCourse recorded,
      UndisturbedCourse reckoned,
      double at,
      boolean inclusive,
      int copies,
      String what) {
    recorded.moveTo(at, inclusive);
    reckoned.moveTo(at, inclusive);
    for (int c = 0; c < copies; c++) {
      String where = what + " copy " + c + " at " + at;
      assertThat(reckoned.base(c)).as(where).isEqualTo(recorded.base(c));
      boolean runs = recorded.flowTo(c) > recorded.base(c);
      assertThat(reckoned.flowTo(c) > reckoned.base(c)).as(where).isEqualTo(runs);
      if (runs) {
        assertThat(reckoned.flowTo(c)).as(where).isEqualTo(recorded.flowTo(c));
        assertThat(reckoned.runStart(c)).as(where).isEqualTo(recorded.runStart(c));
      }
    }
  }
}
