package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A range of a rate is read and refused with one sentence, never ignored. */
class RangesTest {

  @ParameterizedTest
  @ValueSource(strings = {"1..4 %/year", "0.01 .. 0.04 per year"})
  void ofALife(String range) {
    expectRefusal(Texts.withDrive("size: 8 TB, fails: " + range));
  }

  @Test
  void ofAMean() {
    expectRefusal(Texts.withMain("drives: 1 x desk, noticed: {mean: 1..4 days}"));
  }

  private static void expectRefusal(String text) {
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .contains("a range of a rate, which is not simulated yet");
  }
}
