package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lastcopy.law.Exponential;
import lastcopy.law.Weibull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupsTest {

  private static final double LAMBDA = 0.02 / 8_760;

  /** Three copies, λ = 1e-3, μ = 0.1, each failed one repaired by itself (own arithmetic). */
  @Test
  void threeCopiesRepairedInParallel() {
    assertThat(new ParityGroup(3, 2, 1e-3, 0.1).meanTimeToLoss())
        .isCloseTo(3_451_833.333, within(1e-3));
  }

  /** The same repaired one after another: (11λ² + 4λρ + ρ²)/(6λ³), Ford et al., OSDI 2010, 8.2. */
  @Test
  void threeCopiesRepairedInSeries() {
    MarkovChain chain = MarkovChain.row(new double[] {3e-3, 2e-3, 1e-3}, new double[] {0.1, 0.1});
    assertThat(chain.meanTimeToAbsorption(0)).isCloseTo(1_735_166.667, within(1e-3));
  }

  /** (μ + (2n − 1)λ)/(n(n − 1)λ²), Greenan, Plank, Wylie, HotStorage 2010, is the chain's mean. */
  @ParameterizedTest
  @CsvSource({"2,1e-3,.1", "8,2e-6,.08", "5,1e-2,0"})
  void oneFailureSurvived(int units, double fails, double repairs) {
    double mean = ClassicFormulas.oneSurvived(units, fails, repairs);
    assertThat(new ParityGroup(units, 1, fails, repairs).meanTimeToLoss())
        .isCloseTo(mean, within(1e-12 * mean));
  }

  /** Strain s on a pair: MTTF = (2λ + sλ + μ)/(2λ·sλ) by first-step analysis. */
  @Test
  void strain() {
    double mean = new ParityGroup(2, 1, 0.01, 0.1, 3, 0).meanTimeToLoss();
    assertThat(mean).isCloseTo((0.02 + 0.03 + 0.1) / (0.02 * 0.03), within(1e-9));
  }

  /** Computed with scipy: λ = 2 %/year, repair 72 h, without and with 5 % common cause. */
  @ParameterizedTest
  @CsvSource({
    "0,1332907000,6.518089888e-6,6.566487116e-5",
    ".05,8708347.144,1.005377009e-3,1.000884076e-2"
  })
  void commonCause(double beta, double mean, double oneYear, double tenYears) {
    SharedShock mirror = SharedShock.ofBeta(LAMBDA, beta, 1.0 / 72);
    assertThat(mirror.meanTimeToLoss()).isCloseTo(mean, within(5e-7 * mean));
    assertThat(mirror.lossBy(8_760)).isCloseTo(oneYear, within(1e-9 * oneYear));
    assertThat(mirror.lossBy(87_600)).isCloseTo(tenYears, within(1e-9 * tenYears));
  }

  @Test
  void commonCauseAgreesWithItsChain() {
    double shock = 0.05 * LAMBDA;
    ParityGroup chain = new ParityGroup(2, 1, 0.95 * LAMBDA, 1.0 / 72, 1, shock);
    double mean = SharedShock.ofBeta(LAMBDA, 0.05, 1.0 / 72).meanTimeToLoss();
    assertThat(chain.meanTimeToLoss()).isCloseTo(mean, within(1e-12 * mean));
    assertThat(mean).isCloseTo(8_708_347.144, within(1e-3));
  }

  @Test
  void withoutRepairChainAndBinomialAgree() {
    for (int survives = 0; survives < 6; survives++) {
      double chain = new ParityGroup(6, survives, 1e-3, 0).lossBy(300);
      double binomial = new KOutOfN(6, survives, new Exponential(1_000), 5_000).lossBy(300);
      assertThat(chain).as("m = %s", survives).isCloseTo(binomial, within(1e-12 * binomial));
    }
  }

  /** Elerath, Pecht, DSN 2007 [from memory]: life Weibull(1.12, 461,386 h); F(10 years). */
  @Test
  void weibullLives() {
    Weibull life = new Weibull(1.12, 461_386, 0);
    assertThat(new KOutOfN(1, 0, life, 0).lossBy(87_600)).isCloseTo(0.14405034, within(5e-9));
    assertThat(new KOutOfN(1, 0, life, 0).lossBy(8_760)).isCloseTo(0.01172986, within(5e-9));
    KOutOfN aged = new KOutOfN(1, 0, life, 8_760);
    double expected = 1 - (1 - 0.14405034) / (1 - 0.01172986);
    assertThat(aged.lossBy(78_840)).isCloseTo(expected, within(2e-8));
  }

  @Test
  void refusesNonsense() {
    for (int survives : List.of(-1, 3)) {
      assertThatThrownBy(() -> new ParityGroup(3, survives, 1, 1))
          .hasMessageContaining("failures survived must be in [0, drives)");
    }
    assertThatThrownBy(() -> SharedShock.ofBeta(1, 1, 1)).hasMessage("beta must be in [0, 1): 1.0");
  }
}
