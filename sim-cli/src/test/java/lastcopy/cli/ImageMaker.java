package lastcopy.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.spi.ToolProvider;

/**
 * Packs the finished jar, completion and manual with the parts of Java that they need, by the JDK's
 * jpackage, so that whoever gets the image needs neither Maven nor Java. Not in the jar.
 */
public final class ImageMaker {

  private static final String OS = System.getProperty("os.name").toLowerCase(Locale.ROOT);

  private ImageMaker() {}

  /** Makes the image: the jar, the directory of the manual, where the image goes. */
  public static void main(String[] arguments) throws IOException {
    Path image = make(Path.of(arguments[0]), Path.of(arguments[1]), Path.of(arguments[2]));
    System.out.println("made " + launcher(image));
  }

  /** The JDK's tool; some JDKs come without. */
  static Optional<ToolProvider> tool() {
    return ToolProvider.findFirst("jpackage");
  }

  /** Makes an image in a directory, replacing the one that is there, and returns its directory. */
  static Path make(Path jar, Path manual, Path into) throws IOException {
    Path input = into.resolve("input");
    delete(into);
    Files.createDirectories(input);
    Files.copy(jar, input.resolve("lastcopy.jar"));
    if (Files.isDirectory(manual)) {
      try (var pages = Files.list(manual)) {
        for (Path page : pages.filter(Files::isRegularFile).toList()) {
          Files.copy(page, input.resolve(page.getFileName()));
        }
      }
    }
    List<String> line = new ArrayList<>(List.of("--type", "app-image", "--name", "lastcopy"));
    line.addAll(List.of("--input", input.toString(), "--dest", into.toString()));
    line.addAll(List.of("--main-jar", "lastcopy.jar", "--main-class", "lastcopy.cli.Main"));
    // Charts need java.desktop, which brings XML; nothing else is asked for.
    line.addAll(List.of("--add-modules", "java.desktop"));
    if (OS.startsWith("windows")) {
      line.add("--win-console");
    }
    ToolProvider jpackage = tool().orElseThrow(() -> new IOException("this JDK has no jpackage"));
    int status = jpackage.run(System.out, System.err, line.toArray(String[]::new));
    if (status != 0) {
      throw new IOException("jpackage ends with " + status);
    }
    delete(input);
    return into.resolve(OS.startsWith("mac") ? "lastcopy.app" : "lastcopy");
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
