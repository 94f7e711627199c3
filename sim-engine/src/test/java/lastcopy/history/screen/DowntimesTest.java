package lastcopy.history.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drives that are down at once, by hand, over 640 h: stretches of 10 h. */
class DowntimesTest {

  private static final double HORIZON = 640;

  private static void down(Downtimes downtimes, int history, double... fromTo) {
    int count = fromTo.length / 2;
    int[] of = new int[count];
    double[] from = new double[count];
    double[] to = new double[count];
    for (int i = 0; i < count; i++) {
      of[i] = history;
      from[i] = fromTo[2 * i];
      to[i] = fromTo[2 * i + 1];
    }
    downtimes.add(count, of, from, to);
  }

  private static Downtimes surviving(int drives) {
    Downtimes downtimes = new Downtimes(drives, HORIZON);
    downtimes.clear();
    return downtimes;
  }

  /** Two at once; one is still down at the very instant at which it becomes whole. */
  @ParameterizedTest
  @CsvSource({
    "5, 20, 15, 30, true",
    "15, 30, 5, 20, true",
    "5, 15, 15, 30, true",
    "5, 14, 15, 30, false",
    "11, 14, 15, 19, false",
    "5, 300, 100, 101, true",
    "100, 101, 5, 300, true",
    "5, 30, 400, 500, false",
    "0, 1, 0.5, 3, true",
    "638, 900, 639, 700, true",
    "638, 638.5, 639, 700, false",
    "640, 650, 600, 645, true",
    "640, 650, 600, 639, false"
  })
  void twoAreDownAtOnce(double from, double to, double other, double until, boolean atOnce) {
    for (int history : new int[] {0, 17, 63}) {
      Downtimes together = surviving(1);
      down(together, history, from, to, other, until);
      assertThat(together.tooMany()).isEqualTo(atOnce ? 1L << history : 0);
      Downtimes apart = surviving(1);
      down(apart, history, from, to);
      down(apart, history, other, until);
      assertThat(apart.tooMany()).isEqualTo(atOnce ? 1L << history : 0);
      assertThat(apart.areTooManyToTell()).isFalse();
    }
  }

  /** Of different histories nothing is down at once. */
  @Test
  void eachHistoryIsByItself() {
    Downtimes downtimes = surviving(1);
    down(downtimes, 3, 5, 20);
    down(downtimes, 4, 15, 30, 200, 210);
    down(downtimes, 5, 100, 110, 105, 130);
    down(downtimes, 63, 205, 220);
    assertThat(downtimes.tooMany()).isEqualTo(1L << 5);
    downtimes.clear();
    assertThat(downtimes.tooMany()).isZero();
    down(downtimes, 5, 120, 125);
    down(downtimes, 3, 10, 15);
    assertThat(downtimes.tooMany()).as("what was before is forgotten").isZero();
  }

  /** Pairs of three overlap; all three at once only in the second history. */
  @Test
  void aSetThatSurvivesTwoFailsByThree() {
    Downtimes downtimes = surviving(2);
    down(downtimes, 1, 5, 20, 15, 30, 25, 40);
    down(downtimes, 2, 5, 26, 15, 30, 25, 40);
    down(downtimes, 9, 5, 6, 7, 8, 8.5, 9);
    assertThat(downtimes.tooMany()).isEqualTo(1L << 2);
  }

  /** A survivor of none is gone by any. */
  @Test
  void withoutRedundancyOneIsTooMany() {
    Downtimes downtimes = surviving(0);
    down(downtimes, 8, 5, 6);
    assertThat(downtimes.tooMany()).isEqualTo(1L << 8);
  }

  /** More than there is room for at first, one after another in each of 64 histories. */
  @Test
  void manyFailuresAreTold() {
    Downtimes downtimes = surviving(1);
    for (int i = 0; i < 10; i++) {
      for (int history = 0; history < 64; history++) {
        double from = 60 * i + history / 2.0;
        down(downtimes, history, from, from + (history == 40 && i == 4 ? 61 : 20));
      }
    }
    assertThat(downtimes.tooMany()).isEqualTo(1L << 40);
    assertThat(downtimes.areTooManyToTell()).isFalse();
  }

  /** 256 failures of a history, on average. */
  @Test
  void beyondAHardHistoryTheGeneralPathTakesOver() {
    Downtimes downtimes = surviving(1);
    double[] many = new double[2 * 256];
    for (int history = 0; history < 64; history++) {
      down(downtimes, history, many);
    }
    assertThat(downtimes.areTooManyToTell()).isFalse();
    down(downtimes, 0, 1, 2);
    assertThat(downtimes.areTooManyToTell()).isTrue();
  }
}
