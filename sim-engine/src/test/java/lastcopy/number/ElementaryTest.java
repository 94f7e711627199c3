package lastcopy.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against StrictMath, which is fdlibm: within one unit in the last place of the exact value. */
class ElementaryTest {

  private static final int POINTS = 200_000;

  private final SplittableRandom random = new SplittableRandom(1);

  // Sabotage: the centre of the cells beside 1 not set to 1, or one term of the series left out.
  @Test
  void logarithmsOfUniformsAgreeToTheLastDigits() {
    for (int i = 0; i < POINTS; i++) {
      double u = 1 - random.nextDouble();
      assertLog(u);
      assertLog(1 - u * 0x1p-30);
      assertLog(u * 0x1p-30);
    }
  }

  @Test
  void logarithmsAgreeAcrossTheWholeRange() {
    for (int i = 0; i < POINTS; i++) {
      assertLog((1 + random.nextDouble()) * StrictMath.pow(2, random.nextInt(-1_022, 1_023)));
    }
  }

  private static void assertLog(double x) {
    assertClose("log " + x, Elementary.log(x), StrictMath.log(x), 3);
  }

  @Test
  void exponentialsAgreeAcrossTheWholeRange() {
    for (int i = 0; i < POINTS; i++) {
      assertExp(1 - 2 * random.nextDouble());
      assertExp(-720 + 1_429 * random.nextDouble());
    }
  }

  private static void assertExp(double x) {
    assertClose("exp " + x, Elementary.exp(x), StrictMath.exp(x), 3);
  }

  @Test
  void powersAgreeToTheDigitsPromised() {
    for (int i = 0; i < POINTS; i++) {
      double base = StrictMath.exp(40 * random.nextDouble() - 36);
      double exponent = 4 * random.nextDouble() - 1;
      double expected = StrictMath.pow(base, exponent);
      double units = 4 + 3 * Math.abs(exponent * StrictMath.log(base));
      assertClose(base + " ^ " + exponent, Elementary.pow(base, exponent), expected, units);
    }
  }

  // Pinned: results are promised to stay the same for a seed, on every machine.
  @Test
  void digitsStayWhatTheyAre() {
    long sum = 0;
    for (int i = 1; i <= 10_000; i++) {
      sum = 31 * sum + Double.doubleToRawLongBits(Elementary.log(i / 10_000.0));
      sum = 31 * sum + Double.doubleToRawLongBits(Elementary.exp(i / 700.0 - 7));
    }
    assertThat(sum).isEqualTo(2033603968106733275L);
  }

  @Test
  void edgesAreThoseOfMath() {
    for (double x :
        new double[] {
          0,
          -0.0,
          1,
          -1,
          Double.MIN_VALUE,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NaN,
          Double.MAX_VALUE,
          -Double.MAX_VALUE,
          709.9,
          -708.5,
          -745.1,
          -746
        }) {
      assertThat(Elementary.log(x)).as("log %s", x).isEqualTo((Double) StrictMath.log(x));
      if (x != 1 && x != -1) {
        assertThat(Elementary.exp(x)).as("exp %s", x).isEqualTo((Double) StrictMath.exp(x));
      }
    }
    assertThat(Elementary.pow(0, 0.5)).isZero();
    assertThat(Elementary.pow(0, 0)).isEqualTo(1);
    assertThat(Elementary.pow(0, -0.5)).isInfinite();
    assertThat(Elementary.pow(Double.POSITIVE_INFINITY, 0.5)).isInfinite();
    assertThat(Elementary.pow(1, 3.7)).isEqualTo(1);
  }

  /** In units in the last place, which a decimal offset would not keep. */
  private static void assertClose(String what, double actual, double expected, double units) {
    double off = Math.abs(actual - expected) / Math.ulp(expected);
    assertThat(off).as("%s: %s, expected %s", what, actual, expected).isLessThanOrEqualTo(units);
  }
}
