package lastcopy.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws against reference files; each file names the tool that made it. */
class LawReferenceTest {

  @ParameterizedTest
  @ValueSource(strings = {"exponential", "weibull", "uniform", "by-age", "competing"})
  void agreesWithTheReferenceFile(String name) throws IOException {
    for (String line : lines(name)) {
      if (line.startsWith("#") || line.startsWith("kind")) {
        continue;
      }
      String[] cells = line.split(",", -1);
      Law law =
          law(name, Arrays.stream(cells[1].split(";")).mapToDouble(Double::valueOf).toArray());
      double expected = Double.parseDouble(cells[3]);
      double actual = value(law, cells[0], cells[2]);
      double tolerance = cells[0].equals("mean") ? 1e-9 : 1e-12;
      assertThat(actual).as(line).isCloseTo(expected, within(tolerance * Math.abs(expected)));
    }
  }

  private static double value(Law law, String kind, String at) {
    return switch (kind) {
      case "mean" -> law.mean();
      case "H" -> law.cumulativeHazard(Double.parseDouble(at));
      case "S" -> law.survival(Double.parseDouble(at));
      case "hazard" -> law.hazard(Double.parseDouble(at));
      case "inverse" -> law.inverseCumulativeHazard(Double.parseDouble(at));
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static Law law(String name, double... a) {
    return switch (name) {
      case "exponential" -> new Exponential(a[0]);
      case "weibull" -> new Weibull(a[0], a[1], a[2]);
      case "uniform" -> new Uniform(a[0], a[1]);
      case "by-age" -> new ByAge(Arrays.stream(a).boxed().toList());
      case "competing" ->
          new Competing(
              List.of(
                  new Weibull(a[0], a[1], 0), new Weibull(a[2], a[3], 0), new Exponential(a[4])));
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static List<String> lines(String name) throws IOException {
    try (InputStream in = LawReferenceTest.class.getResourceAsStream(name + ".csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  // Base case of Elerath, Pecht, DSN 2007; values computed with R 4.2.
  @Test
  void agreesWithTheBaseCaseOfElerathAndPecht() {
    Law life = new Weibull(1.12, 461_386, 0);
    assertThat(life.mean()).isCloseTo(442_625.54, within(0.005));
    assertThat(1 - life.survival(8_760)).isCloseTo(0.01172986, within(5e-9));
    assertThat(1 - life.survival(87_600)).isCloseTo(0.14405034, within(5e-9));
    assertThat(new Weibull(2, 12, 6).mean()).isCloseTo(16.63472, within(5e-6));
    assertThat(new Weibull(3, 168, 6).mean()).isCloseTo(156.02056, within(5e-6));
  }

  // By hand: 1 − (1 − p)^years.
  @Test
  void yearlyChancesAddUpOverYears() {
    assertThat(1 - Exponential.ofYearlyProbability(0.015).survival(5 * 8_760.0))
        .isCloseTo(0.073, within(5e-4));
    assertThat(1 - new ByAge(List.of(0.03)).survival(5 * 8_760.0)).isCloseTo(0.141, within(5e-4));
  }

  @Test
  void remainingAgreesWithConditionalSurvival() {
    for (Law law :
        List.of(
            new Exponential(50_000),
            new Weibull(1.12, 461_386, 0),
            new Uniform(0, 100_000),
            new ByAge(List.of(0.013, 0.02)),
            law("competing", 0.5, 5e6, 4, 90_000, 800_000))) {
      for (double age : new double[] {0, 100, 8_760, 30_000}) {
        for (double deviate : new double[] {1e-3, 0.5, 2}) {
          double end = age + law.remaining(age, deviate);
          assertThat(law.survival(end) / law.survival(age))
              .isCloseTo(Math.exp(-deviate), within(1e-9));
        }
      }
    }
  }

  /** The inverse of a sum, quick where it is smooth, against its own cumulative hazard. */
  @Test
  void sumsAreInvertedToTheirLastDigits() {
    List<Law> kinds =
        List.of(
            new Exponential(80_000),
            new Weibull(0.5, 5e6, 0),
            new Weibull(4, 90_000, 300),
            new ByAge(List.of(0.05, 0.0, 0.02, 0.3)),
            new Uniform(20_000, 300_000),
            new Fixed(70_000));
    for (Law a : kinds) {
      for (Law b : kinds) {
        Law sum = new Competing(List.of(a, b));
        for (double hazard = 0x1p-40; hazard < 200; hazard *= 1.37) {
          double time = sum.inverseCumulativeHazard(hazard);
          String what = sum + " at " + hazard;
          assertThat(sum.cumulativeHazard(time * (1 + 1e-12))).as(what).isGreaterThan(hazard);
          assertThat(sum.cumulativeHazard(time * (1 - 1e-12))).as(what).isLessThan(hazard);
        }
      }
    }
  }

  @Test
  void edgesAreWhereTheyShouldBe() {
    assertThat(new Fixed(0).remaining(0, 1)).isZero();
    assertThat(new Fixed(24).remaining(10, 0)).isEqualTo(14);
    assertThat(new Fixed(24).remaining(30, 1)).isZero();
    assertThat(new Fixed(24).survival(24)).isZero();
    assertThat(new Never().remaining(5, 36)).isInfinite();
    assertThat(new ByAge(List.of(0.0)).inverseCumulativeHazard(1)).isInfinite();
    assertThat(new ByAge(List.of(0.0, 0.1)).inverseCumulativeHazard(1e-300)).isEqualTo(8_760);
    assertThat(new Competing(List.of(new Never(), new Fixed(3))).inverseCumulativeHazard(1))
        .isEqualTo(3);
    assertThat(new Competing(List.of(new Never())).inverseCumulativeHazard(1)).isInfinite();
  }

  @Test
  void messagesNameTheRuleAndTheValue() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Exponential(0))
        .withMessage("mean must be above 0.0: 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Weibull(Double.NaN, 1, 0))
        .withMessage("shape must be above 0.0: NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ByAge(List.of(1.0)))
        .withMessage("yearly probability must be in [0, 1): 1.0");
  }
}
