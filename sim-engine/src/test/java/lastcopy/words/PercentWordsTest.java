package lastcopy.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Percentages as they were asked for. */
class PercentWordsTest {

  /** Neither 0 nor 100 is said of what is neither. */
  @ParameterizedTest
  @CsvSource({
    "0.05, 5",
    "0.29, 29",
    "0.07, 7",
    "1, 100",
    "0.99999, 99.999",
    "0.00001, 0.001",
    "0.00125, 0.125",
    "0.1, 10"
  })
  void aPercentageIsToldAsItWasAskedFor(double share, String percent) {
    assertThat(PercentWords.of(share)).isEqualTo(percent);
  }
}
