package lastcopy.cli.fit;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.scenario.yaml.Problem;

/** What is wrong with a file of records, with its place. */
final class Mistakes {

  /** More than these are counted, but not kept. */
  private static final int MOST_KEPT = 50;

  private final String file;
  private final String text;
  private final List<Problem> kept = new ArrayList<>();
  private int count;

  /** Where the line at hand begins in the text. */
  private int start;

  Mistakes(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /** The line at hand begins here. */
  void at(long position) {
    start = (int) Math.min(position, text.length());
  }

  /** Something wrong with a cell of the header, which is the line at hand. */
  void header(int cell, String found, String accepted, String suggestion) {
    note(cell, found, accepted, suggestion);
  }

  /** Something wrong with a cell of the line at hand. */
  void note(int cell, String found, String accepted, String suggestion) {
    count++;
    if (kept.size() < MOST_KEPT) {
      int at = cellStart(cell);
      int lineStart = text.lastIndexOf('\n', at - 1) + 1;
      int line = 1 + (int) text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
      int column = text.codePointCount(lineStart, at) + 1;
      kept.add(new Problem(file, line, column, found, accepted, suggestion));
    }
  }

  /** Whether nothing is wrong so far. */
  boolean none() {
    return count == 0;
  }

  /** The mistakes that are shown. */
  List<Problem> shown() {
    return List.copyOf(kept);
  }

  /** How many more there are. */
  int more() {
    return count - kept.size();
  }

  /** Commas within quotes part no cells. */
  private int cellStart(int cell) {
    int at = start;
    boolean quoted = false;
    for (int left = cell; at < text.length() && left > 0; at++) {
      char c = text.charAt(at);
      quoted ^= c == '"';
      if (!quoted && (c == '\n' || c == '\r')) {
        return at;
      }
      left -= !quoted && c == ',' ? 1 : 0;
    }
    return at;
  }
}
