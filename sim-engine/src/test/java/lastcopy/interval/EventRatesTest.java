package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EventRatesTest {

  // Exact Poisson limits, two-sided 95 %: 0 to 5 events, R 4.2 and scipy 1.17.1; one-sided after 0.
  @Test
  void exactIntervalsOfARate() {
    double[] high = {3.68888, 5.57164, 7.22469, 8.76727, 10.24159, 11.66833};
    double[] low = {0, 0.02531781, 0.24220928, 0.61867212, 1.08986537, 1.62348639};
    for (int events = 1; events < high.length; events++) {
      Estimate rate = EventRates.of(events, 2, 0.95);
      assertThat(2 * rate.high()).isCloseTo(high[events], within(5e-6));
      assertThat(2 * rate.low()).isCloseTo(low[events], within(5e-9));
      assertThat(rate.value()).isEqualTo(events / 2.0);
    }
    assertThat(EventRates.of(0, 1, 0.975).high()).isCloseTo(high[0], within(5e-6));
    assertThat(EventRates.of(0, 2, 0.975).high()).isCloseTo(high[0] / 2, within(5e-6));
    assertThat(EventRates.of(0, 2, 0.975).seen()).isFalse();
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThatIllegalArgumentException().isThrownBy(() -> EventRates.of(1, 0, 0.95));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> EventRates.of(-1, 2, 0.95))
        .withMessage("events must be at least 0 and time above 0: -1.0, 2.0");
  }
}
