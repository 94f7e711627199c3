package lastcopy.simulate;

import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.exact.SharedShock;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Arrangement;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Realistic chances: a mirror at 2 %/year and a repair of 72 h, without and with common cause.
 * Whatever method the engine chooses, its interval must hold the exact answer (alarm rate 1e-6).
 */
class RareLossTest {

  private static final double LAMBDA = 0.02 / 8_760;

  @ParameterizedTest
  @CsvSource({"0", ".01", ".05", ".2"})
  void ordinary(double beta) {
    check(beta, 200_000);
  }

  @Tag("slow")
  @ParameterizedTest
  @CsvSource({"0", ".01", ".05", ".2"})
  void long5Million(double beta) {
    check(beta, 5_000_000);
  }

  private static void check(double beta, long histories) {
    double exact = SharedShock.ofBeta(LAMBDA, beta, 1.0 / 72).lossBy(87_600);
    CopyMaker mirror =
        CopyMaker.markov("main", Arrangement.MIRROR, 2, 1 / ((1 - beta) * LAMBDA), 72)
            .boxed(beta * LAMBDA);
    Estimate loss = simulate(Studios.archive(87_600, mirror), histories).anyLoss();
    assertThat(exact).as("beta %s: %s", beta, loss).isBetween(loss.low(), loss.high());
  }
}
