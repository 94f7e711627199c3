package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepairablePairTest {

  /** Textbook exercise: mean life 150 h; 225 h without repair, 2,475 h with a repair of 5 h. */
  @Test
  void textbookMeanTimes() {
    assertThat(new RepairablePair(1.0 / 150, 0).meanTimeToLoss()).isCloseTo(225, within(1e-10));
    assertThat(new RepairablePair(1.0 / 150, 0.2).meanTimeToLoss()).isCloseTo(2_475, within(1e-9));
    assertThat(new RepairablePair(0.01, 0.1).meanTimeToLoss()).isCloseTo(650, within(1e-10));
    assertThat(new RepairablePair(1e-6, 1.0 / 24).meanTimeToLoss())
        .isCloseTo(20_834_833_333.3, within(0.05));
  }

  /** Values of the closed form computed with R 4.2. */
  @ParameterizedTest
  @CsvSource({
    "150,5,10,.997594144577321",
    "150,5,100,.962103262209419",
    "150,5,1000,.668352094815189",
    "100,10,50,.936430627833849",
    "100,10,100,.866308506473875"
  })
  void survival(double meanLife, double meanRepair, double hours, double expected) {
    RepairablePair pair = new RepairablePair(1 / meanLife, 1 / meanRepair);
    assertThat(pair.survival(hours)).isCloseTo(expected, within(1e-14));
    assertThat(chainOf(pair).lossBy(hours)).isCloseTo(1 - expected, within(1e-14));
  }

  /** Five years at λ = 1e-6, μ = 1/24, computed with mpmath; both ways keep 11 digits. */
  @Test
  void rareLoss() {
    RepairablePair pair = new RepairablePair(1e-6, 1.0 / 24);
    double expected = 2.10109459908e-6;
    assertThat(pair.lossBy(43_800)).isCloseTo(expected, within(1e-11 * expected));
    assertThat(chainOf(pair).lossBy(43_800)).isCloseTo(expected, within(3e-12 * expected));
    // The exponential with the same mean overstates the early loss a little.
    assertThat(-Math.expm1(-43_800 / pair.meanTimeToLoss())).isGreaterThan(expected);
  }

  /** Mean life 50,000 h and repair 500 h over ten years. */
  @Test
  void harshPair() {
    RepairablePair pair = new RepairablePair(1.0 / 50_000, 1.0 / 500);
    assertThat(pair.lossBy(87_600)).isCloseTo(0.03327115, within(5e-9));
    assertThat(chainOf(pair).lossBy(87_600)).isCloseTo(pair.lossBy(87_600), within(1e-14));
  }

  @ParameterizedTest
  @CsvSource({".01,.1", "1e-6,.0416", "1,0", "1e-9,1"})
  void chainAndClosedFormHaveTheSameMean(double fails, double repairs) {
    RepairablePair pair = new RepairablePair(fails, repairs);
    double mean = pair.meanTimeToLoss();
    assertThat(chainOf(pair).meanTimeToLoss()).isCloseTo(mean, within(1e-13 * mean));
  }

  @Test
  void refusesNonsense() {
    assertThatThrownBy(() -> new RepairablePair(0, 1))
        .hasMessage("failure rate must be above 0: 0.0");
    assertThatThrownBy(() -> new RepairablePair(1, -1))
        .hasMessage("repair rate must be at least 0: -1.0");
  }

  private static ParityGroup chainOf(RepairablePair pair) {
    return new ParityGroup(2, 1, pair.failsPerHour(), pair.repairsPerHour());
  }
}
