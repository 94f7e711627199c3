package lastcopy.cli.inspect;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.output.Wrap;
import lastcopy.scenario.Units;
import lastcopy.words.ByteUnit;
import lastcopy.words.YearWords;

/** The lines of a page of {@code inspect}, and how it tells amounts, rates and times. */
final class InspectLines {

  private static final String NEXT = " ".repeat(18);
  private static final int INDENT = 4;

  /** Letters of a column of a table; what is longer is cut. */
  private static final int WIDEST = 24;

  /** Letters of the last column, at the least. */
  private static final int LAST = 14;

  private static final String BETWEEN = "  ";

  private static final double MINUTES_PER_HOUR = 60;

  /** From here on a time is told in days. */
  private static final double LONG_HOURS = 72;

  private final Page page;

  InspectLines(PageLook look) {
    page = new Page(look);
  }

  /** Whether a column of so many letters is whole beside others of so many columns. */
  boolean fits(int letters, int others) {
    return letters <= Math.min(WIDEST, page.look().prose() - others);
  }

  /** An empty line. */
  void gap() {
    page.gap();
  }

  /** A paragraph, its first line and the others begun as given. */
  void wrap(String first, String rest, String value) {
    page.lines(first, rest, value);
  }

  /** A paragraph that stands out. */
  void heading(String rest, String value) {
    page.heading("", rest, value);
  }

  /** A paragraph that warns. */
  void warning(String value) {
    page.warning("  ! ", "    ", value);
  }

  /** A paragraph with a name beside it. */
  void entry(String name, String value) {
    wrap(" ".repeat(INDENT) + Wrap.column(name, NEXT.length() - INDENT), NEXT, value);
  }

  /**
   * Rows whose columns are as wide as what stands in them, but for what would take the room of the
   * last, which wraps.
   *
   * @param rows the first is the head; all with as many cells
   */
  void table(int indent, List<List<String>> rows) {
    int columns = rows.get(0).size();
    int[] widths = widths(rows, indent);
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(" ".repeat(indent));
      for (int i = 0; i + 1 < columns; i++) {
        line.append(Wrap.column(row.get(i), widths[i])).append(BETWEEN);
      }
      wrap(line.toString(), " ".repeat(line.length()), row.get(columns - 1));
    }
  }

  /** The widest columns give way until the last one has room to wrap in. */
  private int[] widths(List<List<String>> rows, int indent) {
    int[] widths = new int[rows.get(0).size() - 1];
    for (int i = 0; i < widths.length; i++) {
      int column = i;
      widths[i] = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
      widths[i] = Math.min(widths[i], WIDEST);
    }
    int last = rows.stream().mapToInt(row -> row.get(widths.length).length()).max().orElse(0);
    int room =
        page.look().prose() - indent - widths.length * BETWEEN.length() - Math.min(last, LAST);
    while (IntStream.of(widths).sum() > room) {
      int widest = 0;
      for (int i = 1; i < widths.length; i++) {
        widest = widths[i] > widths[widest] ? i : widest;
      }
      widths[widest]--;
    }
    return widths;
  }

  static String bytes(double amount) {
    return amount == 0 ? "0 GB" : ByteUnit.format(amount);
  }

  static String megabytes(double bytesPerSecond) {
    return ByteUnit.digits(bytesPerSecond / Units.MB) + " MB/s";
  }

  /** Minutes, hours or days. */
  static String time(double hours) {
    if (Double.isInfinite(hours)) {
      return "never done";
    }
    if (hours > 0 && hours < 1) {
      double minutes = hours * MINUTES_PER_HOUR;
      return minutes < 0.01 ? "less than 1 min" : ByteUnit.digits(minutes) + " min";
    }
    return hours < LONG_HOURS
        ? ByteUnit.digits(hours) + " h"
        : ByteUnit.digits(hours / Units.HOURS_PER_DAY) + " days";
  }

  static String time(OptionalDouble hours) {
    return time(hours.orElse(Double.NaN));
  }

  /** Such as {@code 4.02 years} or {@code 1 year}. */
  static String years(double years) {
    return YearWords.of(years);
  }

  /** A fill limit, such as {@code 80 %}. */
  static String percent(double share) {
    double percent = 100 * share;
    return (percent == Math.rint(percent) ? Numbers.fixed(percent, 0) : ByteUnit.digits(percent))
        + " %";
  }

  /** The page. */
  String written() {
    return page.taken();
  }
}
