package lastcopy.cli.scenario.yaml;

import java.util.Locale;

/**
 * Text that is shown to a person: what moves a cursor, ends a line, turns the direction of reading
 * or cannot be seen is written out as its number, so that nobody is shown what is not there.
 */
public final class Printable {

  /** First and last of each run; from no table of the runtime, so that every version agrees. */
  private static final int[][] HIDDEN = {
    {0x0000, 0x001F}, // controls
    {0x007F, 0x009F}, // more of them
    {0x061C, 0x061C}, // direction of reading
    {0x180E, 0x180E}, // of no width
    {0x200B, 0x200B}, // of no width
    {0x200E, 0x200F}, // direction of reading
    {0x2028, 0x202E}, // line and paragraph ends, direction of reading
    {0x2060, 0x206F}, // invisible operators, direction of reading
    {0xD800, 0xDFFF}, // halves of characters
    {0xFDD0, 0xFDEF}, // no characters
    {0xFEFF, 0xFEFF}, // byte order
    {0xFFF9, 0xFFFB}, // notes between lines
    {0xE0000, 0xE0FFF}, // tags
  };

  private Printable() {}

  /** The text with each such character as an escape of YAML, such as {@code \x1B}. */
  public static String of(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> shown.append(isHidden(c) ? escape(c) : Character.toString(c)));
    return shown.toString();
  }

  /** Whether a text is shown as it is. */
  public static boolean isPlain(String text) {
    return text.codePoints().noneMatch(Printable::isHidden);
  }

  private static String escape(int c) {
    String form = c < 0x100 ? "\\x%02X" : c < 0x10000 ? "\\u%04X" : "\\U%08X";
    return String.format(Locale.ROOT, form, c);
  }

  private static boolean isHidden(int c) {
    for (int[] run : HIDDEN) {
      if (c >= run[0] && c <= run[1]) {
        return true;
      }
    }
    return (c & 0xFFFE) == 0xFFFE; // the last two of each plane are no characters
  }
}
