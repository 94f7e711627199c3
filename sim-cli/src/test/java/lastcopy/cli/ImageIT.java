package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The image that needs no Java: made by jpackage, and run. */
class ImageIT {

  private static final Path TARGET = Path.of("target").toAbsolutePath();
  private static final Path JAR = TARGET.resolve("lastcopy.jar");
  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir Path directory;

  @Test
  void theImageDoesWhatTheJarDoes() throws Exception {
    assumeTrue(ImageMaker.tool().isPresent(), "this JDK has no jpackage");
    Path image = ImageMaker.make(ImageMaker.Parts.of(TARGET), directory.resolve("image"));
    Path launcher = ImageMaker.launcher(image);
    assertThat(run(List.of(launcher.toString(), "--version"))).startsWith("lastcopy ");
    List<String> compare =
        List.of(
            "compare",
            DEMO.toAbsolutePath().toString(),
            "--histories",
            "500",
            "--charts",
            directory.resolve("charts").toString());
    List<String> java =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-jar",
            JAR.toString());
    String told = run(joined(List.of(launcher.toString()), compare));
    assertThat(told).contains("Tern Street Films").isEqualTo(run(joined(java, compare)));
    for (String name : List.of("loss-curve.png", "loss-curve.svg", "exceedance.png")) {
      assertThat(directory.resolve("charts").resolve(name)).isNotEmptyFile();
    }
    String completion = ImageMaker.byScript() ? "lastcopy" : "lastcopy_completion";
    String page = ImageMaker.byScript() ? "lastcopy-compare.1" : "lastcopy-compare.adoc";
    try (var found = Files.walk(image)) {
      assertThat(found.map(f -> f.getFileName().toString())).contains(completion, page);
    }
    if (ImageMaker.byScript()) {
      itsArchiveIsOfItsPlace(image);
    }
  }

  /**
   * Java is asked to do without nothing: it ends if the archive is not of this Java, this jar and
   * this place. Red if the script makes none, or none after the image was moved.
   */
  private void itsArchiveIsOfItsPlace(Path image) throws Exception {
    assertThat(startsFromItsArchive(image)).startsWith("lastcopy ");
    Path moved = Files.move(image, directory.resolve("moved elsewhere"));
    Path link = Files.createSymbolicLink(directory.resolve("link"), ImageMaker.launcher(moved));
    assertThat(run(List.of(link.toString(), "--version"))).startsWith("lastcopy ");
    assertThat(startsFromItsArchive(moved)).startsWith("lastcopy ");
  }

  private String startsFromItsArchive(Path image) throws Exception {
    Path app = image.resolve("lib").resolve("app");
    return run(
        List.of(
            image.resolve("lib/runtime/bin/java").toString(),
            "-Xshare:on",
            "-XX:+UseSerialGC",
            "-XX:SharedArchiveFile=" + app.resolve("lastcopy.jsa"),
            "-jar",
            app.resolve("lastcopy.jar").toString(),
            "--version"));
  }

  private static List<String> joined(List<String> first, List<String> second) {
    List<String> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /** Without what an owner has not: no Java is named in the environment. */
  private String run(List<String> line) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.environment().remove("JAVA_HOME");
    Path output = directory.resolve("output.txt");
    Process process = builder.redirectOutput(output.toFile()).start();
    assertThat(process.waitFor()).as(Files.readString(output)).isZero();
    return Files.readString(output);
  }
}
