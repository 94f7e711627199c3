package lastcopy.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lastcopy.law.ByAge;
import lastcopy.law.Exponential;
import lastcopy.law.Weibull;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** References for batches, planned replacement, visits and shelves, by other ways of arithmetic. */
class BatchAndAgeTest {

  /** The integral over Z of what happens given Z, with the gamma density of a library. */
  @ParameterizedTest
  @CsvSource({"0.5,0", "2,0", "0.5,0.8", "1.5,3"})
  void frailtyIsTheMixtureOverGamma(double spread, double survived) {
    SharedFrailty batch = new SharedFrailty(spread, survived);
    GammaDistribution z = new GammaDistribution(1 / spread, 1 / (1 / spread + survived));
    for (int survives = 0; survives < 4; survives++) {
      int m = survives;
      double mixture =
          new IterativeLegendreGaussIntegrator(30, 1e-11, 1e-13)
              .integrate(
                  10_000_000,
                  // z = x^4 takes the peak of the density at 0 away.
                  x ->
                      4
                          * Math.pow(x, 3)
                          * z.density(Math.pow(x, 4))
                          * new KOutOfN(4, m, new Exponential(1), 0).lossBy(0.7 * Math.pow(x, 4)),
                  1e-9,
                  3);
      assertThat(batch.moreThanFail(4, m, 0.7)).as("m = %s", m).isCloseTo(mixture, within(1e-8));
    }
  }

  @Test
  void frailtyOfTwoDrives() {
    SharedFrailty batch = new SharedFrailty(0.5);
    assertThat(batch.survival(1)).isCloseTo(Math.pow(1.5, -2), within(1e-15));
    assertThat(batch.survival(2)).isCloseTo(0.25, within(1e-15));
    assertThat(batch.bothFail(1, 1)).isCloseTo(batch.moreThanFail(2, 1, 1), within(1e-15));
    // τ = 0.5/2.5 = 1/5.
    assertThat(batch.concordance()).isCloseTo(0.6, within(1e-15));
  }

  /** Surviving on is surviving from the start over having survived so far. */
  @Test
  void agedBatchIsConditional() {
    SharedFrailty fresh = new SharedFrailty(0.8);
    double conditional = fresh.survival(1.2 + 0.5) / fresh.survival(1.2);
    assertThat(new SharedFrailty(0.8, 1.2).survival(0.5)).isCloseTo(conditional, within(1e-14));
  }

  /** With a spread near 0 the batch is no batch: the limit, to first order in the spread. */
  @Test
  void littleSpreadIsNoBatch() {
    double alone = new KOutOfN(5, 2, new Exponential(1), 0).lossBy(0.4);
    assertThat(new SharedFrailty(1e-7).moreThanFail(5, 2, 0.4)).isCloseTo(alone, within(1e-6));
  }

  @Test
  void plannedReplacement() {
    Weibull life = new Weibull(3, 1_000, 0);
    // H = (t/1000)^3: two full turns of 500 h and 200 h more.
    assertThat(new PlannedReplacement(life, 500).survival(1_200))
        .isCloseTo(Math.exp(-2 * 0.125 - 0.008), within(1e-14));
    // From 300 h to 500 h, a turn from 100 h to 500 h, and from 100 h to 200 h.
    assertThat(new PlannedReplacement(life, 500, 300, 100).survival(700))
        .isCloseTo(Math.exp(-(0.125 - 0.027) - (0.125 - 0.001) - (0.008 - 0.001)), within(1e-14));
    assertThat(new PlannedReplacement(life, 1e9).survival(1_200))
        .isCloseTo(life.survival(1_200), within(1e-15));
    // A drive beyond the planned age is swapped at once.
    assertThat(new PlannedReplacement(life, 500, 800, 0).survival(400))
        .isCloseTo(Math.exp(-0.064), within(1e-14));
    assertThatThrownBy(() -> new PlannedReplacement(life, 500, 0, 500))
        .hasMessage("planned age must be above the age when bought: 500.0");
  }

  /** Constant hazards: shares of the time; and a table by age whose years are visits. */
  @Test
  void visits() {
    VisitingDrive drive =
        new VisitingDrive(new Exponential(100), new Exponential(1_000), 50, 168, 24);
    // Visits at 50, 218, 386: two whole ones and 14 h of the third by 400 h.
    assertThat(drive.survival(400)).isCloseTo(Math.exp(-0.62 - 0.338), within(1e-14));
    assertThat(drive.survival(40)).isCloseTo(Math.exp(-0.04), within(1e-15));
    VisitingDrive always = new VisitingDrive(new Weibull(2, 500, 0), new Exponential(9), 0, 10, 10);
    assertThat(always.survival(400)).isCloseTo(Math.exp(-0.64), within(1e-12));
  }

  @Test
  void shelf() {
    ByAge life = new ByAge(List.of(0.1, 0.2, 0.3));
    Shelf shelf = new Shelf(life, 8_760, 17_520, List.of(0.0, 8_760.0, 90_000.0));
    // The first through its 2nd and 3rd year of age, the second through its 3rd.
    assertThat(shelf.lossBy(17_520)).isCloseTo(1 - 0.8 * 0.7 * 0.7, within(1e-14));
  }

  /** Constant hazards, two stages, and a chain of two states: closed forms of Cox (1962). */
  @Test
  void renewals() {
    DriveSlot poisson = slot(t -> Math.exp(-t), t -> Math.exp(-t), t -> 0);
    assertThat(poisson.expectedFailures()).isCloseTo(5, within(1e-4));
    // Erlang of 2 stages of rate 1: M(t) = t/2 − 1/4 + e^(−2t)/4.
    DriveSlot erlang = slot(t -> (1 + t) * Math.exp(-t), t -> (1 + t) * Math.exp(-t), t -> 0);
    assertThat(erlang.expectedFailures()).isCloseTo(2.25 + Math.exp(-10) / 4, within(1e-4));
    // Away for an exponential time: rate a·b/(a + b), with the transient (two-state chain).
    DriveSlot away = slot(t -> Math.exp(-t), t -> Math.exp(-t), t -> Math.exp(-3 * t));
    double exact = 0.75 * 5 + (1 - Math.exp(-20)) / 16;
    assertThat(away.expectedFailures()).isCloseTo(exact, within(1e-4));
    double[] inService = away.chance(t -> Math.exp(-t));
    assertThat(inService[2_000]).isCloseTo(0.75 + Math.exp(-20) / 4, within(1e-4));
  }

  private static DriveSlot slot(
      DoubleUnaryOperator first, DoubleUnaryOperator later, DoubleUnaryOperator away) {
    return new DriveSlot(first, later, away, 5, 2_000);
  }
}
