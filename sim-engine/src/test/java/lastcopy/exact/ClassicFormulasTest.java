package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClassicFormulasTest {

  /**
   * Patterson, Gibson, Katz, SIGMOD 1988 [from memory]: 30,000 h, 1 h, 100 data disks. The paper
   * prints 820,000 and 346,000 for the groups of 10 and 25.
   */
  @ParameterizedTest
  @CsvSource({"1,4500000", "10,818182", "25,346154"})
  void patterson(int group, double expected) {
    assertThat(ClassicFormulas.patterson(30_000, 1, 100, group, 1))
        .isCloseTo(expected, within(0.5));
  }

  /** Chen et al., ACM Computing Surveys 26(2), 1994 [from memory]: about 3,000 years. */
  @Test
  void chen() {
    double hours = ClassicFormulas.chen(200_000, 1, 100, 16);
    assertThat(hours).isCloseTo(26_666_667, within(0.5));
    assertThat(hours / 8_760).isCloseTo(3_044, within(1.0));
  }

  /**
   * Elerath, Pecht, DSN 2007 [from memory]: the formula with a group of 7+1, 461,386 h and a mean
   * restore of 12 h; 36,162 years, 0.2765 double failures of 1,000 groups in ten years.
   */
  @Test
  void elerathsBaseCaseByTheFormula() {
    double years = ClassicFormulas.chen(461_386, 12, 8, 8) / 8_760;
    assertThat(years).isCloseTo(36_162, within(0.5));
    assertThat(1_000 * 10 / years).isCloseTo(0.2765, within(5e-5));
  }

  /** IEC 61508-6 Annex B, D: 1oo2, proof test each 8,760 h, λ = 5e-7; computed exactly. */
  @ParameterizedTest
  @CsvSource({"0,6.373836e-6", ".1,2.2413084e-4"})
  void averageUnavailability(double beta, double expected) {
    ProofTestedPair pair = new ProofTestedPair(5e-7, beta, 8_760);
    assertThat(pair.averageUnavailability()).isCloseTo(expected, within(1e-7 * expected));
    // The simple form takes (1 − β) as 1, so it is a little high.
    assertThat(pair.simpleUnavailability() / expected).isBetween(1.0, 1.01);
  }

  @Test
  void lossWithinPeriods() {
    ProofTestedPair pair = new ProofTestedPair(1e-4, 0, 1_000);
    double q = Math.pow(-Math.expm1(-0.1), 2);
    assertThat(pair.lossWithin(1)).isCloseTo(q, within(1e-15));
    assertThat(pair.lossWithin(3)).isCloseTo(1 - Math.pow(1 - q, 3), within(1e-15));
  }

  @Test
  void refusesNonsense() {
    assertThatThrownBy(() -> ClassicFormulas.patterson(1, 1, 100, 30, 1))
        .hasMessageContaining("data disks must fill their groups");
    assertThatThrownBy(() -> ClassicFormulas.chen(1, 1, 10, 1))
        .hasMessage("a group needs at least 2 disks: 1.0");
    assertThatThrownBy(() -> ClassicFormulas.oneSurvived(1, 1, 1))
        .hasMessage("units must be at least 2: 1.0");
  }
}
