package lastcopy.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis whose ticks stand where they are put, with words of their own. */
final class MarkedAxis extends NumberAxis {

  private static final long serialVersionUID = 1L;

  /** Where a tick stands and what stands at it. */
  record Mark(double at, String words) {}

  // An axis is never serialized here.
  private final transient List<Mark> marks;

  MarkedAxis(String label, List<Mark> marks) {
    super(label);
    this.marks = List.copyOf(marks);
  }

  /** The marks within the range, in words. */
  List<String> shown() {
    return marks.stream().filter(mark -> getRange().contains(mark.at())).map(Mark::words).toList();
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
    boolean upright = RectangleEdge.isLeftOrRight(edge);
    TextAnchor anchor = upright ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER;
    List<NumberTick> ticks = new ArrayList<>();
    for (Mark mark : marks) {
      if (getRange().contains(mark.at())) {
        ticks.add(new NumberTick(mark.at(), mark.words(), anchor, anchor, 0));
      }
    }
    return ticks;
  }
}
