package lastcopy.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Proportional hazards by their definition, H = f H₀, whatever the law. */
class StretchedTest {

  static List<Law> laws() {
    return List.of(
        new Exponential(50_000),
        new Weibull(1.7, 90_000, 200),
        new Uniform(1_000, 40_000),
        new ByAge(List.of(0.02, 0.4, 0.1)),
        new Competing(List.of(new Weibull(0.5, 1e6, 0), new Exponential(1e5))));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void theHazardIsMultipliedAtEveryAge(Law law) {
    Law stretched = Stretched.of(law, 2.5);
    for (double age : new double[] {100, 5_000, 20_000, 39_000}) {
      double expected = 2.5 * law.cumulativeHazard(age);
      assertThat(stretched.cumulativeHazard(age)).isCloseTo(expected, within(1e-12 * expected));
      assertThat(stretched.hazard(age)).isCloseTo(2.5 * law.hazard(age), within(1e-12));
      assertThat(stretched.inverseCumulativeHazard(expected))
          .isCloseTo(law.inverseCumulativeHazard(expected / 2.5), within(1e-6 * age));
    }
  }

  /** Of U(a, b) with S = ((b − t)/(b − a))^f the mean is a + (b − a)/(f + 1). */
  @ParameterizedTest
  @MethodSource("laws")
  void theMeanOfAStretchedUniformLaw(Law law) {
    assertThat(Stretched.of(law, 1)).isSameAs(law);
    assertThat(Stretched.of(new Uniform(1_000, 40_000), 2).mean()).isCloseTo(14_000, within(0.01));
  }
}
