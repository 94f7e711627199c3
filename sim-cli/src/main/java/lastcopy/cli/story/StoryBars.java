package lastcopy.cli.story;

import java.util.List;
import lastcopy.cli.output.Wrap;
import lastcopy.history.report.Snapshot;
import lastcopy.words.ByteUnit;

/** What each copy holds at a moment, as bars of plain characters that a pipe also carries. */
final class StoryBars {

  private static final int LENGTH = 10;
  private static final String BETWEEN = "   ";

  private StoryBars() {}

  /**
   * A cell for each copy, in as few lines as the width allows.
   *
   * @param most what a full bar is
   * @param indent what each line begins with
   * @param width of the page
   */
  static String of(List<String> names, Snapshot scene, double most, String indent, int width) {
    StringBuilder lines = new StringBuilder();
    StringBuilder line = new StringBuilder(indent);
    for (int c = 0; c < names.size(); c++) {
      String cell = cell(names.get(c), scene, c, most);
      boolean fresh = line.length() == indent.length();
      if (!fresh && line.length() + BETWEEN.length() + cell.length() > width) {
        lines.append(line).append('\n');
        line = new StringBuilder(indent);
        fresh = true;
      }
      if (fresh && line.length() + cell.length() > width) {
        lines.append(Wrap.lines(width, indent, indent + BETWEEN, cell));
      } else {
        line.append(fresh ? "" : BETWEEN).append(cell);
      }
    }
    return line.length() == indent.length()
        ? lines.toString()
        : lines.append(line).append('\n').toString();
  }

  private static String cell(String name, Snapshot scene, int copy, double most) {
    String shortName = name.length() > 16 ? name.substring(0, 15) + "~" : name;
    double held = scene.heldBytes()[copy];
    String amount = held > 0 ? ByteUnit.format(held) : "empty";
    if (scene.gone()[copy]) {
      return shortName + " [" + bar(0, most) + "] gone";
    }
    int down = scene.drivesDown()[copy];
    String drives = down == 0 ? "" : ", " + down + (down == 1 ? " drive" : " drives") + " down";
    return shortName + " [" + bar(held, most) + "] " + amount + drives;
  }

  /** A bar that is full only if nothing is missing, and empty only if nothing is held. */
  static String bar(double held, double most) {
    double share = most > 0 ? held / most : 0;
    int filled = (int) Math.floor(share * LENGTH + 1e-9);
    if (held > 0) {
      filled = Math.max(1, share < 1 - 1e-9 ? Math.min(LENGTH - 1, filled) : LENGTH);
    }
    return "#".repeat(filled) + ".".repeat(LENGTH - filled);
  }
}
