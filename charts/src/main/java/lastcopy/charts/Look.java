package lastcopy.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import lastcopy.experiment.Comparison;
import lastcopy.interval.Estimate;
import lastcopy.words.PercentWords;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The look that all charts share: readable by the colour-blind, and in grey. */
final class Look {

  /**
   * Okabe and Ito's colours, without the yellow, which is too faint for a line on white; then three
   * of other lightness, so that each layout that is named beside its line has its own.
   */
  private static final Color[] COLOURS = {
    new Color(0xD55E00),
    new Color(0x0072B2),
    new Color(0x009E73),
    new Color(0xCC79A7),
    new Color(0x000000),
    new Color(0xE69F00),
    new Color(0x56B4E9),
    new Color(0x7F4A1E),
    new Color(0x808080),
    new Color(0x5E3C99),
  };

  /** Lengths of dash and gap in pixels; the first is solid. */
  private static final float[][] DASHES = {
    null, {9, 5}, {2.5f, 4}, {12, 4, 2.5f, 4}, {16, 5}, {6, 3}, {9, 3, 2.5f, 3, 2.5f, 3},
  };

  private static final Color GRID = new Color(0xD8D8D8);
  private static final Color INK = new Color(0x222222);
  private static final Color FAINT_INK = new Color(0x555555);

  /** Beside a fifth for the bands of sampling. */
  private static final float LIGHTER = 0.09f;

  private static final Color FAINT_POINT = new Color(0xB0B0B0);

  private static final Color NOTHING = new Color(0, 0, 0, 0);

  private Look() {}

  /** A chart of lines with bands, titled and dated. */
  static JFreeChart chart(String title, Comparison result, LocalDate date, Lines lines, Axes axes) {
    return chart(new Words(title, result.studio(), caution(result, date)), lines, axes);
  }

  /** A chart of lines with bands and a legend below it, with words around it. */
  static JFreeChart chart(Words words, YIntervalSeriesCollection data, Axes axes) {
    return chart(words, new Lines(data, List.of()), axes);
  }

  /** A chart of lines with bands, named at their ends, with words around it. */
  static JFreeChart chart(Words words, Lines lines, Axes axes) {
    XYPlot plot =
        new LabelledPlot(
            lines.data(), axes, renderer(lines.data().getSeriesCount()), lines.labels(), INK);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(GRID);
    plot.setRangeGridlineStroke(new BasicStroke(1));
    plot.setDomainGridlinesVisible(false);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    style(axes.x());
    style(axes.y());
    // Room around each tick label, so that a dozen do not crowd the axis.
    axes.y().setTickLabelInsets(new RectangleInsets(8, 4, 8, 4));
    boolean legend = lines.labels().isEmpty();
    JFreeChart chart = new JFreeChart(words.title(), font(Font.BOLD, 19), plot, legend);
    return framed(chart, words, legend);
  }

  /** The title of a chart, the line below it and the one at its foot. */
  record Words(String title, String below, String foot) {}

  /** Lines with bands, and what stands beside them; a legend instead if nothing does. */
  record Lines(YIntervalSeriesCollection data, List<EndLabels.Label> labels) {

    /** Copies the list. */
    Lines {
      labels = List.copyOf(labels);
    }
  }

  /** One more line at the foot of a chart. */
  static void note(JFreeChart chart, String words) {
    chart.addSubtitle(line(words, 12, RectangleEdge.BOTTOM));
  }

  /** Lighter bands, without lines, under those of a chart, in the same colours. */
  static void underlay(JFreeChart chart, YIntervalSeriesCollection data) {
    DeviationRenderer lighter = renderer(data.getSeriesCount());
    lighter.setAlpha(LIGHTER);
    for (int i = 0; i < data.getSeriesCount(); i++) {
      lighter.setSeriesPaint(i, NOTHING);
      lighter.setSeriesVisibleInLegend(i, false);
    }
    XYPlot plot = chart.getXYPlot();
    plot.setDataset(1, data);
    plot.setRenderer(1, lighter);
  }

  /** A chart of horizontal bars, a colour for each row of the data. */
  static JFreeChart bars(Words words, CategoryDataset data, ValueAxis values) {
    return bars(words, data, values, new BarRenderer(), true);
  }

  /** The same with an interval at each bar, by row and column of the data. */
  static JFreeChart bars(
      Words words, CategoryDataset data, ValueAxis values, List<List<Estimate>> ends) {
    return bars(words, data, values, new WhiskerBars(ends, INK), data.getRowCount() > 1);
  }

  private static JFreeChart bars(
      Words words, CategoryDataset data, ValueAxis values, BarRenderer renderer, boolean legend) {
    CategoryAxis names = new CategoryAxis();
    names.setTickLabelFont(font(Font.PLAIN, 13));
    names.setTickLabelPaint(INK);
    names.setMaximumCategoryLabelWidthRatio(0.45f);
    names.setMaximumCategoryLabelLines(3);
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    for (int row = 0; row < data.getRowCount(); row++) {
      renderer.setSeriesPaint(row, COLOURS[row % COLOURS.length]);
    }
    style(values);
    CategoryPlot plot = new CategoryPlot(data, names, values, renderer);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(GRID);
    plot.setOutlineVisible(false);
    JFreeChart chart = new JFreeChart(words.title(), font(Font.BOLD, 19), plot, legend);
    return framed(chart, words, legend);
  }

  /**
   * A chart of points with a front of steps: the first data are the front, with intervals, the
   * second a point that stands out, the third faint ones, the fourth the front again.
   */
  static JFreeChart costs(Words words, XYPlot plot) {
    XYErrorRenderer front = new XYErrorRenderer();
    front.setDefaultShape(new Ellipse2D.Double(-4, -4, 8, 8));
    front.setSeriesPaint(0, COLOURS[1]);
    plot.setRenderer(0, front);
    XYLineAndShapeRenderer today = new XYLineAndShapeRenderer(false, true);
    today.setSeriesShape(0, new Rectangle2D.Double(-6, -6, 12, 12));
    today.setSeriesPaint(0, COLOURS[0]);
    plot.setRenderer(1, today);
    XYLineAndShapeRenderer others = new XYLineAndShapeRenderer(false, true);
    others.setSeriesShape(0, new Ellipse2D.Double(-2.5, -2.5, 5, 5));
    others.setSeriesPaint(0, FAINT_POINT);
    plot.setRenderer(2, others);
    XYStepRenderer steps = new XYStepRenderer();
    steps.setSeriesPaint(0, COLOURS[1]);
    steps.setSeriesStroke(0, stroke(0));
    steps.setSeriesVisibleInLegend(0, false);
    plot.setRenderer(3, steps);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(GRID);
    plot.setRangeGridlineStroke(new BasicStroke(1));
    plot.setDomainGridlinesVisible(false);
    plot.setOutlineVisible(false);
    style(plot.getDomainAxis());
    style(plot.getRangeAxis());
    JFreeChart chart = new JFreeChart(words.title(), font(Font.BOLD, 19), plot, true);
    return framed(chart, words, true);
  }

  /** A name above and to the right of a point. */
  static void name(XYPlot plot, String name, double x, double y) {
    XYTextAnnotation text = new XYTextAnnotation("  " + name, x, y);
    text.setFont(font(Font.PLAIN, 13));
    text.setPaint(INK);
    text.setTextAnchor(TextAnchor.BOTTOM_LEFT);
    plot.addAnnotation(text);
  }

  private static JFreeChart framed(JFreeChart chart, Words words, boolean legend) {
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(12, 14, 10, 24));
    chart.getTitle().setPaint(INK);
    chart.addSubtitle(line(words.below(), 14, RectangleEdge.TOP));
    if (legend) {
      style(chart.getLegend());
    }
    chart.addSubtitle(line(words.foot(), 12, RectangleEdge.BOTTOM));
    return chart;
  }

  /** Marks a place on the horizontal axis. */
  static void mark(JFreeChart chart, double at, String words) {
    ValueMarker marker = new ValueMarker(at, FAINT_INK, new BasicStroke(1));
    marker.setLabel(words);
    marker.setLabelFont(font(Font.PLAIN, 12));
    marker.setLabelPaint(FAINT_INK);
    marker.setLabelAnchor(RectangleAnchor.TOP_LEFT);
    marker.setLabelTextAnchor(TextAnchor.TOP_RIGHT);
    marker.setLabelBackgroundColor(NOTHING);
    chart.getXYPlot().addDomainMarker(marker);
  }

  /** The two axes of a chart. */
  record Axes(ValueAxis x, ValueAxis y) {}

  /** What the bands are, that a model is no guarantee, and when this was drawn. */
  static String caution(Comparison result, LocalDate date) {
    String bands =
        String.format(
            Locale.ROOT,
            "%s: %s %% pointwise sampling intervals. A model, not a guarantee. Drawn %s.",
            result.worlds().isPresent() ? "Darker bands" : "Bands",
            PercentWords.of(result.confidence()),
            date);
    return result.finished() ? bands : "UNFINISHED: interrupted before the end. " + bands;
  }

  private static DeviationRenderer renderer(int series) {
    DeviationRenderer renderer = new DeviationRenderer(true, false);
    renderer.setAlpha(0.2f);
    renderer.setLegendLine(new Line2D.Double(-22, 0, 22, 0));
    for (int i = 0; i < series; i++) {
      renderer.setSeriesPaint(i, COLOURS[i % COLOURS.length]);
      renderer.setSeriesFillPaint(i, COLOURS[i % COLOURS.length]);
      // The dashes turn one step further on each round, so no two of 70 layouts look alike.
      renderer.setSeriesStroke(i, stroke(i + i / COLOURS.length));
    }
    return renderer;
  }

  private static Stroke stroke(int index) {
    float[] dash = DASHES[index % DASHES.length];
    return new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }

  private static void style(ValueAxis axis) {
    axis.setLabelFont(font(Font.PLAIN, 15));
    axis.setTickLabelFont(font(Font.PLAIN, 14));
    axis.setLabelPaint(INK);
    axis.setTickLabelPaint(INK);
    axis.setAxisLinePaint(FAINT_INK);
  }

  private static void style(LegendTitle legend) {
    legend.setItemFont(font(Font.PLAIN, 14));
    legend.setItemPaint(INK);
    legend.setFrame(org.jfree.chart.block.BlockBorder.NONE);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemLabelPadding(new RectangleInsets(3, 4, 3, 18));
  }

  private static TextTitle line(String text, int size, RectangleEdge edge) {
    TextTitle title = new TextTitle(text, font(Font.PLAIN, size));
    title.setPaint(FAINT_INK);
    title.setPosition(edge);
    title.setHorizontalAlignment(HorizontalAlignment.CENTER);
    title.setPadding(2, 0, 4, 0);
    return title;
  }

  private static Font font(int style, int size) {
    return new Font(Font.SANS_SERIF, style, size);
  }
}
