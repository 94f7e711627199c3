package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lastcopy.exact.KOutOfN;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.ByAge;
import lastcopy.law.Competing;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.law.Uniform;
import lastcopy.law.Weibull;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One drive and nothing else, against the law's own survival function. */
class SingleDriveTest {

  private static final double YEAR = 8_760;

  static Stream<Arguments> laws() {
    return Stream.of(
        Arguments.of(Exponential.ofYearlyProbability(0.2), 0, YEAR),
        Arguments.of(new Exponential(20_000), 30_000, 2 * YEAR),
        Arguments.of(new Weibull(1.12, 30_000, 0), 0, YEAR),
        Arguments.of(new Weibull(0.6, 30_000, 0), 4_000, YEAR),
        Arguments.of(new Weibull(3, 30_000, 2_000), 0, 2 * YEAR),
        Arguments.of(new Weibull(2, 30_000, 2_000), 10_000, YEAR),
        Arguments.of(new Uniform(1_000, 21_000), 0, YEAR),
        Arguments.of(new Uniform(1_000, 21_000), 5_000, YEAR),
        Arguments.of(new ByAge(List.of(0.05, 0.02, 0.3)), 0, 2.5 * YEAR),
        Arguments.of(new ByAge(List.of(0.05, 0.02, 0.3)), 1.5 * YEAR, YEAR),
        Arguments.of(bathtub(), 0, YEAR),
        Arguments.of(bathtub(), 2 * YEAR, YEAR));
  }

  private static Law bathtub() {
    return new Competing(
        List.of(new Weibull(0.5, 200_000, 0), new Weibull(4, 30_000, 0), new Exponential(60_000)));
  }

  /** Red if the age is left out, if it is used as a delay, or if a second life is drawn as aged. */
  @ParameterizedTest
  @MethodSource("laws")
  void loss(Law life, double age, double hours) {
    double exact = new KOutOfN(1, 0, life, age).lossBy(hours);
    assertThat(exact).isBetween(0.02, 0.6);
    CopyMaker drive = CopyMaker.single("main", life).aged(new Fixed(age));
    agrees(simulate(Studios.archive(hours, drive)).anyLoss(), exact);
  }

  /** An age drawn for the drive: the mean over ages of the conditional law. */
  @Test
  void ageThatIsALaw() {
    Law life = new Weibull(2.5, 25_000, 0);
    double exact =
        new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-12)
                .integrate(100_000, age -> new KOutOfN(1, 0, life, age).lossBy(YEAR), 5_000, 15_000)
            / 10_000;
    CopyMaker drive = CopyMaker.single("main", life).aged(new Uniform(5_000, 15_000));
    agrees(simulate(Studios.archive(YEAR, drive)).anyLoss(), exact);
  }

  /** Exact, no sampling error: a fixed life ends when it ends, the horizon's instant included. */
  @Test
  void fixedLife() {
    CopyMaker drive = CopyMaker.single("main", new Fixed(YEAR));
    assertThat(simulate(Studios.archive(YEAR, drive), 1_000).anyLoss().value()).isEqualTo(1);
    assertThat(simulate(Studios.archive(YEAR - 1, drive), 1_000).anyLoss().value()).isZero();
  }

  @Test
  void whatNeverFailsLosesNothing() {
    LayoutResult result =
        simulate(Studios.archive(YEAR, CopyMaker.single("main", new Never())), 1_000);
    assertThat(result.anyLoss().seen()).isFalse();
    assertThat(result.anyLoss().value()).isZero();
    assertThat(result.anyLoss().high()).isPositive();
    assertThat(result.bytesLost().value()).isZero();
    assertThat(result.causes()).isEmpty();
  }

  /** The curve of loss at each quarter; red if points are shifted by one or counted at the end. */
  @Test
  void curve() {
    Law life = new Weibull(1.5, 12_000, 0);
    List<LayoutResult.Point> curve =
        simulate(Studios.archive(YEAR, CopyMaker.single("main", life))).curve();
    assertThat(curve.get(curve.size() - 1).at()).isEqualTo(1);
    for (double years : new double[] {0.25, 0.5, 0.75, 1}) {
      LayoutResult.Point point =
          curve.stream().filter(p -> p.at() == years).findFirst().orElseThrow();
      agrees(point.chance(), 1 - life.survival(years * YEAR));
    }
  }
}
