package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with choices is told once, where it stands; numbers of layouts by hand. */
class ChoiceMistakesTest {

  private static String times(int from, int count) {
    return IntStream.range(from, from + count)
        .mapToObj(i -> i + " h")
        .collect(Collectors.joining(", ", "{one_of: [", "]}"));
  }

  /** 20 x 10 x 10 x 10 layouts of the first, in the place of one. */
  private static String twentyThousand(String wait) {
    return Texts.VALID
        .replace("main: {", "main: {noticed: " + times(1, 20) + ", wait: " + wait + ", ")
        .replace("far: {", "far: {noticed: " + times(1, 10) + ", wait: " + times(1, 10) + ", ");
  }

  @Test
  void twentyThousandLayoutsAreNotTooMany() {
    String text = twentyThousand(times(1, 10));
    assertThat(Texts.scenario(text).open().layouts()).isEqualTo(20_000);
    String one = text + "  alone: {copies: {main: {drives: 1 x desk}}}\n";
    assertThat(Texts.problems(one))
        .singleElement()
        .asString()
        .startsWith(
            "demo.yaml:15:23: found 20,001 layouts to choose among; accepted: at most 20,000:")
        .contains("such as this one among 20,");
  }

  /** Where there are too many, none of them is looked at. */
  @Test
  void ofTooManyLayoutsOnlyTheirNumberIsTold() {
    String text =
        twentyThousand(times(1, 10).replace("10 h", "10 hourz"))
            + "  alone: {copies: {main: {drives: 1 x desk}}}\n";
    assertThat(Texts.problems(text)).singleElement().asString().contains("20,001 layouts");
  }

  /** A copy that may be left out is there where its own choices are looked at. */
  @Test
  void anAlternativeOfACopyThatMayBeLeftOut() {
    String far = "{optional: true, drives: 1 x desk, feed: {from: main, every: {one_of: [1 day, ";
    String text =
        Texts.VALID.replace("{drives: 1 x desk, feed: {from: main, every: 1 day}}", far + "2]}}}");
    assertThat(Texts.problems(text))
        .containsExactly(
            "demo.yaml:16:90: found '2', a number without a unit; accepted: a time such as 6 h or 2"
                + " weeks (s, min, h, days, weeks, months, years).");
  }

  /** One drive is wrong for a mirror wherever it is said; the alternative is what is wrong. */
  @Test
  void anAlternativeThatFitsNothingElse() {
    String main = "arrangement: mirror, drives: {one_of: [2 x desk, 1 x desk]}";
    assertThat(Texts.problems(Texts.withMain(main)))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:15:63: found an alternative that never fits: ")
        .contains("mirror");
    String either =
        "arrangement: {one_of: [mirror, single]}, drives: {one_of: [2 x desk, 1 x desk]}";
    assertThat(Texts.problems(Texts.withMain(either))).isEmpty();
  }

  @Test
  void anAlternativeThatIsTooMuchToCompute() {
    String text = Texts.VALID.replace("every: 1 day", "every: {one_of: [1 day, 0.001 s]}");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:16:74: found an alternative that never fits: ")
        .contains(" runs in 5 years");
    assertThat(Texts.problems(text.replace("0.001 s", "1 h"))).isEmpty();
  }

  @Test
  void aChoiceMayStandInAList() {
    String text =
        Texts.withMain("arrangement: shelf, drives: [1 x desk, {one_of: [1 x desk, 2 x desk]}]");
    assertThat(Texts.problems(text)).isEmpty();
    assertThat(Texts.scenario(text).open().layouts()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "noticed: {one_of: [{checked_every: 1 day}, {checked_every:  1  day}]} | true",
        "noticed: {one_of: [{checked_every: 1 day}, {checked_every: 2 days}]} | false",
        "noticed: {one_of: [{checked_every: 1 day}, {mean: 1 day}]} | false",
        "noticed: {one_of: [{mean: 1 day}, 1 day]} | false",
        "wait: {one_of: [{uniform: [1 day, 2 days]}, {uniform: [1 day, 2 days]}]} | true",
        "wait: {one_of: [{uniform: [1 day, 2 days]}, {uniform: [1 day, 3 days]}]} | false",
        "wait: {one_of: [{uniform: [1 day, 3 days]}, {uniform: [2 days, 3 days]}]} | false",
      })
  void anEntryASecondTime(String keys, boolean twice) {
    List<String> told = Texts.problems(Texts.withMain("drives: 1 x desk, " + keys));
    assertThat(told.isEmpty()).as(told.toString()).isEqualTo(!twice);
    assertThat(told)
        .allMatch(
            problem -> problem.contains("an entry of 'one_of' a second time; accepted: each"));
  }
}
