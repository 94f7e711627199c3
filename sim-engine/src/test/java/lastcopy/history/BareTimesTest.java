package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stretches from 10 to 12 and from 20 to 25, counted by hand. */
class BareTimesTest {

  private static final BareTimes TIMES = new BareTimes(false, new double[] {10, 12, 20, 25});

  @ParameterizedTest
  @CsvSource({"0,0", "10,0", "11,1", "12,2", "15,2", "21,3", "25,7", "99,7"})
  void hours(double until, double bare) {
    assertThat(TIMES.hours(until)).isEqualTo(bare);
  }

  /** The instant at which a stretch ends still belongs to it. */
  @ParameterizedTest
  @CsvSource({"0,false", "10,false", "10.1,true", "12,true", "12.1,false", "25,true", "25.1,false"})
  void bareUntil(double time, boolean bare) {
    assertThat(TIMES.bareUntil(time)).isEqualTo(bare);
  }

  @Test
  void stretches() {
    assertThat(TIMES.stretchFrom(0)).isZero();
    assertThat(TIMES.stretchFrom(10)).isEqualTo(1);
    assertThat(TIMES.end(1)).isEqualTo(12);
    assertThat(TIMES.isBare(1)).isTrue();
    assertThat(TIMES.stretchFrom(25)).isEqualTo(4);
    assertThat(TIMES.end(4)).isInfinite();
  }

  /** At 1 an hour, and 5 where it is bare: 10 at 10, 20 at 12, 28 at 20, 53 at 25. */
  @ParameterizedTest
  @CsvSource({"4,4", "10,10", "15,11", "20,12", "24,16", "33,21", "53,25", "60,32"})
  void when(double value, double time) {
    assertThat(TIMES.when(1, 5, value)).isCloseTo(time, within(1e-12));
  }

  @Test
  void neverBare() {
    BareTimes never = new BareTimes(false, new double[0]);
    assertThat(never.bareUntil(3)).isFalse();
    assertThat(never.hours(3)).isZero();
    assertThat(never.when(2, 7, 6)).isEqualTo(3);
  }

  @Test
  void alwaysBare() {
    BareTimes always = new BareTimes(true, new double[0]);
    assertThat(always.bareUntil(3)).isTrue();
    assertThat(always.hours(3)).isEqualTo(3);
  }
}
