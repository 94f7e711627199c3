package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.history.course.BareTimes;
import lastcopy.law.Exponential;
import lastcopy.law.Weibull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stretches from 10 to 12 and from 20 to 25, and hazards over them, counted by hand. */
class BareTimesTest {

  private static final BareTimes TIMES = new BareTimes(false, 10, 12, 20, 25);

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
    assertThat(TIMES.start(1)).isEqualTo(10);
    assertThat(TIMES.end(1)).isEqualTo(12);
    assertThat(TIMES.isBare(1)).isTrue();
    assertThat(TIMES.stretchFrom(25)).isEqualTo(4);
    assertThat(TIMES.end(4)).isInfinite();
  }

  /** A hazard of 1 an hour. */
  @ParameterizedTest
  @CsvSource({"0,0", "10,0", "11,1", "12,2", "15,2", "21,3", "25,7", "99,7"})
  void constantHazard(double until, double bare) {
    BareHazard hours = new BareHazard(TIMES, new Exponential(1), 0);
    assertThat(hours.all(until)).isEqualTo(until);
    assertThat(bare(hours, until)).isEqualTo(bare);
  }

  /** At 1 an hour, and 5 where it is bare: 10 at 10, 20 at 12, 28 at 20, 53 at 25. */
  @ParameterizedTest
  @CsvSource({"4,4", "10,10", "15,11", "20,12", "24,16", "33,21", "53,25", "60,32"})
  void when(double value, double time) {
    BareHazard hours = new BareHazard(TIMES, new Exponential(1), 0);
    assertThat(hours.when(5, 1, value)).isCloseTo(time, within(1e-12));
  }

  /** H(t) = ((t + 3)/10)² − 0.09 of a source of age 3: 1.6 at 10, 2.16 at 12, 5.2 at 20. */
  @Test
  void risingHazard() {
    BareHazard rising = new BareHazard(TIMES, new Weibull(2, 10, 0), 3);
    assertThat(rising.all(10)).isCloseTo(1.6, within(1e-12));
    assertThat(bare(rising, 12)).isCloseTo(0.56, within(1e-12));
    assertThat(bare(rising, 22)).isCloseTo(0.56 + 0.96, within(1e-12));
    // 1.6 + 3·0.56 at 12; three times 0.96 more at 22 after 3.04 at 20.
    assertThat(rising.when(3, 1, 1.6 + 3 * 0.56)).isCloseTo(12, within(1e-9));
    assertThat(rising.when(3, 1, 1.6 + 3 * 0.56 + 3.04 + 3 * 0.96)).isCloseTo(22, within(1e-9));
  }

  @Test
  void neverOrAlwaysBare() {
    BareHazard never = new BareHazard(new BareTimes(false), new Exponential(1), 0);
    assertThat(never.bare(0, 3)).isZero();
    assertThat(never.when(7, 2, 6)).isEqualTo(3);
    BareHazard always = new BareHazard(new BareTimes(true), new Exponential(1), 0);
    assertThat(always.bare(0, 3)).isEqualTo(3);
    assertThat(always.when(2, 7, 6)).isEqualTo(3);
  }

  private static double bare(BareHazard hazard, double time) {
    return hazard.bare(TIMES.stretchFrom(time), hazard.all(time));
  }
}
