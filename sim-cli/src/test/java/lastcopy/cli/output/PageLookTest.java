package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How pages look, and what is written on them, to the last character. */
class PageLookTest {

  private static final PageLook COLOURED = new PageLook(80, true, false);
  private static final PageLook ASCII = new PageLook(80, false, true);

  /** Ten words of nine letters and the spaces between are 99, six are 59. */
  @ParameterizedTest
  @CsvSource({"60, 6", "80, 8", "98, 9", "99, 10", "109, 10", "200, 10"})
  void linesAreNoLongerThanIsReadWithEase(int width, int words) {
    PageLook look = new PageLook(width, false, false);
    String line = "lettering ".repeat(words).strip() + "\n";
    assertThat(look.paragraph("lettering ".repeat(3 * words))).isEqualTo(line.repeat(3));
    assertThat(look.prose()).isEqualTo(Math.min(width, 100));
  }

  @ParameterizedTest
  @ValueSource(ints = {59, 201})
  void noPageIsNarrowerOrWider(int width) {
    assertThatThrownBy(() -> new PageLook(width, false, false))
        .hasMessage("columns must be from 60 to 200: " + width);
  }

  /** Each line by itself, bold is 1 and yellow 33 (ECMA-48); an empty one needs none. */
  @Test
  void headingsAndWarningsStandOutWhereThereIsColour() {
    assertThat(COLOURED.heading("a b\n\nc\n"))
        .isEqualTo("\u001b[1ma b\u001b[0m\n\n\u001b[1mc\u001b[0m\n");
    assertThat(COLOURED.warning("a\nb\n"))
        .isEqualTo("\u001b[33ma\u001b[0m\n\u001b[33mb\u001b[0m\n");
    assertThat(PageLook.PLAIN.heading("a b\n\nc\n")).isEqualTo("a b\n\nc\n");
    assertThat(PageLook.PLAIN.warning("a\nb\n")).isEqualTo("a\nb\n");
  }

  /** A letter loses its marks, a sign becomes one that is like it, all else a question mark. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plain ~ | plain ~",
        "Caf\u00e9 \u00c5ngstr\u00f6m | Cafe Angstrom",
        "\u00d8st, Stra\u00dfe, \u0141\u00f3d\u017a | Ost, Strase, Lodz",
        "\u201cA\u201d \u2013 \u2018B\u2019 | \"A\" - 'B'",
        "2 \u00d7 8 TB \u00b7 EUR\u00a05 | 2 x 8 TB . EUR 5",
        "\u5199\u771f \ud83d\ude00! | ?? ?!",
      })
  void inAsciiEachCharacterIsOne(String words, String ascii) {
    assertThat(ASCII.written(words)).isEqualTo(ascii);
    assertThat(PageLook.PLAIN.written(words)).isEqualTo(words);
  }

  /** ASCII ends at 127; 128 has no letter to fall back on. */
  @Test
  void asciiEndsAt127() {
    assertThat(ASCII.written("\u007f\u0080")).isEqualTo("\u007f?");
  }

  @Test
  void aPageHoldsWhatWasWrittenInItsOrderUntilItIsTaken() {
    Page page = new Page(COLOURED);
    page.heading("Studio");
    page.gap();
    page.paragraph("Words.");
    page.lines("- ", "  ", "One.");
    page.heading("> ", "  ", "Two");
    page.warning("! ", "  ", "Three");
    page.add("as it is\n");
    assertThat(page.taken())
        .isEqualTo(
            """
            \u001b[1mStudio\u001b[0m

            Words.
            - One.
            \u001b[1m> Two\u001b[0m
            \u001b[33m! Three\u001b[0m
            as it is
            """);
    assertThat(page.taken()).as("once only").isEmpty();
    assertThat(page.look()).isSameAs(COLOURED);
    Page ascii = new Page(ASCII);
    ascii.add("Caf\u00e9");
    assertThat(ascii.taken()).isEqualTo("Cafe");
  }
}
