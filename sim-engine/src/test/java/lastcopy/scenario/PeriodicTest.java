package lastcopy.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the list of all instants, each reckoned by itself. */
class PeriodicTest {

  private static final int MANY = 20_000;

  /** Red if k is the bare ceiling of the quotient: it skips an instant that has just come. */
  @ParameterizedTest
  @CsvSource({
    "22.333333333333332,0.3333333333333333",
    "2,24",
    "0,0.1",
    "0.7,0.7",
    "3.3,168",
    "1e-3,7.7e-3"
  })
  void findsEachInstantAndWhatIsBesideIt(double at, double every) {
    Periodic periodic = new Periodic(at, every);
    for (int k = 1; k < MANY; k++) {
      double instant = at + k * every;
      assertThat(periodic.from(instant)).isEqualTo(instant);
      assertThat(periodic.from(Math.nextDown(instant))).isEqualTo(instant);
      assertThat(periodic.from(Math.nextUp(instant))).isEqualTo(at + (k + 1) * every);
      assertThat(periodic.after(instant)).isEqualTo(at + (k + 1) * every);
      assertThat(periodic.before(instant)).isEqualTo(at + (k - 1) * every);
      assertThat(periodic.upTo(instant)).isEqualTo(instant);
      assertThat(periodic.upTo(Math.nextDown(instant))).isEqualTo(at + (k - 1) * every);
    }
  }

  @ParameterizedTest
  @CsvSource({"5,24", "0,0.1"})
  void theFirst(double at, double every) {
    Periodic periodic = new Periodic(at, every);
    assertThat(periodic.from(0)).isEqualTo(at);
    assertThat(periodic.from(at)).isEqualTo(at);
    assertThat(periodic.after(at)).isEqualTo(at + every);
    assertThat(periodic.before(at)).isNegative().isInfinite();
    assertThat(periodic.upTo(at)).isEqualTo(at);
  }

  /** Red if a look that is due at the very instant is missed for a rounding: every 20 min. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3333333333333333, 0.1, 24, 7.7e-3})
  void looksByTheClock(double period) {
    Delay.Looks looks = new Delay.Looks(period);
    assertThat(looks.hoursUntilNext(0)).isEqualTo(period);
    for (int k = 1; k < MANY; k++) {
      double look = k * period;
      assertThat(looks.hoursUntilNext(look)).isZero();
      assertThat(looks.hoursUntilNext(Math.nextDown(look))).isPositive().isLessThan(1e-9);
      assertThat(looks.hoursUntilNext(Math.nextUp(look))).isBetween(0.99 * period, 1.01 * period);
    }
  }
}
