package lastcopy.cli.ask;

import java.util.ArrayList;
import java.util.List;

/** Lines of a file: a key, its value, and what is to be said of it at the end. */
final class Lines {

  /** Where remarks begin, if there is room. */
  private static final int REMARKS = 35;

  private final Answers answers;
  private final int indent;
  private final List<String> lines = new ArrayList<>();

  /**
   * No line yet.
   *
   * @param indent of the lines in the file, for remarks that stand below each other
   */
  Lines(Answers answers, int indent) {
    this.answers = answers;
    this.indent = indent;
  }

  /** A value that follows from others. */
  Lines plain(String key, String value) {
    lines.add(key + ": " + value);
    return this;
  }

  /** A value that is an answer. */
  Lines answer(String key, String value, String question) {
    return remark(key, value, answers.isOwn(question) ? "(your answer)" : "(as suggested)");
  }

  /** A value that nobody knows. */
  Lines assumed(String key, String value) {
    return remark(key, value, "(assumption)");
  }

  /** The same with what there is to know about it. */
  Lines assumed(String key, String value, String about) {
    return remark(key, value, about + " (assumption)");
  }

  /** A value and a remark. */
  Lines remark(String key, String value, String remark) {
    String text = key + ": " + value;
    int gap = Math.max(1, REMARKS - indent - text.length());
    lines.add(text + " ".repeat(gap) + "# " + remark);
    return this;
  }

  List<String> all() {
    return List.copyOf(lines);
  }
}
