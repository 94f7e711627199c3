package lastcopy.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts that a person types, outside of a file: eight bits make a byte, 24 hours a day. */
class AmountsTest {

  @ParameterizedTest
  @CsvSource({
    "SIZE, 2 TB, 2e12",
    "SIZE, ' 96 GB ', 96e9",
    "TIME, 2 days, 48",
    "TIME, 90 min, 1.5",
    "LINK, 20 Mbit/s, 2.5e6",
    "LINK, 110 MB/s, 110e6",
  })
  void whatIsTypedIsReadInTheUnitOfTheEngine(Measure measure, String text, double value) {
    assertThat(measure.read(text)).hasValue(value);
  }

  @ParameterizedTest
  @CsvSource({"SIZE, 2", "SIZE, 2 days", "SIZE, 1..2 TB", "TIME, soon", "LINK, 20 Mbps"})
  void whatHasNoUnitOrTwoEndsIsNone(Measure measure, String text) {
    assertThat(measure.read(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "LINK, 20 Mbps, 20 Mbit/s",
    "LINK, 20Mb/s, 20 Mbit/s",
    "LINK, 2.5 MB, 2.5 MB/s",
    "TIME, ' 3 dais ', 3 days",
    "SIZE, 4 tb, 4 TB",
  })
  void theUnitThatWasMeantIsOffered(Measure measure, String text, String meant) {
    assertThat(measure.meant(text)).hasValue(meant);
  }

  @ParameterizedTest
  @CsvSource({"LINK, 20", "LINK, 20 furlongs", "LINK, 1..2 Mbps", "LINK, quick"})
  void nothingIsOfferedWhereNothingIsNear(Measure measure, String text) {
    assertThat(measure.meant(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"20 Mbit/s, 2.5e6", "' 1 Gbit/s', 125e6", "1e-9 B/s, 1e-9", "9e11 GB/s, 9e20"})
  void aRateOnTheCommandLine(String text, double bytesPerSecond) {
    assertThat(RateText.bytesPerSecond(text)).hasValue(bytesPerSecond);
  }

  @ParameterizedTest
  @CsvSource({"0 Mbit/s", "-1 MB/s", "1..2 MB/s", "20", "20 TB", "quick", "1e12 GB/s"})
  void noRate(String text) {
    assertThat(RateText.bytesPerSecond(text)).isEmpty();
  }

  /** A mean of 8,760 h over 1e-310 is beyond all numbers, so that never happens. */
  @Test
  void aRateMayBeTooSmallForItsMean() {
    assertThat(new Chance(1e-310, false).rate().perHour()).isZero();
    assertThat(new Chance(1e-310, true).rate().perHour()).isZero();
    assertThat(new Chance(1e-300, false).rate().perHour()).isEqualTo(1e-300 / 8_760);
  }
}
