package lastcopy.cli.ask;

import java.util.List;
import lastcopy.cli.output.Spans;
import lastcopy.cli.scenario.value.Measure;

/** Layouts drawn with letters that every terminal has. */
final class Picture {

  private static final String MARGIN = " ".repeat(14);
  private static final int WIDEST = 60;

  private final String size;
  private final StringBuilder drawn = new StringBuilder();

  private Picture(String size) {
    this.size = size;
  }

  /**
   * A layout with its name in the file, each copy in a frame, and how footage gets there.
   *
   * @param size of a drive
   */
  static String of(LayoutSketch layout, String size) {
    Picture picture = new Picture(size);
    picture.line(layout.id() + ": " + layout.title());
    List<CopySketch> copies = layout.copies();
    copies.forEach(picture::copy);
    if (layout.watched()) {
      picture.line(MARGIN + "(looked at every day, and a spare drive on the shelf)");
    }
    return picture.drawn.toString();
  }

  private void copy(CopySketch copy) {
    copy.way()
        .ifPresent(
            way -> {
              line(MARGIN + "  |");
              line(MARGIN + "  v  from main, " + way.by().words() + ", every " + span(way.every()));
            });
    String inside = copy.id() + ": " + copy.words(size);
    String edge = "+" + "-".repeat(Math.min(WIDEST, inside.length()) + 2) + "+";
    line(MARGIN + edge);
    String place = "  " + copy.place();
    line(place + " ".repeat(MARGIN.length() - place.length()) + "| " + inside + " |");
    line(MARGIN + edge);
  }

  private static String span(String every) {
    return Spans.period(Measure.TIME.read(every).orElseThrow());
  }

  private void line(String text) {
    drawn.append(text).append('\n');
  }
}
