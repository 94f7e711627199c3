package lastcopy.cli.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts of the page that are there for some studios and not for others; figures by hand. */
class InspectPageTest {

  /** 120 shoots of 1 GB a year. */
  private static final String STUDIO =
      """
      lastcopy: 1
      studio: Quay Films
      years: 1
      footage: {on_hand: 1 TB, shoots: {every: 73 h, size: 1 GB}}
      drives: {desk: {size: 2 TB, fails: FAILS, speed: 80 MB/s}, other: {size: 3 TB, fails: 2 %/year}}
      layouts:
      """;

  private static String lone(String id, String main) {
    return "  "
        + id
        + ":\n    title: The "
        + id
        + "\n    copies:\n      main: {place: studio, "
        + main
        + "}\n";
  }

  private static String fed(String name, String link) {
    return "      "
        + name
        + ": {drives: 1 x desk, place: home, feed: {from: main, every: 1 day, "
        + link
        + "}}\n";
  }

  private static String page(String fails, String layouts) throws Exception {
    return InspectedPage.of(STUDIO.replace("FAILS", fails) + layouts, false);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void eachLayoutHasItsTitleAboveIt() throws Exception {
    String two = lone("one", "drives: 1 x desk") + lone("two", "drives: 1 x desk");
    assertThat(page("2 %/year", two))
        .startsWith("Quay Films: what is sure over 1 year, if nothing fails\n")
        .contains("\n\nThe one (one)\n  main\n", "\n\nThe two (two)\n  main\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | nothing gives it back: a has no other copy.",
        "2 | nothing gives it back: a, b have no other copy.",
        "4 | nothing gives it back: a, b, c and 1 more have no other copy.",
      })
  void whoHasNoOtherCopyIsNamed(int layouts, String sentence) throws Exception {
    StringBuilder all = new StringBuilder();
    for (String id : List.of("a", "b", "c", "d").subList(0, layouts)) {
      all.append(lone(id, "drives: 1 x desk"));
    }
    String page = flat(page("2 %/year", all.toString()));
    assertThat(page)
        .contains(sentence)
        .contains("all footage back: there is no other copy that could give it back")
        .doesNotContain("Links:");
  }

  /**
   * 1 GB each 73 h is 0.03 Mbit/s: 0.01 never catch up; a link that is open for 1 h a day may not.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "link: 20 Mbit/s | each is fast and open long enough",
        "link: 0.01 Mbit/s | not enough, this year or in the last one: a.far.",
        "'link: 0.5 Mbit/s, between: [1 h, 2 h]' | not enough, this year or in the last one: a.far.",
        "'link: 9 Mbit/s, between: [1 h, 2 h]' | each is fast and open long enough",
      })
  void linksThatAreTooSlowAreNamed(String link, String sentence) throws Exception {
    String page = flat(page("2 %/year", lone("a", "drives: 1 x desk") + fed("far", link)));
    assertThat(page)
        .contains("Links: " + sentence)
        .contains("far to main")
        .doesNotContain("no other copy");
  }

  /** 1 GB at 80 MB/s are 0.21 min; nothing is offloaded onto a service. */
  @Test
  void anOffloadIsToldOfDrivesOnly() throws Exception {
    assertThat(flat(page("2 %/year", lone("a", "drives: 1 x desk"))))
        .contains("offload 0.21 min for 1 GB at 80 MB/s (drive desk)");
    assertThat(flat(page("2 %/year", lone("a", "service: {loses: 1 %/year}"))))
        .doesNotContain("offload");
  }

  @Test
  void whatIsNotKnownIsTold() throws Exception {
    String layout = lone("a", "drives: 1 x desk");
    assertThat(flat(page("1..4 %/year", layout)))
        .contains("Not known, each with 9 chances in 10 of lying between its ends")
        .contains("take its middle");
    assertThat(page("2 %/year", layout)).doesNotContain("Not known");
  }

  /** The fill limit is told above the drives; a drive that is too small for the whole is a dash. */
  @Test
  void drivesAreCountedUnderTheFillLimit() throws Exception {
    assertThat(flat(page("2 %/year", lone("a", "drives: 1 x desk"))))
        .contains("Drives that hold it so (a fill limit, and buying for 2 to 3 years ahead")
        .doesNotContain("no number will do");
    assertThat(flat(page("2 %/year", lone("a", "service: {loses: 1 %/year}"))))
        .doesNotContain("Drives that hold it so");
  }
}
