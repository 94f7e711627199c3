package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists that are told whole on request, and answers that name no more than three; by hand. */
class InspectLongListsTest {

  /** 120 shoots of 1 GB a year: 1.12 TB at the end of the only year. */
  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Quay Films
      years: 1
      footage: {on_hand: 1 TB, shoots: {every: 73 h, size: 1 GB}}
      drives: {desk: {size: 2 TB, fails: 2 %/year}, small: {size: 1.2 TB, fails: 2 %/year}}
      layouts:
        many:
          copies:
            main: {place: studio, drives: 1 x desk}
      """;

  private static String far(String name, String on) {
    return "      " + name + ": {" + on + ", feed: {from: main, every: 1 day}}\n";
  }

  private static String many(int more, String on) {
    StringBuilder text = new StringBuilder(STUDIO);
    for (int i = 1; i <= more; i++) {
      text.append(far("far-" + i, on));
    }
    return text.toString();
  }

  /** 2 TB less 1.12 TB; four copies stand beside each other, the fifth below, a service nowhere. */
  @Test
  void whatIsFreeIsToldOfEachCopy() throws Exception {
    String service = far("cloud", "service: {loses: 1 %/year}");
    String five = InspectedPage.of(many(4, "drives: 1 x desk") + service, true);
    assertThat(five)
        .contains(
            """
              year  on main      on far-1     on far-2     on far-3
              0     1 TB free    1 TB free    1 TB free    1 TB free
              1     880 GB free  880 GB free  880 GB free  880 GB free
              year  on far-4
              0     1 TB free
              1     880 GB free
            """)
        .doesNotContain("on cloud");
    String four = InspectedPage.of(many(3, "drives: 1 x desk"), true);
    assertThat(four).contains("on far-3\n").containsOnlyOnce("\n  year  on ");
  }

  /** 1.12 TB at most 80 % full need 1.4 TB, which drives of 1.2 TB are not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | need 1.4 TB. Every copy has that.",
        "1 | More room is due now: many.far-1.",
        "3 | More room is due, first now: many.far-1, many.far-2, many.far-3.",
        "4 | More room is due, first now: many.far-1, many.far-2, many.far-3 and 1 more.",
        "6 | More room is due, first now: many.far-1, many.far-2, many.far-3 and 3 more.",
      })
  void noMoreThanThreeAreNamed(int small, String sentence) throws Exception {
    assertThat(InspectedPage.of(many(small, "drives: 1 x small"), false).replaceAll("\\s+", " "))
        .contains(sentence);
  }
}
