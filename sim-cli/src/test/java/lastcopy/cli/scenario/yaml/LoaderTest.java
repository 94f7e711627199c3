package lastcopy.cli.scenario.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import lastcopy.cli.scenario.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that is no YAML, or more of it than a scenario needs. */
class LoaderTest {

  @Test
  void anEmptyFile() {
    String problem =
        "demo.yaml:1:1: found an empty file; accepted: a scenario that begins with 'lastcopy: 1'.";
    assertThat(Texts.problems("")).containsExactly(problem);
    assertThat(Texts.problems("# nothing\n\n")).containsExactly(problem);
    assertThat(Texts.problems("null")).containsExactly(problem);
  }

  @Test
  void textThatIsNoMapping() {
    assertThat(Texts.problems("just words"))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:1:1: found 'just words' for a scenario; accepted: keys with values");
  }

  @Test
  void textThatIsNoYaml() {
    assertThat(Texts.problems("lastcopy: 1\nstudio: [a\n"))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:3:1: found ");
    assertThat(Texts.problems("a: \u0000")).hasSize(1);
  }

  @Test
  void tabs() {
    assertThat(Texts.problems("lastcopy: 1\nfootage:\n\ton_hand: 1 TB\n"))
        .containsExactly("demo.yaml:3:1: found a tab used to indent; accepted: spaces.");
  }

  @Test
  void aKeyGivenTwice() {
    assertThat(Texts.problems(Texts.VALID + "years: 6\n"))
        .containsExactly(
            "demo.yaml:17:1: found the key 'years' a second time; accepted: each key once.");
    assertThat(Texts.problems(Texts.withMain("drives: 1 x desk, wait: 1 h, wait: 2 h")))
        .singleElement()
        .asString()
        .contains("the key 'wait' a second time");
  }

  @Test
  void aSecondDocument() {
    assertThat(Texts.problems(Texts.VALID + "---\nyears: 6\n"))
        .singleElement()
        .asString()
        .isEqualTo("demo.yaml:17:1: found a second document; accepted: one scenario in a file.");
  }

  @Test
  void depth() {
    assertThat(Texts.problems("a: " + "[".repeat(100_000)))
        .containsExactly(
            "demo.yaml:1:33: found more than 30 levels of nesting; accepted: fewer levels.");
  }

  @Test
  void size() {
    assertThat(Texts.problems("# " + "x".repeat(1_000_000)))
        .containsExactly("demo.yaml:1:1: found 1000002 characters; accepted: at most 1000000.");
  }

  @Test
  void aliasesThatMultiply() {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 9; i++) {
      String alias = "*a" + (i - 1);
      text.append("a%d: &a%d [%s]\n".formatted(i, i, (alias + ", ").repeat(9) + alias));
    }
    assertThat(Texts.problems(text.toString())).singleElement().asString().contains("aliases");
    String five = text.substring(0, text.indexOf("a6:"));
    assertThat(Texts.problems(five)).anyMatch(p -> p.contains("found too many aliases"));
  }

  @Test
  void anAliasOfItself() {
    assertThat(Texts.problems("a: &a {b: *a}\n"))
        .anyMatch(p -> p.contains("found an alias of what it stands in"));
  }

  @Test
  void anAliasMayBeUsed() {
    String text =
        Texts.VALID
            .replace("every: 7 days", "every: &week 7 days")
            .replace("every: 1 day}", "every: *week}");
    assertThat(Texts.problems(text)).isEmpty();
  }

  @Test
  void tagsAndListsAsKeys() {
    assertThat(Texts.problems(Texts.VALID.replace("years: 5", "years: !five 5")))
        .containsExactly(
            "demo.yaml:3:8: found the tag '!five'; accepted: plain values without tags.");
    assertThat(Texts.problems("[a]: 1\n")).isNotEmpty();
  }

  @Test
  void standardTagsAreNoExceptionAndAreToldOnce() {
    String text = Texts.VALID.replace("years: 5", "years: !!binary 5");
    assertThat(Texts.problems(text))
        .containsExactly(
            "demo.yaml:3:8: found the tag '!!binary'; accepted: plain values without tags.");
    assertThat(Texts.problems(Texts.VALID.replace("copies:", "copies: !!set")))
        .anyMatch(problem -> problem.contains("found the tag '!!set'"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\UFFFFFFFF", "\\U00110000", "\\q", "\\x1", "\u0007"})
  void aWrongEscapeHasAPlaceAndNoWordOfTheParser(String escape) {
    String text = Texts.VALID.replace("Reed Bank Films", "\"Reed " + escape + " Films\"");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .matches("demo.yaml:2:\\d+: found [^;]*; accepted: .*")
        .doesNotContainPattern("(?i)exception|org\\.|expected|codepoint");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\x1B[2J", "\\u202E", "\\u2028", "\\uFEFF", "\\x00", "a\\nb"})
  void whatCannotBeSeenIsNoPartOfAName(String escape) {
    String text = Texts.VALID.replace("pair:", "\"pair" + escape + "two\":");
    assertThat(Texts.problems(text))
        .singleElement()
        .asString()
        .startsWith("demo.yaml:13:3: found 'pair")
        .contains("cannot be seen")
        .matches("[\\x20-\\x7E]*");
  }

  /** Seed 20107 of the fuzzer: it was written out where it stands, not where it was meant. */
  @Test
  void whatCannotBeSeenIsNotSuggested() {
    String text = Texts.VALID.replace("  desk: {", "  \"de\\u2028sk\": {");
    assertThat(Texts.problems(text))
        .hasSizeGreaterThan(1)
        .allSatisfy(problem -> assertThat(problem).matches("[\\x20-\\x7E]*"))
        .anySatisfy(problem -> assertThat(problem).contains("Did you mean 'de\\u2028sk'?"));
  }

  @Test
  void aTextThatNobodyReads() {
    String text = Texts.VALID.replace("Reed Bank Films", "5" + " ".repeat(900_000) + "/x");
    assertThat(Texts.problems(text))
        .containsExactly(
            "demo.yaml:2:9: found a text of 900003 characters; accepted: at most 1000.");
  }

  @Test
  void problemsByTheThousand() {
    StringBuilder text = new StringBuilder(Texts.VALID);
    for (int i = 0; i < 20_000; i++) {
      text.append("unknown").append(i).append(": 1\n");
    }
    long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    assertThat(Texts.problems(text.toString())).hasSize(20_000);
    // It took 15 s when each was compared with all problems before it.
    assertThat(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began)
        .isLessThan(5_000_000_000L);
  }
}
