package lastcopy.charts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Room;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.words.ByteUnit;
import lastcopy.words.YearWords;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Footage against years as the steps that it grows by, and how far each room may be filled. */
public final class RoomChart {

  /** A room so many times as large as all footage would press it to the floor. */
  private static final double FAR_ABOVE = 2.5;

  private static final double AIR = 1.08;
  private static final int NAMES = 2;

  private RoomChart() {}

  /**
   * What is drawn.
   *
   * @param studio its name
   * @param outlooks one for each layout
   * @param room of the same studio
   * @param date printed on it
   */
  public record Pictured(String studio, List<Outlook> outlooks, RoomAndTime room, LocalDate date) {

    /** Copies the list. */
    public Pictured {
      outlooks = List.copyOf(outlooks);
    }

    /** The horizon in years. */
    double years() {
      return room.needs().get(room.needs().size() - 1).years();
    }

    /** The most footage that there is. */
    double most() {
      return room.needs().get(room.needs().size() - 1).mostBytes();
    }

    /** A fill limit such as {@code 80 %}. */
    String limit() {
      return ByteUnit.digits(100 * room.fill()) + " %";
    }
  }

  /** The chart of a studio. */
  public static JFreeChart of(Pictured what) {
    NumberAxis years = new NumberAxis("Years from today");
    years.setRange(0, what.years());
    if (what.years() >= 3) {
      years.setTickUnit(new NumberTickUnit(Math.ceil(what.years() / 12)));
    }
    years.setNumberFormatOverride(new StudioFormat());
    NumberAxis bytes = new NumberAxis("Footage to keep, and how far a room may be filled");
    bytes.setRange(0, top(what));
    bytes.setNumberFormatOverride(new ByteFormat());
    JFreeChart chart =
        Look.chart(
            new Look.Words(
                "Is there room for " + horizon(what) + "?",
                what.studio(),
                String.format(
                    Locale.ROOT,
                    "Rooms at most %s full. If nothing fails. Drawn %s.",
                    what.limit(),
                    what.date())),
            new Look.Lines(dataset(what), labels(what, bytes)),
            new Look.Axes(years, bytes));
    List<String> above = above(what);
    if (!above.isEmpty()) {
      Look.note(chart, "Far above the picture: " + String.join("; ", above) + ".");
    }
    return chart;
  }

  private static String horizon(Pictured what) {
    return YearWords.of(what.years());
  }

  /** The footage first, then each room up to its limit, the least first. */
  static YIntervalSeriesCollection dataset(Pictured what) {
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    data.addSeries(footage(what));
    shown(what)
        .forEach(
            (usable, names) -> {
              YIntervalSeries line = new YIntervalSeries(limited(what, usable), false, true);
              double limit = usable * what.room().fill();
              line.add(0, limit, limit, limit);
              line.add(what.years(), limit, limit, limit);
              data.addSeries(line);
            });
    return data;
  }

  /** A step is drawn as one: what there was stays until there is more or less. */
  private static YIntervalSeries footage(Pictured what) {
    YIntervalSeries line = new YIntervalSeries("footage", false, true);
    double before = Double.NaN;
    for (Room.Year step : what.room().steps()) {
      if (!Double.isNaN(before)) {
        line.add(step.years(), before, before, before);
      }
      before = step.footageBytes();
      line.add(step.years(), before, before, before);
    }
    line.add(what.years(), before, before, before);
    return line;
  }

  private static List<EndLabels.Label> labels(Pictured what, NumberAxis axis) {
    List<EndLabels.Label> labels = new ArrayList<>();
    List<Room.Year> steps = what.room().steps();
    double end = steps.get(steps.size() - 1).footageBytes();
    labels.add(
        new EndLabels.Label(
            0, LabelledPlot.height(axis, end), List.of("footage to keep", ByteUnit.format(end))));
    shown(what)
        .forEach(
            (usable, names) -> {
              List<String> lines = new ArrayList<>(EndLabels.broken(limited(what, usable)));
              lines.addAll(EndLabels.broken(few(names)));
              double limit = usable * what.room().fill();
              labels.add(
                  new EndLabels.Label(labels.size(), LabelledPlot.height(axis, limit), lines));
            });
    return labels.size() > EndLabels.MOST ? List.of() : labels;
  }

  private static String limited(Pictured what, double usable) {
    return what.limit() + " of " + ByteUnit.format(usable);
  }

  private static String few(List<String> names) {
    int more = names.size() - NAMES;
    return more <= 0
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, NAMES)) + " and " + more + " more";
  }

  private static double top(Pictured what) {
    double highest = what.most();
    for (double usable : shown(what).keySet()) {
      highest = Math.max(highest, usable * what.room().fill());
    }
    return highest > 0 ? AIR * highest : 1;
  }

  private static Map<Double, List<String>> shown(Pictured what) {
    Map<Double, List<String>> rooms = rooms(what);
    rooms.keySet().removeIf(usable -> isFarAbove(what, usable));
    return rooms;
  }

  private static List<String> above(Pictured what) {
    List<String> far = new ArrayList<>();
    rooms(what)
        .forEach(
            (usable, names) -> {
              if (isFarAbove(what, usable)) {
                far.add(limited(what, usable) + " (" + few(names) + ")");
              }
            });
    return far;
  }

  private static boolean isFarAbove(Pictured what, double usable) {
    return what.most() > 0 && usable * what.room().fill() > FAR_ABOVE * what.most();
  }

  /** The copies of each usable room. */
  private static Map<Double, List<String>> rooms(Pictured what) {
    Map<Double, List<String>> rooms = new TreeMap<>();
    for (Outlook outlook : what.outlooks()) {
      for (CopyOutlook copy : outlook.copies()) {
        String name = outlook.layout().id() + "." + copy.copy().id();
        copy.usableBytes()
            .ifPresent(usable -> rooms.computeIfAbsent(usable, key -> new ArrayList<>()).add(name));
      }
    }
    return rooms;
  }
}
