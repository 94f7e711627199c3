package lastcopy.history.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.Visits;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Periodic;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/** Areas below what a copy holds, by trapezoids, and hours of visits and of links, by hand. */
class StoredHoursTest {

  /** The copy 1 is fed at 3,600 bytes an hour. */
  private static CopyPlan fed() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Exponential(9)).build();
    Medium.DriveSet drive = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Copy main = Copy.builder("a").on(drive).build();
    Feed feed = Feed.from("a").continuous().link(1).build();
    Copy second = Copy.builder("b").on(drive).fed(feed).build();
    Layout layout = new Layout("l", "l", List.of(main, second), OptionalDouble.empty());
    Shoots shoots = new Shoots(100, 100, Shoots.Spacing.EVEN);
    Footage footage = Footage.builder(shoots).onHand(2_500).clip(1).build();
    return Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout).copy(1);
  }

  /** From 1,000 at 9 h to 8,200 at 11 h; of these 200 have aged out by 12 h. */
  @Test
  void whatARunBringsIsHeldFromWhenItComes() {
    RecordedCourse course = new RecordedCourse(0, 0);
    course.set(course.append(10, 0, 0, 0), 1, 1_000, 8_200, 9);
    course.set(course.append(12, 0, 0, 0), 1, 8_200, 0, 0);
    StoredHours stored = new StoredHours(course, fed(), time -> time < 12 ? 0 : 200);
    assertThat(stored.until(9)).isZero();
    assertThat(stored.until(10)).isZero();
    assertThat(stored.until(11)).isEqualTo((4_600 + 8_200) / 2.0);
    assertThat(stored.until(12)).isEqualTo(6_400 + 8_200);
    assertThat(stored.until(15)).isEqualTo(14_600 + 3 * 8_000);
  }

  /** 1,800 an hour from 9 h on, from 12 h on 3,600 an hour until 8,200 are there. */
  @Test
  void ratesChangeOnTheWay() {
    RecordedCourse course = new RecordedCourse(true, new double[2]);
    int first = course.append(10, 0, 0, 0);
    course.set(first, 1, 1_000, 8_200, 0);
    course.setRate(first, 1, 9, 1_800, 13);
    int second = course.append(12, 0, 0, 0);
    course.set(second, 1, 6_400, 8_200, 0);
    course.setRate(second, 1, 12, 3_600, 12.5);
    StoredHours stored = new StoredHours(course, fed(), time -> 0);
    double slow = 2 * (2_800 + 6_400) / 2.0;
    assertThat(stored.until(12)).isEqualTo(slow);
    double fast = (6_400 + 8_200) / 2.0 / 2;
    assertThat(stored.until(13)).isCloseTo(slow + fast + 8_200 / 2.0, within(1e-9));
    rates(course, 5, 0, 0, Double.POSITIVE_INFINITY);
    rates(course, 11, 9, 1_800, 13);
    rates(course, 12, 12, 3_600, 12.5);
  }

  private static void rates(
      RecordedCourse course, double at, double since, double perHour, double end) {
    course.moveTo(at, true);
    assertThat(course.since(1)).isEqualTo(since);
    assertThat(course.perHour(1)).isEqualTo(perHour);
    assertThat(course.runEnd(1)).isEqualTo(end);
  }

  /** From 10 h on every 24 h for 3 h; or for 30 h, so that a drive is always there. */
  @Test
  void hoursOfVisitsAddUp() {
    Visits visits = new Visits(new Periodic(10, 24), 3);
    assertThat(visits.hoursBefore(10)).isZero();
    assertThat(visits.hoursBefore(12)).isEqualTo(2);
    assertThat(visits.hoursBefore(20)).isEqualTo(3);
    assertThat(visits.hoursBefore(36)).isEqualTo(3 + 2);
    assertThat(visits.hoursBefore(70)).isEqualTo(3 * 3);
    assertThat(new Visits(new Periodic(10, 24), 30).hoursBefore(60)).isEqualTo(60 - 10);
  }
}
