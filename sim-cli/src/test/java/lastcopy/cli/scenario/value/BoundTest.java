package lastcopy.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The ends of each range as its words say: which belong to it, and what is next to them. */
class BoundTest {

  @ParameterizedTest
  @CsvSource({
    "ABOVE_ZERO, 1e-300, true",
    "ABOVE_ZERO, 0, false",
    "AT_LEAST_ZERO, 0, true",
    "AT_LEAST_ZERO, -1e-300, false",
    "SHARE, 0, true",
    "SHARE, 1, true",
    "SHARE, 1.000001, false",
    "SHARE, -0.000001, false",
    "PART, 0, true",
    "PART, 0.999999, true",
    "PART, 1, false",
    "PART, -0.000001, false",
    "ABOVE_MINUS_ONE, -0.999999, true",
    "ABOVE_MINUS_ONE, -1, false",
    "YEARS, 1000, true",
    "YEARS, 1000.001, false",
    "YEARS, 0, false",
    "SHAPE, 0.01, true",
    "SHAPE, 0.0099, false",
    "SHAPE, 1000, true",
    "SHAPE, 1000.001, false",
    "SPREAD, 0, false",
    "SPREAD, 10, true",
    "SPREAD, 10.001, false",
    "FACTOR, 0, true",
    "FACTOR, 1000000, true",
    "FACTOR, 1000001, false",
    "TIMES, 0.000001, true",
    "TIMES, 0.0000009, false",
    "TIMES, 1000000, true",
    "TIMES, 1000001, false",
    "MONEY, 0, true",
    "MONEY, 1000000000000, true",
    "MONEY, 1000000000001, false",
    "MONEY, -0.01, false",
    "WATTS, 1000000, true",
    "WATTS, 1000001, false",
    "OWN_TIME, 0, true",
    "OWN_TIME, 8760, true",
    "OWN_TIME, 8760.1, false",
  })
  void endsAreWhereTheWordsSay(Bound bound, double value, boolean holds) {
    assertThat(bound.holds(value)).isEqualTo(holds);
  }

  @ParameterizedTest
  @EnumSource(Bound.class)
  void nothingIsWithoutEnd(Bound bound) {
    assertThat(bound.holds(Double.POSITIVE_INFINITY)).isFalse();
    assertThat(bound.holds(Double.NaN)).isFalse();
    assertThat(bound.words()).matches("an? .+");
  }

  @Test
  void wordsNameTheRange() {
    assertThat(Bound.YEARS.words()).isEqualTo("a number above 0 and at most 1000");
  }
}
