package lastcopy.cli.option;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lastcopy.charts.ChartFiles;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.host.RefusedException;
import picocli.CommandLine.Option;

/** Where a command writes charts, and in which formats. */
public final class ChartOptions {

  /** Formats of charts, as asked for. */
  enum ChartFormat {
    png,
    svg,
    both
  }

  @Option(names = "--charts", paramLabel = "DIR", description = "Write charts.")
  private Path folder;

  @Option(
      names = "--chart-format",
      paramLabel = "FORMAT",
      defaultValue = "both",
      description = "png, svg or both (default: both).")
  private ChartFormat format;

  /** The folder asked for, if charts are. */
  public Optional<Path> folder() {
    return Optional.ofNullable(folder);
  }

  /**
   * Makes the folder asked for and checks that charts may go there.
   *
   * @throws RefusedException if they may not
   * @throws IOException if it cannot be made
   */
  public void prepare(OutputFile files) throws IOException, RefusedException {
    if (folder != null) {
      files.checkFolder(folder, Set.of(".png", ".svg"));
    }
  }

  /** The formats asked for. */
  public List<ChartFiles.Format> formats() {
    return format == ChartFormat.both
        ? List.of(ChartFiles.Format.values())
        : List.of(ChartFiles.Format.valueOf(format.name().toUpperCase(Locale.ROOT)));
  }
}
