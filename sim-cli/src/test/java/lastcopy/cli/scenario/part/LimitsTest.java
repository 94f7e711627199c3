package lastcopy.cli.scenario.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.scenario.Texts;
import lastcopy.cli.scenario.yaml.Ranges;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is absurdly much to compute is told with its place, and what would do is accepted. */
class LimitsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "every: 7 days | every: 1 s | 5:11 | 157,680,000 shoots | 200,000",
        "every: 7 days | per_year: 1e8 | 5:11 | 500,000,000 shoots | 200,000",
        "size: 96 GB | size: 1e8 TB | 5:3 | footage of more than 1,000 PB | less of it",
        "every: 1 day | every: 0.001 s | 16:57 | runs in 5 years | 15.8 s",
        "{fire: {rate: 1 %/year | {fire: {rate: 1e6 per day | 7:35 | mishaps | 20,000 per year",
        "tower: {rate: 1 %/year | tower: {rate: 1e6 per day | 9:17 | mishaps | 20,000 per year",
        "fails: 2 %/year | fails: {mean: 1 min} | 11:29 | failures in 5 years | 0.438 h",
        "place: studio | read_errors: 1e-5 | 15:27 | unreadable bits | 1e-15",
        "place: studio | noticed: {checked_every: 0.001 s} | 15:23 | looks in 5 years | 15.8 s",
      })
  void tooMuch(String old, String by, String place, String found, String accepted) {
    String text = Texts.VALID.replace(old, by).replace("1 x desk}", "1 x desk, box: tower}");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:" + place + ": found ")
        .contains(found)
        .contains("; accepted: ")
        .contains(accepted);
  }

  @Test
  void whatHappensAtTheDeskTooOften() {
    String desk =
        "desk:\n  deletion: {rate: 1e6 per day, size: 1 shoots}\n  malware: {rate: 1e6 per day}\n";
    assertThat(Texts.problems(Texts.VALID.replace("places:", desk + "places:")))
        .hasSize(2)
        .anyMatch(problem -> problem.contains(" deletions"))
        .anyMatch(problem -> problem.contains(" attacks"));
  }

  @Test
  void drivesThatAreReplacedAtOnce() {
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, replace_at: 1 min")))
        .singleElement()
        .asString()
        .contains(" replacements in 5 years");
  }

  @Test
  void copiesCountEachTurn() {
    String rotation = "rotation: {drives: 400, every: 9 h}, feed: {from: main, visits: 1 h}";
    assertThat(Texts.problems(Texts.withFar("drives: 1 x desk, " + rotation)))
        .containsExactly("demo.yaml:15:7: found 401 copies; accepted: at most 100.");
  }

  @Test
  void linksThatOpenAndCloseForAges() {
    String far = "drives: 1 x desk, feed: {from: main, every: 1 day, between: [0 h, 6 h]}";
    assertThat(Texts.problems(Texts.withFar(far).replace("years: 5", "years: 999")))
        .singleElement()
        .asString()
        .contains("found 1,458,540 copies times openings and closings of links; accepted: at most");
  }

  @Test
  void visits() {
    String rotation = "rotation: {drives: 2, every: 6 min}, feed: {from: main, visits: 1 min}";
    assertThat(Texts.problems(Texts.withFar("drives: 1 x desk, " + rotation)))
        .singleElement()
        .asString()
        .contains("found 438,000 visits in 5 years; accepted: at most 100,000");
  }

  @Test
  void shelvesGrow() {
    String text =
        Texts.withDrive("size: 1 MB, fails: 2 %/year")
            .replace("studio, drives: 1 x desk", "studio, drives: 2 x desk, arrangement: shelf");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:15:7: found 24,960,001 drives in a layout")
        .endsWith("accepted: at most 5,000.");
  }

  @Test
  void moreRangesThanCanBeDrawn() {
    assertThat(Texts.problems(withRanges(Ranges.MOST))).isEmpty();
    assertThat(Texts.problems(withRanges(Ranges.MOST + 2)))
        .singleElement()
        .asString()
        .contains("found 1,001 ranges; accepted: at most 999 in a file")
        .startsWith("demo.yaml:" + (2 + Ranges.MOST + drives()) + ":");
  }

  private static int drives() {
    return (int) Texts.VALID.substring(0, Texts.VALID.indexOf("drives:")).lines().count();
  }

  private static String withRanges(int many) {
    StringBuilder models = new StringBuilder("drives:\n");
    for (int i = 0; i < many; i++) {
      models.append("  d").append(i).append(": {size: 8 TB, fails: 1..4 %/year}\n");
    }
    return Texts.VALID.replaceFirst("(?m)^drives:\n", models.toString());
  }

  @Test
  void layouts() {
    StringBuilder text = new StringBuilder(Texts.VALID);
    for (int i = 0; i < Limits.MOST_LAYOUTS; i++) {
      text.append("  l" + i + ": {copies: {main: {drives: 1 x desk}}}\n");
    }
    assertThat(Texts.problems(text.toString()))
        .containsExactly("demo.yaml:13:3: found 201 layouts; accepted: at most 200.");
  }

  @ParameterizedTest
  @CsvSource({"1e-300 s", "1e300 years", "1e-9 s"})
  void timesOfNoMeaning(String time) {
    String text = Texts.VALID.replace("every: 1 day", "every: 1 day, visits: " + time);
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:16:")
        .doesNotContain("fit together");
  }

  @Test
  void whatIsManyButNotAbsurd() {
    String text =
        Texts.VALID
            .replace("every: 7 days", "every: 1 h")
            .replace("every: 1 day", "every: 1 min")
            .replace("2 %/year", "{mean: 100 h}");
    assertThat(Texts.problems(text)).isEmpty();
  }

  @Test
  void otherYearsAreHeldAgainstTheSame() {
    var hourly = Texts.studio(Texts.VALID.replace("every: 7 days", "every: 1 h"));
    assertThat(ScenarioReader.excess(hourly.withYears(20))).isEmpty();
    assertThat(ScenarioReader.excess(hourly.withYears(1_000)))
        .hasValueSatisfying(
            words ->
                assertThat(words)
                    .startsWith("footage.shoots: 8,760,000 shoots; accepted: at most 200,000"));
  }

  @Test
  void rotationOfTheFirstCopy() {
    String text = Texts.withMain("drives: 2 x desk, rotation: {drives: 2, every: 7 days}");
    assertThat(Texts.problems(text))
        .anyMatch(problem -> problem.contains("'rotation' of the first copy"));
  }

  @Test
  void aChanceThatRoundsToOne() {
    for (String chance : List.of("1e6 per day", "99.99999999999999999 %/year")) {
      String text = Texts.withDrive("size: 8 TB, fails: {by_age: [" + chance + "]}");
      assertThat(Texts.problems(text))
          .singleElement()
          .asString()
          .startsWith("demo.yaml:11:39: found '" + chance + "'; accepted: a chance");
    }
  }
}
