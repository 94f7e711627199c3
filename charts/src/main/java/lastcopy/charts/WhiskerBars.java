package lastcopy.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import lastcopy.interval.Estimate;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.data.category.CategoryDataset;

/** Horizontal bars with their intervals as lines, each from its low to its high end. */
final class WhiskerBars extends BarRenderer {

  private static final long serialVersionUID = 1L;
  private static final double CAP = 4;
  private static final BasicStroke LINE = new BasicStroke(1.6f);

  // A renderer is never serialized here.
  private final transient List<List<Estimate>> ends;
  private final Color ink;

  /**
   * Bars.
   *
   * @param ends by row and column of the data, in its units
   */
  WhiskerBars(List<List<Estimate>> ends, Color ink) {
    this.ends = ends.stream().map(List::copyOf).toList();
    this.ink = ink;
  }

  @Override
  public void drawItem(
      Graphics2D graphics,
      CategoryItemRendererState state,
      Rectangle2D area,
      CategoryPlot plot,
      CategoryAxis names,
      ValueAxis values,
      CategoryDataset data,
      int row,
      int column,
      int pass) {
    super.drawItem(graphics, state, area, plot, names, values, data, row, column, pass);
    Estimate of = ends.get(row).get(column);
    double y =
        calculateBarW0(plot, plot.getOrientation(), area, names, state, row, column)
            + state.getBarWidth() / 2;
    double low = values.valueToJava2D(of.low(), area, plot.getRangeAxisEdge());
    double high = values.valueToJava2D(of.high(), area, plot.getRangeAxisEdge());
    graphics.setPaint(ink);
    graphics.setStroke(LINE);
    graphics.draw(new Line2D.Double(low, y, high, y));
    graphics.draw(new Line2D.Double(low, y - CAP, low, y + CAP));
    graphics.draw(new Line2D.Double(high, y - CAP, high, y + CAP));
  }
}
