package lastcopy.interval;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneInTest {

  /** Rounded so that the chance is never told as smaller than it is. */
  @ParameterizedTest
  @CsvSource({
    "1, 1 in 1",
    ".3, 1 in 3",
    ".1, 1 in 10",
    ".00285, 1 in 350",
    ".001, '1 in 1,000'",
    "8.1e-5, '1 in 12,300'",
    "1.2e-7, 1 in 8.33 million",
    "1e-6, 1 in 1 million",
    "1e-9, 1 in 1 billion",
    "3.9e-8, 1 in 25.6 million",
    "4e-9, 1 in 250 million",
    "2e-12, 1 in 500 billion",
    "2e-14, 1 in 50 trillion",
    "1e-300, 1 in 999 trillion",
  })
  void saysOneInSoMany(double chance, String words) {
    assertThat(OneIn.words(chance)).isEqualTo(words);
  }
}
