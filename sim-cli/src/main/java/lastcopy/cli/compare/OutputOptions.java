package lastcopy.cli.compare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lastcopy.charts.ChartException;
import lastcopy.charts.ChartFiles;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.option.ChartOptions;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where results go. */
final class OutputOptions {

  @Mixin private JsonOption json;

  @Option(
      names = "--details",
      description = "Also tell every pair of layouts, and how the figures were made.")
  private boolean details;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables as CSV files.")
  private Path csv;

  @Mixin private ChartOptions charts;

  /** Whether standard output is for JSON alone. */
  boolean onlyJson() {
    return json.alone();
  }

  /**
   * Makes the directories and checks the names, so that what cannot be written is told before the
   * simulation.
   *
   * @throws RefusedException if a name is that of another file
   * @throws IOException if a directory cannot be made
   */
  void prepare(Path scenario) throws IOException, RefusedException {
    OutputFile files = json.beside(Optional.of(scenario));
    json.prepare(Optional.of(scenario));
    if (csv != null) {
      files.checkFolder(csv, Set.of(".csv"));
    }
    charts.prepare(files);
  }

  /**
   * Prints the result and writes the files asked for.
   *
   * @return the files written
   * @throws RefusedException if there is another file of a name by now
   * @throws IOException if a file cannot be written
   * @throws ChartException if this system cannot draw
   */
  List<Path> write(Comparison result, Remarks remarks, Host host, Path scenario)
      throws IOException, ChartException, RefusedException {
    List<Path> written =
        new ArrayList<>(
            json.write(
                host,
                Optional.of(scenario),
                onlyJson() ? "" : TextReport.of(result, remarks, details),
                out -> JsonResult.write(result, remarks, out)));
    if (csv != null) {
      written.addAll(CsvResult.write(result, csv));
    }
    if (charts.folder().isPresent()) {
      written.addAll(
          ChartFiles.writeAll(result, host.today().get(), charts.folder().get(), charts.formats()));
    }
    return written;
  }
}
