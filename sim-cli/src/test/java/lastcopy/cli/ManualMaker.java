package lastcopy.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Makes the script that completes command lines, and the manual's pages, from the commands
 * themselves by picocli's generators. The build runs it; it is not in the jar.
 */
public final class ManualMaker {

  private ManualMaker() {}

  /** Writes everything into the directory that the one argument names. */
  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]));
  }

  static void write(Path directory) throws IOException {
    Files.createDirectories(directory);
    Files.writeString(
        directory.resolve("lastcopy_completion"), AutoComplete.bash("lastcopy", commands()));
    CommandSpec root = commands().getCommandSpec();
    int status =
        ManPageGenerator.generateManPage(directory.toFile(), null, new boolean[0], false, root);
    if (status != 0) {
      throw new UncheckedIOException(new IOException("the manual's generator ends with " + status));
    }
  }

  /** The program as it is; nothing of it is run. */
  static CommandLine commands() {
    Host host =
        new Host(
            System.out,
            System.err,
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> LocalDate.EPOCH,
            new Interruption());
    return new Program(host).commands();
  }

  /** A command and all below it. */
  static List<CommandLine> all(CommandLine root) {
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(root), root.getSubcommands().values().stream())
        .toList();
  }
}
