package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkovChainTest {

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 1e-3, 1, 700, 1e6})
  void oneStepIsAnExponentialLife(double hours) {
    MarkovChain chain = MarkovChain.row(new double[] {0.01}, new double[0]);
    double exact = -Math.expm1(-0.01 * hours);
    assertThat(chain.chance(0, 1, hours)).isCloseTo(exact, within(1e-12 * exact));
  }

  /** Poisson counts: the chance of k steps is e^-x x^k / k!; tiny ones keep their digits. */
  @Test
  void aRowOfEqualStepsCountsAsPoisson() {
    MarkovChain chain = MarkovChain.row(new double[] {2, 2, 2, 2, 2, 2}, new double[5]);
    double x = 2e-4;
    double exact = Math.exp(-x) * Math.pow(x, 5) / 120;
    assertThat(chain.chance(0, 5, 1e-4)).isCloseTo(exact, within(1e-12 * exact));
  }

  /** Two states that swap: P(1 at t) = a/(a + b)(1 − e^-(a+b)t), however stiff. */
  @ParameterizedTest
  @CsvSource({"1e-9,1,1e7", "3,2,0.1", "1e-6,1e-6,1e3"})
  void twoStatesThatSwap(double a, double b, double hours) {
    MarkovChain chain = new MarkovChain(new double[][] {{0, a}, {b, 0}});
    double exact = -a / (a + b) * Math.expm1(-(a + b) * hours);
    assertThat(chain.chance(0, 1, hours)).isCloseTo(exact, within(1e-12 * exact));
  }

  @Test
  void rowsAddToOneAndStepsCompose() {
    MarkovChain chain = new ParityGroup(5, 2, 0.01, 0.1, 2, 1e-5).chain();
    double[][] once = chain.transition(30);
    double[][] twice = chain.transition(60);
    for (int i = 0; i < chain.states(); i++) {
      double sum = 0;
      double composed = 0;
      for (int j = 0; j < chain.states(); j++) {
        sum += once[i][j];
        composed += once[i][j] * once[j][3];
      }
      assertThat(sum).isCloseTo(1, within(1e-14));
      assertThat(composed).isCloseTo(twice[i][3], within(1e-13));
    }
  }

  @Test
  void meanTimeFromAnyState() {
    MarkovChain chain = MarkovChain.row(new double[] {0.5, 0.25, 0.125}, new double[2]);
    assertThat(chain.meanTimeToAbsorption(0)).isCloseTo(14, within(1e-12));
    assertThat(chain.meanTimeToAbsorption(1)).isCloseTo(12, within(1e-12));
    assertThat(chain.meanTimeToAbsorption(2)).isCloseTo(8, within(1e-12));
    assertThat(chain.meanTimeToAbsorption(3)).isZero();
  }

  @Test
  void refusesWhatIsNoChain() {
    assertThatThrownBy(() -> new MarkovChain(new double[][] {{0, -1}, {0, 0}}))
        .hasMessageContaining("rate must be at least 0: -1.0");
    assertThatThrownBy(() -> new MarkovChain(new double[][] {{0, Double.NaN}, {0, 0}}))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> new MarkovChain(new double[][] {{0, 1}}))
        .hasMessageContaining("square");
    MarkovChain swapping = new MarkovChain(new double[][] {{0, 1}, {1, 0}});
    assertThatThrownBy(() -> swapping.meanTimeToAbsorption(0))
        .hasMessageContaining("only the last may absorb");
  }
}
