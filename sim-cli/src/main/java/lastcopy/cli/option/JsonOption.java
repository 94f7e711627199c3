package lastcopy.cli.option;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lastcopy.cli.host.Failures;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.OutputFile;
import lastcopy.cli.host.RefusedException;
import lastcopy.files.WholeFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a command that prints a page writes the same as JSON. */
public final class JsonOption {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Write everything as JSON; - for standard output and nothing else there.")
  private String file;

  @Option(
      names = "--force",
      description = "Let --json or --report replace a file that this program did not write.")
  private boolean force;

  /** Whether standard output is for JSON alone. */
  public boolean alone() {
    return "-".equals(file);
  }

  /** What may be written beside a scenario. */
  public OutputFile beside(Optional<Path> scenario) {
    return new OutputFile(scenario, force);
  }

  /**
   * Checks the name of the file asked for and makes its folder, before anything is computed.
   *
   * @throws RefusedException if it is that of another file
   * @throws IOException if it cannot be written
   */
  public void prepare(Optional<Path> scenario) throws IOException, RefusedException {
    if (path().isPresent()) {
      beside(scenario).check(path().get());
    }
  }

  /**
   * Prints the page, or JSON alone, and writes the file asked for.
   *
   * @return what file was written, if any
   * @throws RefusedException if there is another file of that name
   * @throws IOException if a file cannot be written
   */
  public List<Path> write(Host host, Optional<Path> scenario, String page, WholeFile.Content json)
      throws IOException, RefusedException {
    if (alone()) {
      json.writeTo(host.out());
    } else {
      host.out().print(page);
    }
    host.out().flush();
    if (path().isPresent()) {
      beside(scenario).write(path().get(), json);
    }
    return path().stream().toList();
  }

  private Optional<Path> path() {
    if (file == null || alone()) {
      return Optional.empty();
    }
    if (file.isBlank()) {
      throw new ParameterException(command.commandLine(), "--json needs the name of a file, or -");
    }
    try {
      return Optional.of(Path.of(file));
    } catch (InvalidPathException e) {
      throw new ParameterException(command.commandLine(), Failures.notAName(file), e);
    }
  }
}
