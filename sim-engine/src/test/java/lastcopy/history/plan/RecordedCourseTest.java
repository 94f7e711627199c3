package lastcopy.history.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A course as it is written down, by hand. */
class RecordedCourseTest {

  /** Bare by 8 bytes from 10 to 15 h, by 3 from 15 to 20, by 5 from 30 on. */
  private static UndisturbedCourse course() {
    UndisturbedCourse course = new UndisturbedCourse(2);
    course.append(10, 0, 99, 99);
    course.append(10, 0, 8, 7); // what counts is how the instant ends
    course.append(15, 5, 3, 4);
    course.append(20, 10, 0, Double.POSITIVE_INFINITY);
    course.append(30, 10, 5, 6);
    course.finish();
    return course;
  }

  @Test
  void entriesAreBeforeAnInstantOrAtIt() {
    UndisturbedCourse course = course();
    assertThat(course.entry(10, false)).isEqualTo(-1);
    assertThat(course.entry(10, true)).isZero();
    assertThat(course.entry(15, false)).isZero();
    assertThat(course.entry(16, true)).isEqualTo(1);
    assertThat(course.entry(99, false)).isEqualTo(3);
  }

  @Test
  void hoursBareAddUp() {
    UndisturbedCourse course = course();
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
    UndisturbedCourse course = course();
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
    UndisturbedCourse course = course();
    assertThat(course.lowestBare(0)).isEqualTo(4);
    assertThat(course.lowestBare(1)).isEqualTo(4);
    assertThat(course.lowestBare(2)).isEqualTo(6);
    assertThat(course.lowestBare(3)).isEqualTo(6);
  }

  /** Each of 1,000 instants has its own, however often the room for them grows. */
  @Test
  void manyEntriesAreKept() {
    UndisturbedCourse course = new UndisturbedCourse(2);
    for (int i = 0; i < 1_000; i++) {
      int entry = course.append(i + 1, i / 2.0, i % 2, i);
      course.set(entry, 0, i, 2 * i, 3 * i);
      course.set(entry, 1, 4 * i, 5 * i, 6 * i);
    }
    assertThat(course.entry(1_000, true)).isEqualTo(999);
    for (int i = 0; i < 1_000; i += 37) {
      assertThat(course.base(i, 0)).isEqualTo(i);
      assertThat(course.flowTo(i, 0)).isEqualTo(2.0 * i);
      assertThat(course.runStart(i, 0)).isEqualTo(3.0 * i);
      assertThat(course.base(i, 1)).isEqualTo(4.0 * i);
      assertThat(course.flowTo(i, 1)).isEqualTo(5.0 * i);
      assertThat(course.runStart(i, 1)).isEqualTo(6.0 * i);
      assertThat(course.lowestBare(i)).isEqualTo(i);
      assertThat(course.bareHours(i + 1.5)).isCloseTo(i / 2.0 + i % 2 / 2.0, within(1e-9));
    }
    assertThat(course.mostBare(0, 1)).isZero();
    assertThat(course.mostBare(0, 2)).isEqualTo(1);
  }
}
