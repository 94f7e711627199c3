package lastcopy.cli.scenario.yaml;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is wrong with text that is no YAML, in words for whoever wrote it.
 *
 * @param found what stands there
 * @param accepted what would be accepted
 */
record YamlWords(String found, String accepted) {

  private static final YamlWords OTHER = new YamlWords("what is no YAML", "YAML 1.2");

  /** By a part of what the parser says; the first that fits. */
  private static final Map<String, YamlWords> BY_PART = new LinkedHashMap<>();

  static {
    word("TAB", "a tab used to indent", "spaces");
    word("\\t", "a tab used to indent", "spaces");
    word("another document", "a second document", "one scenario in a file");
    word("single document", "a second document", "one scenario in a file");
    word("mapping values are not", "a ':' in the middle of a value", "such a text in quotes");
    word("expected ':'", "a key without ':'", "key: value");
    word("are not allowed here", "a '-' or '?' that begins nothing", "key: value");
    word(
        "<block end>",
        "what does not line up with what stands above",
        "keys of one section below" + " each other");
    word("end of stream", "the end of the file within quotes or brackets", "the closing sign");
    word("document separator", "the end of the file within quotes", "the closing quote");
    word("expected ',' or", "no comma or closing bracket", "values with commas between them");
    word("undefined alias", "an alias of what is not defined above", "the value written out");
    word("undefined tag", "a tag", "plain values without tags");
    word("escape", "a wrong escape after '\\'", "the character itself");
    word("cannot start any token", "a sign that begins no value", "such a text in quotes");
    word("special characters", "characters that cannot be seen", "letters, digits and signs");
    word("aliases for non-scalar", "too many aliases", "aliases written out");
    word("node content", "no value", "a value");
  }

  private static void word(String part, String found, String accepted) {
    BY_PART.put(part, new YamlWords(found, accepted));
  }

  /** The words for what the parser says. */
  static YamlWords of(String problem) {
    return BY_PART.entrySet().stream()
        .filter(entry -> problem.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(OTHER);
  }
}
