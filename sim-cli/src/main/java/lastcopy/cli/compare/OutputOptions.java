package lastcopy.cli.compare;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
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
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.report.ReportPage;
import lastcopy.cli.sentence.Remarks;
import lastcopy.experiment.Comparison;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where results go. */
final class OutputOptions {

  @Mixin private JsonOption json;

  @Option(
      names = "--details",
      description = "Also tell every pair of layouts, and how the figures were made.")
  private boolean details;

  @Option(
      names = "--plot",
      description = "Also draw in plain text who loses footage by which year.")
  private boolean plot;

  @Mixin private PageOptions page;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables as CSV files.")
  private Path csv;

  @Mixin private ChartOptions charts;

  @Option(
      names = "--report",
      paramLabel = "FILE.html",
      description = "Write a page that argues the decision, for whoever has to agree to it.")
  private Path report;

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
    if (report != null) {
      files.check(report);
    }
  }

  /**
   * Prints the result and writes the files asked for.
   *
   * @param studio that was simulated
   * @param version of the program
   * @return the files written
   * @throws RefusedException if there is another file of a name by now
   * @throws IOException if a file cannot be written
   * @throws ChartException if this system cannot draw
   */
  List<Path> write(
      Comparison result, Remarks remarks, Studio studio, Host host, Path scenario, String version)
      throws IOException, ChartException, RefusedException {
    List<Path> written =
        new ArrayList<>(
            json.write(
                host,
                Optional.of(scenario),
                onlyJson() ? "" : TextReport.of(result, remarks, asked(host)),
                out -> JsonResult.write(result, remarks, out)));
    if (csv != null) {
      written.addAll(CsvResult.write(result, csv));
    }
    if (charts.folder().isPresent()) {
      written.addAll(
          ChartFiles.writeAll(result, host.today().get(), charts.folder().get(), charts.formats()));
    }
    if (report != null) {
      written.add(report(result, remarks, studio, host, scenario, version));
    }
    return written;
  }

  private TextReport.Asked asked(Host host) {
    return new TextReport.Asked(details, plot, page.on(host));
  }

  private Path report(
      Comparison result, Remarks remarks, Studio studio, Host host, Path scenario, String version)
      throws IOException, ChartException, RefusedException {
    ReportPage.Made made =
        new ReportPage.Made(
            host.today().get(), version, String.valueOf(scenario.getFileName()), hash(scenario));
    ByteArrayOutputStream page = new ByteArrayOutputStream();
    ReportPage.write(result, studio, remarks, made, page);
    json.beside(Optional.of(scenario)).write(report, page::writeTo);
    return report;
  }

  /** SHA-256, which every Java has. */
  private static String hash(Path file) throws IOException {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
