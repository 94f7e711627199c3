package lastcopy.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import lastcopy.charts.ChartException;
import lastcopy.charts.ChartFiles;
import lastcopy.charts.WholeFile;
import lastcopy.simulate.Comparison;
import picocli.CommandLine.Option;

/** Where results go. */
final class OutputOptions {

  /** Formats of charts, as asked for. */
  enum ChartFormat {
    png,
    svg,
    both
  }

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Write everything as JSON; - for standard output and nothing else there.")
  private String json;

  @Option(names = "--details", description = "Also say how the figures were made.")
  private boolean details;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables as CSV files.")
  private Path csv;

  @Option(names = "--charts", paramLabel = "DIR", description = "Write charts.")
  private Path charts;

  @Option(
      names = "--chart-format",
      paramLabel = "FORMAT",
      defaultValue = "both",
      description = "png, svg or both (default: both).")
  private ChartFormat chartFormat;

  /** Whether standard output is for JSON alone. */
  boolean onlyJson() {
    return "-".equals(json);
  }

  /**
   * Makes the directories, so that one that cannot be made is told before the simulation.
   *
   * @throws IOException if one cannot be made
   */
  void prepare() throws IOException {
    if (json != null && !onlyJson()) {
      Files.createDirectories(Path.of(json).toAbsolutePath().getParent());
    }
    if (csv != null) {
      Files.createDirectories(csv);
    }
    if (charts != null) {
      Files.createDirectories(charts);
    }
  }

  /**
   * Prints the result and writes the files asked for.
   *
   * @throws IOException if a file cannot be written
   * @throws ChartException if this system cannot draw
   */
  void write(Comparison result, Remarks remarks, Host host) throws IOException, ChartException {
    if (!onlyJson()) {
      host.out().print(TextReport.of(result, remarks, details));
      host.out().flush();
    }
    writeJson(result, remarks, host.out());
    if (csv != null) {
      CsvResult.write(result, csv);
    }
    if (charts != null) {
      ChartFiles.writeAll(result, host.today().get(), charts, formats());
    }
  }

  private void writeJson(Comparison result, Remarks remarks, OutputStream out) throws IOException {
    if (onlyJson()) {
      JsonResult.write(result, remarks.omissions(), out);
      out.flush();
    } else if (json != null) {
      WholeFile.write(Path.of(json), file -> JsonResult.write(result, remarks.omissions(), file));
    }
  }

  private List<ChartFiles.Format> formats() {
    return chartFormat == ChartFormat.both
        ? List.of(ChartFiles.Format.values())
        : List.of(ChartFiles.Format.valueOf(chartFormat.name().toUpperCase(Locale.ROOT)));
  }
}
