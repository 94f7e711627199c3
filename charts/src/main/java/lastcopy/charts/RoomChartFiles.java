package lastcopy.charts;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jfree.chart.JFreeChart;

/** Writes the chart of room by year, whole or not at all. */
public final class RoomChartFiles {

  private RoomChartFiles() {}

  /**
   * Writes it in every format into a directory that exists.
   *
   * @return the files written
   * @throws ChartException if the system cannot draw
   * @throws IOException if a file cannot be written
   */
  public static List<Path> writeAll(
      RoomChart.Pictured what, Path directory, Collection<ChartFiles.Format> formats)
      throws ChartException, IOException {
    JFreeChart chart = ChartFiles.drawn(() -> RoomChart.of(what));
    List<Path> written = new ArrayList<>();
    for (ChartFiles.Format format : formats) {
      written.add(ChartFiles.writeNamed(chart, directory, "room", format));
    }
    return written;
  }
}
