package lastcopy.cli.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lastcopy.cli.output.Numbers;
import lastcopy.cli.output.Wrap;
import lastcopy.cli.sentence.CostWords;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.interval.Estimate;
import lastcopy.words.OutOf;

/**
 * The table of a report: of each layout how many studios lose what, and, where anything is priced,
 * what one pays on average.
 */
final class SummaryTable {

  private static final int LOSSES = 3;
  private static final int WIDE = 21;
  private static final int NARROW = 17;
  private static final int SHORTEST_NAME = 12;

  private final Comparison result;
  private final OutOf outOf;
  private final boolean priced;
  private final int column;
  private final int costs;
  private final int name;
  private final int width;
  private final StringBuilder text = new StringBuilder();

  private SummaryTable(Comparison result, OutOf outOf, int page) {
    this.result = result;
    this.outOf = outOf;
    priced = result.layouts().stream().anyMatch(layout -> layout.cost().isPresent());
    costs = priced ? 1 + longestCost() : 0;
    int usual = priced ? Math.max(NARROW, Math.min(WIDE, 1 + longestBracket())) : WIDE;
    // On a wide page names and intervals get room, as far as they need it.
    int longest = 2 + result.layouts().stream().mapToInt(l -> l.title().length()).max().orElse(0);
    int roomy = Math.max(usual, 2 + longestCell());
    column = page > Wrap.WIDTH && longest + LOSSES * roomy + costs <= page ? roomy : usual;
    int others = LOSSES * column + costs;
    width = Math.min(page, Math.max(Wrap.WIDTH, longest + others));
    name = Math.max(1, width - others);
  }

  /** On a narrow page the figures of a layout stand below each other. */
  private boolean isList() {
    return width < Wrap.WIDTH && width - LOSSES * column - costs < SHORTEST_NAME;
  }

  /**
   * The table.
   *
   * @param page how many columns there are
   * @param beneath what stands beneath the row of a layout, by its id
   */
  static String of(
      Comparison result, OutOf outOf, int page, Function<String, Optional<String>> beneath) {
    SummaryTable table = new SummaryTable(result, outOf, page);
    List<String> heads = new ArrayList<>(List.of("Any footage", "A shoot or more", "Everything"));
    if (table.priced) {
      heads.add(CostWords.head(result));
    }
    if (!table.isList()) {
      table.row("Layout", heads);
      table.text.append("-".repeat(table.width)).append('\n');
    }
    for (LayoutResult layout : result.layouts()) {
      if (table.isList()) {
        table.list(layout.title(), heads, table.cells(layout));
      } else {
        table.row(layout.title(), table.cells(layout));
      }
      beneath.apply(layout.id()).ifPresent(table.text::append);
    }
    return table.text.toString();
  }

  private void list(String title, List<String> heads, List<String> cells) {
    text.append(Wrap.lines(width, "", "  ", title));
    for (int i = 0; i < heads.size(); i++) {
      text.append(Wrap.column("  " + heads.get(i), NARROW + 2)).append(cells.get(i)).append('\n');
    }
  }

  private List<String> cells(LayoutResult layout) {
    List<String> cells = new ArrayList<>(losses(layout));
    if (priced) {
      cells.add(layout.cost().map(CostWords::cell).orElse("-"));
    }
    return cells;
  }

  private List<String> losses(LayoutResult layout) {
    return List.of(
        Numbers.studios(layout.anyLoss(), outOf),
        oneShootPoint(layout).map(chance -> Numbers.studios(chance, outOf)).orElse("-"),
        Numbers.studios(layout.everythingLost(), outOf));
  }

  private int longestCell() {
    return result.layouts().stream()
        .flatMap(layout -> losses(layout).stream())
        .mapToInt(String::length)
        .max()
        .orElse(0);
  }

  private int longestBracket() {
    return result.layouts().stream()
        .flatMap(layout -> losses(layout).stream())
        .mapToInt(
            cell -> Math.max(bracket(cell).length(), cell.indexOf('(') < 0 ? cell.length() : 0))
        .max()
        .orElse(0);
  }

  private int longestCost() {
    return Stream.concat(
            Stream.of(CostWords.head(result)),
            result.layouts().stream().flatMap(l -> l.cost().stream()).map(CostWords::cell))
        .mapToInt(String::length)
        .max()
        .orElse(0);
  }

  /** A name too long for its column stands on a line alone; so do intervals. */
  private void row(String label, List<String> cells) {
    if (label.length() >= name) {
      text.append(Wrap.lines(width, "", "  ", label));
      row("", cells);
    } else if (cells.stream().anyMatch(cell -> cell.length() >= column)) {
      line(label, cells.stream().map(cell -> cell.split(" \\(", 2)[0]).toList());
      line("", cells.stream().map(SummaryTable::bracket).toList());
    } else {
      line(label, cells);
    }
  }

  private void line(String label, List<String> cells) {
    StringBuilder line = new StringBuilder(Wrap.column(label, name));
    for (int i = 0; i < cells.size(); i++) {
      line.append(Wrap.column(cells.get(i), i < LOSSES ? column : costs));
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private static String bracket(String cell) {
    int at = cell.indexOf(" (");
    return at < 0 ? "" : cell.substring(at + 1);
  }

  /** The chance to lose a shoot or more. */
  static Optional<Estimate> oneShootPoint(LayoutResult layout) {
    return layout.exceedanceShoots().stream()
        .filter(point -> point.at() == 1)
        .map(LayoutResult.Point::chance)
        .findFirst();
  }
}
