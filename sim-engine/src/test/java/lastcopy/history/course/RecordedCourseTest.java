package lastcopy.history.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A course as it is written down, by hand. */
class RecordedCourseTest {

  /** Bare by 8 bytes from 10 to 15 h, by 3 from 15 to 20, by 5 from 30 on. */
  private static RecordedCourse course() {
    RecordedCourse course = new RecordedCourse(1, 2);
    course.append(10, 0, 99, 99);
    course.append(10, 0, 8, 7); // what counts is how the instant ends
    course.append(15, 5, 3, 4);
    course.append(20, 10, 0, Double.POSITIVE_INFINITY);
    course.append(30, 10, 5, 6);
    course.finish();
    return course;
  }

  /** At an instant, or just before it: what stood there before, or at the start. */
  @Test
  void entriesAreBeforeAnInstantOrAtIt() {
    RecordedCourse course = course();
    for (int i = 0; i < 4; i++) {
      course.set(i, 1, 10 + i, 20 + i, 30 + i);
    }
    assertThat(base(course, 10, false)).isEqualTo(2);
    assertThat(course.flowTo(1)).isZero();
    assertThat(base(course, 10, true)).isEqualTo(10);
    assertThat(base(course, 15, false)).isEqualTo(10);
    assertThat(base(course, 16, true)).isEqualTo(11);
    assertThat(base(course, 99, false)).isEqualTo(13);
  }

  private static double base(RecordedCourse course, double at, boolean inclusive) {
    course.moveTo(at, inclusive);
    return course.base(1);
  }

  @Test
  void hoursBareAddUp() {
    RecordedCourse course = course();
    assertThat(course.bareHours(9)).isZero();
    assertThat(course.bareHours(12)).isEqualTo(2);
    assertThat(course.bareHours(18)).isEqualTo(8);
    assertThat(course.bareHours(25)).isEqualTo(10);
    assertThat(course.bareHours(33)).isEqualTo(13);
    BareTimes times = course.bareTimes();
    assertThat(times.edges()).isEqualTo(3);
    assertThat(new double[] {times.end(0), times.end(1), times.end(2)}).containsExactly(10, 20, 30);
    assertThat(times.bareUntil(15)).isTrue();
    assertThat(times.bareUntil(25)).isFalse();
  }

  @Test
  void theMostThatIsBareOverAStretch() {
    RecordedCourse course = course();
    assertThat(course.mostBare(0, 9)).isZero();
    assertThat(course.mostBare(0, 12)).isEqualTo(8);
    assertThat(course.mostBare(0, 99)).isEqualTo(8);
    assertThat(course.mostBare(5, 12)).isEqualTo(8);
    assertThat(course.mostBare(15, 40)).isEqualTo(5);
    assertThat(course.mostBare(15, 25)).isEqualTo(3);
    assertThat(course.mostBare(20, 29)).isZero();
  }

  /** The lowest position bare after an entry or any later one. */
  @Test
  void theLowestThatIsBareFromThenOn() {
    RecordedCourse course = course();
    assertThat(lowestBare(course, 12)).isEqualTo(4);
    assertThat(lowestBare(course, 15)).isEqualTo(4);
    assertThat(lowestBare(course, 20)).isEqualTo(6);
    assertThat(lowestBare(course, 30)).isEqualTo(6);
  }

  private static double lowestBare(RecordedCourse course, double at) {
    course.moveTo(at, true);
    return course.lowestBare();
  }

  /** Each of 1,000 instants has its own, however often the room for them grows. */
  @Test
  void manyEntriesAreKept() {
    RecordedCourse course = new RecordedCourse(1, 2);
    for (int i = 0; i < 1_000; i++) {
      int entry = course.append(i + 1, i / 2.0, i % 2, i);
      course.set(entry, 0, i, 2 * i, 3 * i);
      course.set(entry, 1, 4 * i, 5 * i, 6 * i);
    }
    for (int i = 0; i < 1_000; i += 37) {
      course.moveTo(i + 1, true);
      assertThat(course.base(0)).isEqualTo(i);
      assertThat(course.flowTo(0)).isEqualTo(2.0 * i);
      assertThat(course.runStart(0)).isEqualTo(3.0 * i);
      assertThat(course.base(1)).isEqualTo(4.0 * i);
      assertThat(course.flowTo(1)).isEqualTo(5.0 * i);
      assertThat(course.runStart(1)).isEqualTo(6.0 * i);
      assertThat(course.lowestBare()).isEqualTo(i);
      assertThat(course.bareHours(i + 1.5)).isCloseTo(i / 2.0 + i % 2 / 2.0, within(1e-9));
    }
    assertThat(course.mostBare(0, 1)).isZero();
    assertThat(course.mostBare(0, 2)).isEqualTo(1);
  }
}
