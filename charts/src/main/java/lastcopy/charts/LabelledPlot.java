package lastcopy.charts;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;

/** A plot whose lines are named to the right of where they end, each with its number. */
final class LabelledPlot extends XYPlot {

  private static final long serialVersionUID = 1L;

  /** Pixels to the right of the plot for the words. */
  private static final double ROOM = 250;

  private static final double LINE_HEIGHT = 16;
  private static final double SAMPLE = 30;
  private static final double GAP = 8;
  private static final Font NAME = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

  // A plot is never serialized here.
  private final transient List<EndLabels.Label> labels;
  private final Color ink;

  LabelledPlot(
      XYDataset data,
      Look.Axes axes,
      XYItemRenderer renderer,
      List<EndLabels.Label> labels,
      Color ink) {
    super(data, axes.x(), axes.y(), renderer);
    this.labels = List.copyOf(labels);
    this.ink = ink;
    setInsets(new RectangleInsets(4, 8, 4, labels.isEmpty() ? 8 : ROOM));
  }

  /** The words beside the lines, line by line. */
  List<EndLabels.Label> labels() {
    return labels;
  }

  @Override
  public void draw(
      Graphics2D graphics,
      Rectangle2D area,
      Point2D anchor,
      PlotState parent,
      PlotRenderingInfo info) {
    PlotRenderingInfo told = info == null ? new ChartRenderingInfo(null).getPlotInfo() : info;
    super.draw(graphics, area, anchor, parent, told);
    Rectangle2D plot = told.getDataArea();
    if (plot != null) {
      EndLabels.placed(labels, plot.getHeight(), LINE_HEIGHT)
          .forEach(placed -> draw(graphics, plot, placed));
    }
  }

  /** A piece of the line, so that dashes tell it too, then its words. */
  private void draw(Graphics2D graphics, Rectangle2D plot, EndLabels.Placed placed) {
    int series = placed.label().series();
    double left = plot.getMaxX() + GAP;
    double middle = plot.getMinY() + placed.top() + LINE_HEIGHT / 2;
    graphics.setPaint(getRenderer().getSeriesPaint(series));
    graphics.setStroke(getRenderer().getSeriesStroke(series));
    graphics.draw(new Line2D.Double(left, middle, left + SAMPLE, middle));
    graphics.setPaint(ink);
    graphics.setFont(NAME);
    double baseline = middle + NAME.getSize() * 0.36;
    for (String line : placed.label().lines()) {
      graphics.drawString(line, (float) (left + SAMPLE + GAP), (float) baseline);
      baseline += LINE_HEIGHT;
    }
  }

  /** How far down on an axis a value stands, from 0 at its top to 1 at its bottom. */
  static double height(ValueAxis axis, double value) {
    double at = axis.valueToJava2D(value, new Rectangle2D.Double(0, 0, 1, 1), RectangleEdge.LEFT);
    return Math.max(0, Math.min(1, at));
  }
}
