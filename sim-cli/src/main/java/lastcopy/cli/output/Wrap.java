package lastcopy.cli.output;

/** Wraps text at the width of a terminal. */
public final class Wrap {

  /** The width of a page in characters where nobody says otherwise. */
  public static final int WIDTH = 80;

  private Wrap() {}

  /** Wraps at {@link #WIDTH}. */
  public static String lines(String first, String rest, String text) {
    return lines(WIDTH, first, rest, text);
  }

  /**
   * Wraps at spaces; a word longer than a line is cut.
   *
   * @param width of a line in characters, more than what it begins with
   * @param first what the first line begins with
   * @param rest what the other lines begin with
   */
  public static String lines(int width, String first, String rest, String text) {
    StringBuilder done = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    boolean fresh = true;
    for (String word : text.strip().split("\\s+", -1)) {
      String left = word;
      if (!fresh && line.length() + 1 + left.length() > width) {
        done.append(line).append('\n');
        line = new StringBuilder(rest);
        fresh = true;
      }
      while (fresh && line.length() + left.length() > width) {
        int room = width - line.length();
        done.append(line).append(left, 0, room).append('\n');
        left = left.substring(room);
        line = new StringBuilder(rest);
      }
      line.append(fresh ? "" : " ").append(left);
      fresh = false;
    }
    return done.append(line).append('\n').toString();
  }

  /** Cut to a width, the cut marked by a tilde, and filled with spaces. */
  public static String column(String text, int width) {
    String cut = text.length() > width ? text.substring(0, width - 1) + "~" : text;
    return cut + " ".repeat(width - cut.length());
  }
}
