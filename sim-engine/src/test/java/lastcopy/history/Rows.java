package lastcopy.history;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.HistoryListener;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Studio;

/**
 * A history as rows of text: when, what, copy, drive, bytes, until, subject; then what has been
 * shot, what is lost, what each copy holds and what stands in one copy only.
 */
final class Rows {

  private static final Set<Kind> CALM =
      EnumSet.of(Kind.START, Kind.DRIVE_ADDED, Kind.DRIVE_SWAPPED, Kind.END);

  private Rows() {}

  /** The first history of a studio's only layout. */
  static List<String> told(Studio studio) {
    List<String> rows = new ArrayList<>();
    HistoryListener listener = (happening, now) -> rows.add(row(happening, now));
    new History(studio, studio.layouts().get(0), 1).tell(0, listener);
    return rows;
  }

  private static String row(Happening h, Snapshot now) {
    StringBuilder row = new StringBuilder();
    row.append(number(h.hours())).append(' ').append(h.kind()).append(' ').append(h.copy());
    row.append(' ').append(h.drive()).append(' ').append(number(h.bytes()));
    row.append(' ').append(number(h.until())).append(" [").append(h.subject()).append("] ");
    row.append(number(now.shotBytes())).append(' ').append(number(now.lostBytes()));
    for (double held : now.heldBytes()) {
      row.append(' ').append(number(held));
    }
    // On the undisturbed course what stands in one copy only is not reckoned.
    return CALM.contains(h.kind()) ? row.toString() : row + " | " + number(now.bareBytes());
  }

  private static String number(double value) {
    return Double.isNaN(value)
        ? "-"
        : String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
  }

  /** From the first row of a kind on. */
  static List<String> after(String kind, List<String> rows) {
    int from = 0;
    while (!rows.get(from).contains(" " + kind + " ")) {
      from++;
    }
    return rows.subList(from, rows.size());
  }
}
