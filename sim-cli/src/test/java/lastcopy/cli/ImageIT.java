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

  private static final Path JAR = Path.of("target", "lastcopy.jar").toAbsolutePath();
  private static final Path MANUAL = Path.of("target", "manual").toAbsolutePath();
  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir Path directory;

  @Test
  void theImageDoesWhatTheJarDoes() throws Exception {
    assumeTrue(ImageMaker.tool().isPresent(), "this JDK has no jpackage");
    Path launcher = ImageMaker.launcher(ImageMaker.make(JAR, MANUAL, directory.resolve("image")));
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
    try (var found = Files.walk(directory.resolve("image"))) {
      assertThat(found.map(f -> f.getFileName().toString()))
          .contains("lastcopy_completion", "lastcopy-compare.adoc");
    }
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
