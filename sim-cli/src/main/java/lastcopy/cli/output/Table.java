package lastcopy.cli.output;

import java.util.Arrays;
import java.util.List;

/**
 * Rows of columns that are as wide as ever. On a page too narrow for them the first cell stands
 * above the others; on one too narrow for that too, each of the others stands on a line of its own
 * beside its head.
 */
public final class Table {

  private static final String INDENT = "  ";

  private final PageLook look;
  private final List<String> heads;
  private final int[] widths;
  private final int below;

  /**
   * A table.
   *
   * @param heads of its columns, each in as many lines as it has
   * @param widths of its columns; what is longer is cut, but in the last
   */
  public Table(PageLook look, List<String> heads, int... widths) {
    if (heads.size() != widths.length) {
      throw new IllegalArgumentException(heads + " over columns of " + Arrays.toString(widths));
    }
    this.look = look;
    this.heads = List.copyOf(heads);
    this.widths = widths.clone();
    below = Arrays.stream(widths).skip(1).sum();
  }

  /** The heads, of rows that are lists the first alone, and a rule. */
  public String head() {
    StringBuilder text = new StringBuilder();
    if (isList()) {
      text.append(heads.get(0).isBlank() ? "" : heads.get(0) + '\n');
    } else {
      long lines = heads.stream().mapToLong(head -> head.lines().count()).max().orElse(0);
      for (int i = 0; i < lines; i++) {
        int line = i;
        text.append(line(heads.stream().map(head -> part(head, line)).toArray(String[]::new)));
      }
    }
    return text.append("-".repeat(Math.min(look.width(), Wrap.WIDTH))).append('\n').toString();
  }

  private static String part(String head, int line) {
    return head.lines().skip(line).findFirst().orElse("");
  }

  /** A row. */
  public String row(String... cells) {
    return isList() ? list(cells) : line(cells);
  }

  private boolean isBroken() {
    return widths[0] + below > look.width();
  }

  private boolean isList() {
    return INDENT.length() + below > look.width();
  }

  private String line(String... cells) {
    StringBuilder line = new StringBuilder();
    String first = Wrap.column(cells[0], widths[0]);
    if (isBroken()) {
      String name = cells[0].stripTrailing();
      String begins = name.substring(0, name.length() - name.stripLeading().length());
      line.append(name.isEmpty() ? "" : Wrap.lines(look.width(), begins, begins + INDENT, name));
      first = INDENT + begins;
    }
    StringBuilder others = new StringBuilder(first);
    for (int i = 1; i < widths.length; i++) {
      boolean last = i + 1 == widths.length;
      others.append(last ? cells[i] : Wrap.column(cells[i], widths[i]));
    }
    return others.toString().isBlank() && isBroken()
        ? line.toString()
        : line.append(others.toString().stripTrailing()).append('\n').toString();
  }

  private String list(String... cells) {
    StringBuilder text = new StringBuilder();
    if (!cells[0].isBlank()) {
      text.append(Wrap.lines(look.width(), "", INDENT, cells[0]));
    }
    int longest = heads.stream().skip(1).mapToInt(head -> head.length()).max().orElse(0);
    for (int i = 1; i < widths.length; i++) {
      if (!cells[i].isBlank()) {
        String head = Wrap.column(INDENT + heads.get(i).replace('\n', ' '), longest + 4);
        text.append(Wrap.lines(look.width(), head, " ".repeat(head.length()), cells[i]));
      }
    }
    return text.toString();
  }
}
