package lastcopy.cli.option;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.host.RefusedException;
import lastcopy.files.WholeFile;
import picocli.CommandLine.Option;

/** A scenario that a command writes beside what it prints. */
public final class WriteOption {

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description = "Write a scenario with each layout that is named here, as plain layouts.")
  private Path file;

  /**
   * Refuses early what could not be written.
   *
   * @param json whose file it must not be
   * @throws RefusedException if it is another file that is there already, or the scenario itself
   */
  public void prepare(JsonOption json, Path scenario) throws IOException, RefusedException {
    if (file != null) {
      json.beside(Optional.of(scenario)).check(file);
    }
  }

  /** Writes it, whole or not at all; gives the file that was written, if any was asked for. */
  public List<Path> write(JsonOption json, Path scenario, WholeFile.Content content)
      throws IOException, RefusedException {
    if (file == null) {
      return List.of();
    }
    json.beside(Optional.of(scenario)).write(file, content);
    return List.of(file);
  }
}
