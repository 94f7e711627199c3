package lastcopy.cli;

import java.io.IOException;
import java.nio.file.Path;
import lastcopy.charts.WholeFile;
import picocli.CommandLine.Option;

/** Where a command that prints a page writes the same as JSON. */
final class JsonOption {

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Write everything as JSON; - for standard output and nothing else there.")
  private String file;

  /** Whether standard output is for JSON alone. */
  boolean alone() {
    return "-".equals(file);
  }

  /**
   * Prints the page, or JSON alone, and writes the file asked for.
   *
   * @throws IOException if a file cannot be written
   */
  void write(Host host, String page, WholeFile.Content json) throws IOException {
    if (alone()) {
      json.writeTo(host.out());
    } else {
      host.out().print(page);
    }
    host.out().flush();
    if (file != null && !alone()) {
      WholeFile.write(Path.of(file), json);
    }
  }
}
