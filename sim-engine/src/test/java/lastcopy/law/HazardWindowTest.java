package lastcopy.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A hazard in one stretch of age, by hand: 1 % within 720 hours from an age of 1,000 on. */
class HazardWindowTest {

  private static final double HAZARD = -Math.log(0.99) / 720;
  private static final HazardWindow WINDOW = new HazardWindow(HAZARD, 1_000, 1_720);

  @Test
  void onePercentFailsInItAndNoneElsewhere() {
    assertThat(WINDOW.survival(1_000)).isEqualTo(1);
    assertThat(WINDOW.survival(1_360)).isCloseTo(Math.sqrt(0.99), within(1e-14));
    assertThat(WINDOW.survival(1_720)).isCloseTo(0.99, within(1e-14));
    assertThat(WINDOW.survival(1e9)).isCloseTo(0.99, within(1e-14));
    assertThat(WINDOW.hazard(999)).isZero();
    assertThat(WINDOW.hazard(1_000)).isEqualTo(HAZARD);
    assertThat(WINDOW.hazard(1_720)).isZero();
    assertThat(WINDOW.mean()).isInfinite();
  }

  @Test
  void itsInverseIsTheLeastAge() {
    assertThat(WINDOW.inverseCumulativeHazard(0)).isZero();
    assertThat(WINDOW.inverseCumulativeHazard(HAZARD * 100)).isCloseTo(1_100, within(1e-9));
    assertThat(WINDOW.inverseCumulativeHazard(HAZARD * 720 * 1.0001)).isInfinite();
    assertThat(WINDOW.remaining(1_200, HAZARD * 100)).isCloseTo(100, within(1e-9));
  }

  /**
   * Beside another law the sum is inverted to its last digits, before, in and after the stretch.
   */
  @Test
  void besideALifeItAddsUp() {
    Law both = new Competing(List.of(new ByAge(List.of(0.02, 0.03)), WINDOW));
    for (double age : new double[] {10, 999, 1_000.5, 1_500, 1_719, 1_721, 8_000, 20_000}) {
      double hazard = both.cumulativeHazard(age);
      assertThat(both.inverseCumulativeHazard(hazard)).isCloseTo(age, within(age * 1e-12));
    }
  }

  @Test
  void aStretchHasALength() {
    assertThatThrownBy(() -> new HazardWindow(1, 5, 5)).isInstanceOf(RuntimeException.class);
    assertThatThrownBy(() -> new HazardWindow(0, 5, 6)).isInstanceOf(RuntimeException.class);
  }
}
