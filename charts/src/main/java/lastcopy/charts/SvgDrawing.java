package lastcopy.charts;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.svggen.SVGSyntax;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.data.xy.XYDataset;
import org.w3c.dom.DOMException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * A chart as an SVG that stands alone: no document type, style or picture from elsewhere, and a
 * title and a description for those who cannot see it.
 */
final class SvgDrawing {

  private static final String SVG = SVGGraphics2D.SVG_NAMESPACE_URI;

  private final Document document;

  private SvgDrawing(Document document) {
    this.document = document;
  }

  /** Draws a chart in the given pixels. */
  static SvgDrawing of(JFreeChart chart, int width, int height) {
    return of(chart, width, height, "");
  }

  /** The same with a prefix to all its ids, so that several can stand in one page. */
  static SvgDrawing of(JFreeChart chart, int width, int height, String prefix) {
    Document document = newDocument();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setIDGenerator(
        new SVGIDGenerator() {
          @Override
          public String generateID(String name) {
            return prefix + super.generateID(name);
          }
        });
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(width, height));
    chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    Element root = graphics.getRoot();
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    // Else a viewer may move each point of a line to the next pixel.
    root.setAttribute("shape-rendering", "geometricPrecision");
    // Readers of a screen speak the first title and description of what is named so.
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", prefix + "title " + prefix + "description");
    root.insertBefore(
        text(document, "desc", prefix + "description", described(chart)), root.getFirstChild());
    root.insertBefore(
        text(document, "title", prefix + "title", titled(chart)), root.getFirstChild());
    prefixGenericDefinitions(root, prefix);
    document.replaceChild(root, document.getDocumentElement());
    sanitize(root);
    document.setXmlStandalone(true);
    return new SvgDrawing(document);
  }

  /** Batik names these by itself, the same in each drawing. */
  private static void prefixGenericDefinitions(Element root, String prefix) {
    NodeList all = root.getElementsByTagName("defs");
    for (int i = 0; i < all.getLength(); i++) {
      Element definitions = (Element) all.item(i);
      if (definitions.getAttribute("id").equals(SVGSyntax.ID_PREFIX_GENERIC_DEFS)) {
        definitions.setAttribute("id", prefix + SVGSyntax.ID_PREFIX_GENERIC_DEFS);
      }
    }
  }

  /**
   * Writes the drawing as XML in UTF-8.
   *
   * @throws IOException if it cannot be written
   */
  void writeTo(OutputStream out) throws IOException {
    write(out, false);
  }

  /** The drawing as an element to stand in another document. */
  String element() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(out, true);
    return out.toString(StandardCharsets.UTF_8);
  }

  private void write(OutputStream out, boolean within) throws IOException {
    try {
      Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.ENCODING, StandardCharsets.UTF_8.name());
      writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, within ? "yes" : "no");
      writer.transform(new DOMSource(document), new StreamResult(out));
    } catch (TransformerException e) {
      throw e.getCause() instanceof IOException io ? io : new IOException(e.getMessage(), e);
    }
  }

  /** Java's own builder, whatever else is on the class path. */
  private static Document newDocument() {
    try {
      return DocumentBuilderFactory.newDefaultNSInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException | DOMException e) {
      throw new IllegalStateException("Java's own XML builder must make a document", e);
    }
  }

  private static Element text(Document document, String name, String id, String content) {
    Element element = document.createElementNS(SVG, name);
    element.setAttribute("id", id);
    element.setTextContent(content);
    return element;
  }

  private static String titled(JFreeChart chart) {
    List<String> lines = subtitles(chart);
    String title = chart.getTitle().getText();
    return lines.isEmpty() ? title : title + " " + lines.get(0);
  }

  /** What the axes and lines or bars are, and what is written below. */
  private static String described(JFreeChart chart) {
    List<String> below = subtitles(chart);
    String what =
        chart.getPlot() instanceof CategoryPlot bars ? described(bars) : lines(chart.getXYPlot());
    return what + ". " + String.join(" ", below.subList(Math.min(1, below.size()), below.size()));
  }

  private static String lines(XYPlot plot) {
    XYDataset data = plot.getDataset();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < data.getSeriesCount(); i++) {
      lines.add(data.getSeriesKey(i).toString());
    }
    return plot.getRangeAxis().getLabel()
        + ", against: "
        + plot.getDomainAxis().getLabel()
        + ". Lines with bands: "
        + String.join("; ", lines);
  }

  private static String described(CategoryPlot plot) {
    List<String> bars = new ArrayList<>();
    for (int i = 0; i < plot.getDataset().getColumnCount(); i++) {
      bars.add(plot.getDataset().getColumnKey(i).toString());
    }
    return plot.getRangeAxis().getLabel() + ". Bars: " + String.join("; ", bars);
  }

  private static List<String> subtitles(JFreeChart chart) {
    List<String> lines = new ArrayList<>();
    for (Title title : chart.getSubtitles()) {
      if (title instanceof TextTitle line) {
        lines.add(line.getText());
      }
    }
    return lines;
  }

  /** XML cannot hold every character, and a name may hold any. */
  private static void sanitize(Node node) {
    if (node.getNodeValue() != null) {
      node.setNodeValue(printable(node.getNodeValue()));
    }
    NamedNodeMap attributes = node.getAttributes();
    for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
      attributes.item(i).setNodeValue(printable(attributes.item(i).getNodeValue()));
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      sanitize(child);
    }
  }

  /** The text with a replacement for each character outside XML 1.0's production 2, "Char". */
  private static String printable(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints().forEach(c -> kept.appendCodePoint(isChar(c) ? c : 0xFFFD));
    return kept.toString();
  }

  private static boolean isChar(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
