package lastcopy.cli.host;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lastcopy.files.WholeFile;

/**
 * Where a command may write: never over what it reads, and over another's file only if told so.
 *
 * @param input the scenario, if the command reads one
 * @param force whether any existing file may be replaced
 */
public record OutputFile(Optional<Path> input, boolean force) {

  /** Every page of JSON that this program writes begins with the name of its format. */
  private static final String MARK = "\"lastcopy-";

  private static final int HEAD = 100;

  /**
   * Makes the folder of a file and checks that it may be written.
   *
   * @throws RefusedException if the name is that of another file
   * @throws IOException if it cannot be written
   */
  public void check(Path file) throws IOException, RefusedException {
    Path target = WholeFile.target(file);
    if (isInput(target)) {
      throw new RefusedException("the file to write is the scenario itself: " + file);
    }
    if (Files.isRegularFile(target) && !force && !isOwn(target)) {
      throw new RefusedException(
          "there is a file already that this program did not write: "
              + file
              + " (--force replaces it)");
    }
    if (target.getParent() != null) {
      Files.createDirectories(target.getParent());
    }
  }

  /**
   * Makes the folder of a file that people edit, which replaces none without being told so.
   *
   * @throws RefusedException if there is a file of that name
   * @throws IOException if it cannot be written
   */
  public void checkNew(Path file) throws IOException, RefusedException {
    check(file);
    if (isTaken(file) && !force) {
      throw new RefusedException("there is a file already: " + file + " (--force replaces it)");
    }
  }

  /**
   * Whether there is a file of that name that could be replaced.
   *
   * @throws IOException if it cannot be written
   */
  public static boolean isTaken(Path file) throws IOException {
    return Files.isRegularFile(WholeFile.target(file));
  }

  /**
   * Makes a folder and checks that what will be written there is not the scenario.
   *
   * @param endings of the names that are written there
   * @throws RefusedException if the scenario has one of them
   * @throws IOException if the folder cannot be made
   */
  public void checkFolder(Path folder, Set<String> endings) throws IOException, RefusedException {
    Files.createDirectories(folder);
    if (input.isPresent() && endings.stream().anyMatch(input.get().toString()::endsWith)) {
      Path parent = input.get().toRealPath().getParent();
      if (parent != null && Files.isSameFile(parent, folder)) {
        throw new RefusedException(
            String.format(
                Locale.ROOT,
                "the folder %s holds the scenario, which is named as a result",
                folder));
      }
    }
  }

  /**
   * Writes a file that was checked.
   *
   * @throws RefusedException if the name is that of another file by now
   * @throws IOException if it cannot be written
   */
  public void write(Path file, WholeFile.Content content) throws IOException, RefusedException {
    check(file);
    WholeFile.write(file, content);
  }

  private boolean isInput(Path target) throws IOException {
    return input.isPresent()
        && Files.exists(target)
        && Files.exists(input.get())
        && Files.isSameFile(input.get(), target);
  }

  /** An empty file has nothing to lose. */
  private static boolean isOwn(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] head = in.readNBytes(HEAD);
      return head.length == 0 || new String(head, StandardCharsets.UTF_8).contains(MARK);
    }
  }
}
