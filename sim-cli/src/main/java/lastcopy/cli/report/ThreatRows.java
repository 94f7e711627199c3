package lastcopy.cli.report;

import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.output.Spans;
import lastcopy.outlook.Threat;
import lastcopy.outlook.Threats;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/** What stays unprotected: for each mishap, which copies of a layout are left. */
final class ThreatRows {

  private static final String OWN_PLACE = "copy:";

  private ThreatRows() {}

  /**
   * A row.
   *
   * @param threat in words
   * @param counted whether the figures count it
   * @param cells one for each copy
   * @param left which copies still have the footage, at least for a while
   */
  record Row(String threat, boolean counted, List<Cell> cells, Cell left) {
    Row {
      cells = List.copyOf(cells);
    }

    boolean uncounted() {
      return !counted;
    }
  }

  /**
   * What becomes of one copy.
   *
   * @param words such as "is left"
   * @param look a class of the style sheet
   */
  record Cell(String words, String look) {}

  /** The names of a layout's copies, as heads of columns. */
  static List<String> heads(Layout layout) {
    return layout.copies().stream().map(Copy::id).toList();
  }

  static List<Row> of(Studio studio, Layout layout) {
    List<Row> rows = new ArrayList<>();
    for (Threat threat : Threats.of(studio, layout)) {
      rows.add(
          new Row(
              words(threat),
              threat.counted(),
              threat.fates().stream().map(fate -> cell(threat, fate)).toList(),
              left(threat, heads(layout))));
    }
    return rows;
  }

  private static String words(Threat threat) {
    List<String> names = threat.names();
    return switch (threat.kind()) {
      case DRIVE -> "A drive of one copy fails";
      case BOX -> "A mishap of the box " + names.get(0);
      case PLACE -> atPlace(names.subList(0, names.size() - 1), names.get(names.size() - 1));
      case DELETION -> "Footage is deleted by mistake";
      case MALWARE -> "Malware destroys what it reaches";
    };
  }

  private static String atPlace(List<String> mishaps, String place) {
    String where =
        place.startsWith(OWN_PLACE)
            ? "where " + place.substring(OWN_PLACE.length()) + " stands"
            : "at " + place;
    return mishaps.isEmpty() ? "Fire, theft or water " + where : either(mishaps) + " " + where;
  }

  private static String either(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  /** A drive that fails takes one copy at most. */
  private static Cell left(Threat threat, List<String> copies) {
    List<String> left = new ArrayList<>();
    for (int i = 0; i < copies.size(); i++) {
      if (alone(threat) || !(threat.fates().get(i) instanceof Threat.Goes)) {
        left.add(copies.get(i));
      }
    }
    if (left.isEmpty()) {
      return new Cell("nothing", "gone");
    }
    return left.size() == copies.size()
        ? new Cell(alone(threat) ? "the others" : "all", "stands")
        : new Cell(String.join(", ", left), "stands");
  }

  /** Whether it strikes one of several copies and leaves the others. */
  private static boolean alone(Threat threat) {
    return threat.kind() == Threat.Kind.DRIVE && threat.fates().size() > 1;
  }

  private static Cell cell(Threat threat, Threat.Fate fate) {
    if (fate instanceof Threat.Holds holds) {
      return Double.isInfinite(holds.hours())
          ? new Cell("keeps it for good", "stands")
          : new Cell("keeps it for " + Spans.span(holds.hours()), "while");
    }
    if (fate instanceof Threat.Follows) {
      return new Cell("has it until its next run", "while");
    }
    if (fate instanceof Threat.Unconcerned) {
      return new Cell("has none", "none");
    }
    return fate instanceof Threat.Stands
        ? new Cell("is left", "stands")
        : new Cell(alone(threat) ? "that copy is gone" : "gone", "gone");
  }
}
