package lastcopy.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.spi.ToolProvider;

/**
 * Packs the finished jar, completion and manual with the parts of Java that they need, by the JDK's
 * jpackage, so that whoever gets the image needs neither Maven nor Java. Not in the jar.
 *
 * <p>On Linux the image starts by the script that also starts the jar, with completion and manual
 * where shells and {@code man} look for them; elsewhere by jpackage's own program.
 */
public final class ImageMaker {

  private static final String OS = System.getProperty("os.name").toLowerCase(Locale.ROOT);

  /** jpackage's own, but for the command {@code java}, which the script needs. */
  private static final String JLINK = "--strip-debug --no-man-pages --no-header-files";

  /**
   * What an image is made of, all made by the build before.
   *
   * @param jar the program
   * @param classes the names of the classes that a run loads, for an archive of them
   * @param manual the folder of completion and manual
   * @param script what starts the jar
   */
  record Parts(Path jar, Path classes, Path manual, Path script) {

    /** As the build of this module leaves them in a folder. */
    static Parts of(Path target) {
      return new Parts(
          target.resolve("lastcopy.jar"),
          target.resolve("archive").resolve("classes.txt"),
          target.resolve("manual"),
          target.resolveSibling("lastcopy"));
    }
  }

  private ImageMaker() {}

  /** Makes the image: the folder of what was built, where the image goes. */
  public static void main(String[] arguments) throws IOException {
    Path image = make(Parts.of(Path.of(arguments[0])), Path.of(arguments[1]));
    System.out.println("made " + launcher(image));
  }

  /** The JDK's tool; some JDKs come without. */
  static Optional<ToolProvider> tool() {
    return ToolProvider.findFirst("jpackage");
  }

  /** Whether the image starts by the script. */
  static boolean byScript() {
    return OS.startsWith("linux");
  }

  /** Makes an image in a folder, replacing the one that is there, and returns its folder. */
  static Path make(Parts parts, Path into) throws IOException {
    Path input = into.resolve("input");
    delete(into);
    Files.createDirectories(input);
    Files.copy(parts.jar, input.resolve("lastcopy.jar"));
    if (byScript()) {
      copyIfThere(parts.classes, input.resolve("classes.txt"));
    } else {
      copyAll(parts.manual, input);
    }
    pack(input, into);
    delete(input);
    Path image = into.resolve(OS.startsWith("mac") ? "lastcopy.app" : "lastcopy");
    if (byScript()) {
      Path share = image.resolve("share");
      copyAll(parts.manual.resolve("man1"), share.resolve("man").resolve("man1"));
      copyIfThere(
          parts.manual.resolve("lastcopy_completion"),
          share.resolve("bash-completion").resolve("completions").resolve("lastcopy"));
      Files.copy(
          parts.script,
          launcher(image),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.COPY_ATTRIBUTES);
    }
    return image;
  }

  private static void pack(Path input, Path into) throws IOException {
    List<String> line = new ArrayList<>(List.of("--type", "app-image", "--name", "lastcopy"));
    line.addAll(List.of("--input", input.toString(), "--dest", into.toString()));
    line.addAll(List.of("--main-jar", "lastcopy.jar", "--main-class", "lastcopy.cli.Main"));
    // Charts need java.desktop, which brings XML; nothing else is asked for.
    line.addAll(List.of("--add-modules", "java.desktop"));
    if (byScript()) {
      line.addAll(List.of("--jlink-options", JLINK));
    }
    if (OS.startsWith("windows")) {
      line.add("--win-console");
    }
    ToolProvider jpackage = tool().orElseThrow(() -> new IOException("this JDK has no jpackage"));
    int status = jpackage.run(System.out, System.err, line.toArray(String[]::new));
    if (status != 0) {
      throw new IOException("jpackage ends with " + status);
    }
  }

  private static void copyIfThere(Path file, Path to) throws IOException {
    if (Files.isRegularFile(file)) {
      Files.createDirectories(to.getParent());
      Files.copy(file, to);
    }
  }

  private static void copyAll(Path folder, Path to) throws IOException {
    if (Files.isDirectory(folder)) {
      try (var files = Files.list(folder)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          copyIfThere(file, to.resolve(file.getFileName()));
        }
      }
    }
  }

  /** The program of an image. */
  static Path launcher(Path image) {
    if (OS.startsWith("windows")) {
      return image.resolve("lastcopy.exe");
    }
    return OS.startsWith("mac")
        ? image.resolve("Contents/MacOS/lastcopy")
        : image.resolve("bin/lastcopy");
  }

  private static void delete(Path directory) throws IOException {
    if (Files.exists(directory)) {
      try (var found = Files.walk(directory)) {
        for (Path path : found.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
