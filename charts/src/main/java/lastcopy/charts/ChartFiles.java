package lastcopy.charts;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import lastcopy.experiment.Comparison;
import lastcopy.files.WholeFile;
import org.jfree.chart.JFreeChart;

/** Writes charts to files, each whole or not at all. */
public final class ChartFiles {

  /** Width of a chart in pixels. */
  public static final int WIDTH = 900;

  /** Height of a chart in pixels. */
  public static final int HEIGHT = 560;

  /** The format of a chart's file. */
  public enum Format {
    /** Pixels. */
    PNG,
    /** Scalable. */
    SVG;

    /** The file name's ending, without the dot. */
    public String ending() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private ChartFiles() {}

  /**
   * Writes every chart of a result in every format into a directory that exists.
   *
   * @return the files written
   * @throws ChartException if the system cannot draw
   * @throws IOException if a file cannot be written
   */
  public static List<Path> writeAll(
      Comparison result, LocalDate date, Path directory, Collection<Format> formats)
      throws ChartException, IOException {
    List<Path> written = new ArrayList<>();
    JFreeChart curve = drawn(() -> LossCurveChart.of(result, date));
    JFreeChart exceedance = drawn(() -> ExceedanceChart.of(result, date));
    for (Format format : formats) {
      if (result.worlds().isPresent()) {
        JFreeChart unknowns = drawn(() -> UnknownsChart.of(result, date));
        written.add(writeNamed(unknowns, directory, "unknowns", format));
      }
      written.add(writeNamed(curve, directory, "loss-curve", format));
      written.add(writeNamed(exceedance, directory, "exceedance", format));
    }
    return written;
  }

  /**
   * Writes one chart.
   *
   * @throws ChartException if the system cannot draw
   * @throws IOException if the file cannot be written
   */
  public static void write(JFreeChart chart, Path file, Format format)
      throws ChartException, IOException {
    try {
      WholeFile.write(file, out -> draw(chart, format, out));
    } catch (LinkageError | InternalError e) {
      throw ChartException.noFonts(e);
    }
  }

  /**
   * A chart as an SVG element to stand in a page.
   *
   * @param prefix of all its ids, unlike that of any other in the page
   * @throws ChartException if the system cannot draw
   * @throws IOException if it cannot be written
   */
  public static String element(Supplier<JFreeChart> chart, String prefix)
      throws ChartException, IOException {
    try {
      return SvgDrawing.of(drawn(chart), WIDTH, HEIGHT, prefix).element();
    } catch (LinkageError | InternalError e) {
      throw ChartException.noFonts(e);
    }
  }

  static Path writeNamed(JFreeChart chart, Path directory, String name, Format format)
      throws ChartException, IOException {
    Path file = directory.resolve(name + "." + format.ending());
    write(chart, file, format);
    return file;
  }

  /** Building a chart touches fonts too, and Java tells their absence by Errors. */
  static JFreeChart drawn(Supplier<JFreeChart> chart) throws ChartException {
    try {
      return chart.get();
    } catch (LinkageError | InternalError e) {
      throw ChartException.noFonts(e);
    }
  }

  private static void draw(JFreeChart chart, Format format, OutputStream out) throws IOException {
    if (format == Format.PNG) {
      png(chart, out);
    } else {
      SvgDrawing.of(chart, WIDTH, HEIGHT).writeTo(out);
    }
  }

  /**
   * Held in memory: a cache on disk needs a folder for it, and cannot be made at an interruption.
   */
  private static void png(JFreeChart chart, OutputStream out) throws IOException {
    try (ImageOutputStream image = new MemoryCacheImageOutputStream(out)) {
      ImageIO.write(chart.createBufferedImage(WIDTH, HEIGHT), "png", image);
    }
  }
}
