package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in words: the digits that an interval supports, counted by hand. */
class NumbersTest {

  private static final OutOf THOUSAND = new OutOf(1_000);

  private static Estimate seen(double value, double low, double high) {
    return new Estimate(value, low, high, true);
  }

  private static Estimate never(double high) {
    return new Estimate(0, 0, high, false);
  }

  @Test
  void filesHaveEveryDigit() {
    assertThat(Numbers.exact(3)).isEqualTo("3");
    assertThat(Numbers.exact(-7)).isEqualTo("-7");
    assertThat(Numbers.exact(0.1)).isEqualTo("0.1");
    assertThat(Numbers.exact(999_999_999_999_999.0)).isEqualTo("999999999999999");
    assertThat(Numbers.exact(1e15)).as("as Java writes it").isEqualTo("1.0E15");
    assertThat(Numbers.exact(-1e15)).isEqualTo("-1.0E15");
    assertThat(Numbers.exact(Double.NaN)).isEmpty();
    assertThat(Numbers.exact(Double.POSITIVE_INFINITY)).isEmpty();
    assertThat(Numbers.exact(OptionalDouble.of(2.5))).isEqualTo("2.5");
    assertThat(Numbers.exact(OptionalDouble.empty())).isEmpty();
  }

  /** A half-width of 0.95 in the last digit told, or of a tenth or a hundredth of that. */
  @ParameterizedTest
  @CsvSource({"0, 0", "1.9, 0", "1.89, 1", "0.19, 1", "0.189, 2", "0.0001, 2"})
  void decimalsFollowTheWidth(double width, int decimals) {
    assertThat(Numbers.decimals(seen(0, 0, width), 1)).isEqualTo(decimals);
    assertThat(Numbers.decimals(seen(5, 5, 5 + width), 1)).isEqualTo(decimals);
    assertThat(Numbers.decimals(seen(5, 5, 5 + width / 100), 100)).isEqualTo(decimals);
  }

  @Test
  void studiosComeWithTheirRange() {
    assertThat(Numbers.studios(seen(.07, .068, .072), THOUSAND)).isEqualTo("70 (68 to 72)");
    assertThat(Numbers.studios(seen(.0071, .0069, .0073), THOUSAND)).isEqualTo("7.1 (6.9 to 7.3)");
    assertThat(Numbers.studios(Estimate.exact(.07), THOUSAND)).isEqualTo("70");
    assertThat(Numbers.studios(never(.003), THOUSAND)).isEqualTo("at most 3");
    assertThat(Numbers.studios(never(.0003), THOUSAND)).isEqualTo("fewer than 1");
    assertThat(Numbers.studios(seen(.0009, .0008, .001), THOUSAND)).isEqualTo("fewer than 1");
    assertThat(Numbers.studios(seen(.001, .0009, .0011), THOUSAND)).isEqualTo("1.0 (0.9 to 1.1)");
    assertThat(Numbers.studios(Estimate.exact(0), THOUSAND)).as("never").isEqualTo("0");
    assertThat(Numbers.studios(seen(.001, .0001, .05), THOUSAND)).isEqualTo("at most 50");
  }

  @Test
  void studiosAloneHaveNoRange() {
    assertThat(Numbers.studiosAlone(seen(.07, .068, .072), THOUSAND)).isEqualTo("70");
    assertThat(Numbers.studiosAlone(seen(.00714, .0070, .0072), THOUSAND)).isEqualTo("7.1");
    assertThat(Numbers.studiosAlone(never(.003), THOUSAND)).isEqualTo("at most 3");
    assertThat(Numbers.studiosAlone(never(.0003), THOUSAND)).isEqualTo("fewer than 1");
    assertThat(Numbers.belowOne(seen(.0009, .0008, .5), THOUSAND)).as("at most 500").isFalse();
    assertThat(Numbers.belowOne(Estimate.exact(0), THOUSAND)).isFalse();
    assertThat(Numbers.belowOne(seen(.001 * (1 - 1e-12), 0, .001), THOUSAND)).isFalse();
  }

  @Test
  void bytesAreInTheUnitOfTheirValue() {
    assertThat(Numbers.bytes(seen(1.1e11, 1.08e11, 1.12e11))).isEqualTo("110 GB (108 to 112)");
    assertThat(Numbers.bytes(seen(1e12, 9e11, 1.1e12))).isEqualTo("1 TB (0.9 to 1.1)");
    assertThat(Numbers.bytes(never(2e9))).isEqualTo("at most 2 GB");
    assertThat(Numbers.bytes(never(0))).isEqualTo("none");
    assertThat(Numbers.bytes(seen(0, 0, 5e6))).isEqualTo("at most 5 MB");
  }

  @Test
  void moneyHasItsCurrency() {
    Optional<String> euro = Optional.of("EUR");
    assertThat(Numbers.money(seen(1_035, 1_017, 1_053), euro))
        .isEqualTo("EUR 1,035 (1,017 to 1,053)");
    assertThat(Numbers.money(seen(1_035, 1_017, 1_053), Optional.empty()))
        .isEqualTo("1,035 (1,017 to 1,053)");
    assertThat(Numbers.money(seen(2.345, 2.3, 2.4), euro)).isEqualTo("EUR 2.35 (2.30 to 2.40)");
    assertThat(Numbers.money(never(200), euro)).isEqualTo("at most EUR 200");
  }

  @Test
  void figuresHaveOneDecimalAtMost() {
    assertThat(Numbers.figure(seen(3.14, 3.13, 3.16))).isEqualTo("3.1 (3.1 to 3.2)");
    assertThat(Numbers.figure(seen(3.14, 3.13, 3.14))).as("rounding closes it").isEqualTo("3.1");
    assertThat(Numbers.figure(seen(31, 28, 34))).isEqualTo("31 (28 to 34)");
    assertThat(Numbers.figure(never(2.5))).isEqualTo("at most 2.5");
  }

  @Test
  void aRangeAloneIsItsEnds() {
    assertThat(Numbers.range(seen(.07, .068, .072), 1_000)).contains("68 to 72");
    assertThat(Numbers.range(seen(2, 1.9, 2.1), 1)).contains("1.9 to 2.1");
    assertThat(Numbers.range(Estimate.exact(.07), 1_000)).isEmpty();
  }

  @Test
  void nothingIsNegativeZero() {
    assertThat(Numbers.fixed(-.04, 1)).isEqualTo("0.0");
    assertThat(Numbers.fixed(-.4, 0)).isEqualTo("0");
    assertThat(Numbers.fixed(-.06, 1)).isEqualTo("-0.1");
    assertThat(Numbers.fixed(12_345.678, 2)).isEqualTo("12,345.68");
  }

  /** Where the unit changes, and where it is one. */
  @ParameterizedTest
  @CsvSource({
    "0, under a minute",
    "0.00833, under a minute",
    "0.008333333333333333, under a minute",
    "0.00834, 1 minute",
    "0.9, 54 minutes",
    "1, 1 hour",
    "9.96, 10 hours",
    "9.94, 9.9 hours",
    "10.4, 10 hours",
    "47.9, 48 hours",
    "48, 2 days",
    "2159, 90 days",
    "2160, 3 months",
    "17519, 24 months",
    "17520, 2 years",
    "100000, 11 years",
  })
  void spans(double hours, String words) {
    assertThat(Spans.span(hours)).isEqualTo(words);
    assertThat(Spans.after(hours)).isEqualTo(hours == 0 ? "at once" : words);
  }

  @ParameterizedTest
  @CsvSource({"24, day", "168, 7 days", "12, 12 hours", "36, 36 hours", "60, 2.5 days"})
  void periods(double hours, String words) {
    assertThat(Spans.period(hours)).isEqualTo(words);
  }

  @Test
  void linesAreFilledAndNoLonger() {
    String words = "ten char! ".repeat(16); // 8 of them and a space between are 79
    assertThat(Wrap.lines("", "", words))
        .isEqualTo("ten char! ".repeat(8).strip() + "\n" + "ten char! ".repeat(8).strip() + "\n");
    String one = "x".repeat(76) + " abc";
    assertThat(Wrap.lines("", "", one)).as("exactly 80").isEqualTo(one + "\n");
    assertThat(Wrap.lines("", "  ", one + "d")).isEqualTo("x".repeat(76) + "\n  abcd\n");
    assertThat(Wrap.lines("! ", "  ", "a  b\n c")).isEqualTo("! a b c\n");
  }

  /** 80 fill the first line, and 78 the next after its two spaces. */
  @Test
  void aWordLongerThanALineIsCut() {
    String text = Wrap.lines("", "  ", "y".repeat(170) + " end");
    assertThat(text)
        .isEqualTo("y".repeat(80) + "\n  " + "y".repeat(78) + "\n  " + "y".repeat(12) + " end\n");
    assertThat(Wrap.lines("", "", "y".repeat(80))).isEqualTo("y".repeat(80) + "\n");
  }

  @Test
  void columnsAreCutOrFilled() {
    assertThat(Wrap.column("abc", 5)).isEqualTo("abc  ");
    assertThat(Wrap.column("abcde", 5)).isEqualTo("abcde");
    assertThat(Wrap.column("abcdef", 5)).isEqualTo("abcd~");
  }
}
