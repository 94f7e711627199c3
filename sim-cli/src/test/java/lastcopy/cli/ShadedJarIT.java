package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lastcopy.cli.host.ExitStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The finished jar: every command runs from it, and what its libraries ask for is in it. */
class ShadedJarIT {

  private static final Path JAR = Path.of("target", "lastcopy.jar").toAbsolutePath();
  private static final String DEMO =
      Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml").toAbsolutePath().toString();

  @TempDir Path directory;

  @ParameterizedTest
  @ValueSource(
      strings = {"compare", "inspect", "story", "levers", "advise", "fit", "rates", "prove", "ask"})
  void everyCommandExplainsItself(String command) throws Exception {
    assertThat(run("-jar", JAR.toString(), command, "--help"))
        .contains("Usage: lastcopy " + command);
  }

  /** Every line is computed from the jar, so that no class of the proof was left out of it. */
  @Test
  void everyLineOfTheProofIsThere() throws Exception {
    assertThat(run("-jar", JAR.toString(), "prove")).contains("lines hold.");
  }

  /** The class that sets up a terminal is asked for by name. */
  @Test
  void whatIsAskedIsWritten() throws Exception {
    String file = at("asked.yaml");
    assertThat(run("-jar", JAR.toString(), "ask", "--write", file)).contains("far-drive: ");
    assertThat(run("-jar", JAR.toString(), "inspect", file)).contains("My studio");
    try (JarFile jar = new JarFile(JAR.toFile())) {
      assertThat(text(jar, "META-INF/services/org/jline/terminal/provider/exec"))
          .contains("org.jline.terminal.impl.exec.ExecTerminalProvider");
      assertThat(bytes(jar, "org/jline/terminal/impl/exec/ExecTerminalProvider.class"))
          .isNotEmpty();
    }
  }

  /** Possible worlds need a table of commons-math, and the page its template. */
  @Test
  void rangesAndThePageWorkFromTheJar() throws Exception {
    Path ranges = directory.resolve("ranges.yaml");
    String demo = Files.readString(Path.of(DEMO));
    String unsure = demo.replace("{typical: hard-disk}", "{typical: hard-disk, level: unsure}");
    assertThat(unsure).isNotEqualTo(demo);
    Files.writeString(ranges, unsure);
    String page = at("page.html");
    run(
        "-jar",
        JAR.toString(),
        "compare",
        ranges.toString(),
        "--histories",
        "3000",
        "--report",
        page);
    assertThat(Files.readString(Path.of(page)))
        .contains("<!DOCTYPE html>", "Tern Street Films", "possible worlds");
  }

  /** Classes that were left out, and that something asks for by name, would be missed here. */
  @Test
  void comparingWritesTablesAndChartsOfBothFormats() throws Exception {
    String told =
        run(
            "-jar",
            JAR.toString(),
            "compare",
            DEMO,
            "--histories",
            "3000",
            "--json",
            at("result.json"),
            "--csv",
            at("tables"),
            "--charts",
            at("charts"));
    assertThat(told).contains("Tern Street Films");
    assertThat(Files.readString(directory.resolve("result.json"))).contains("lastcopy-result/1");
    try (Stream<Path> tables = Files.list(directory.resolve("tables"))) {
      assertThat(tables).isNotEmpty();
    }
    for (String name : List.of("loss-curve", "exceedance")) {
      Path png = directory.resolve("charts").resolve(name + ".png");
      assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(900);
      Path svg = directory.resolve("charts").resolve(name + ".svg");
      String root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(svg.toFile())
              .getDocumentElement()
              .getTagName();
      assertThat(root).isEqualTo("svg");
    }
  }

  @Test
  void inspectingReadsAScenarioAndItsMistakes() throws Exception {
    String jar = JAR.toString();
    assertThat(run("-jar", jar, "inspect", DEMO, "--json", "-")).contains("lastcopy-inspect/1");
    assertThat(run("-jar", jar, "inspect", "--schema")).contains("json-schema.org");
    Path wrong = directory.resolve("wrong.yaml");
    Files.writeString(wrong, Files.readString(Path.of(DEMO)).replace("footage:", "fotage:"));
    assertThat(run(ExitStatus.SCENARIO, List.of("-jar", jar, "inspect", wrong.toString())))
        .contains("Did you mean 'footage'");
  }

  @Test
  void aStoryIsTold() throws Exception {
    String told =
        run("-jar", JAR.toString(), "story", DEMO, "--layout", "one-drive", "--json", "-");
    assertThat(told).contains("lastcopy-story/1");
  }

  @Test
  void recordsAreFitted() throws Exception {
    Path records = Path.of("..", "scenarios", "records-of-a-studio.csv").toAbsolutePath();
    String told =
        run(
            "-jar",
            JAR.toString(),
            "fit",
            records.toString(),
            "--charts",
            at("charts"),
            "--json",
            "-");
    assertThat(told).contains("lastcopy-fit/1");
    for (String name : List.of("survival", "survival-by-group", "probability-plot")) {
      Path png = directory.resolve("charts").resolve(name + ".png");
      assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(900);
    }
  }

  /** The LGPL asks that JFreeChart can be exchanged; NOTICE says how. */
  @Test
  void anotherChartLibraryIsTakenWhenItComesFirst() throws Exception {
    Path other = chartLibrary();
    String loaded =
        run(
            "-Xlog:class+load",
            "-cp",
            other + java.io.File.pathSeparator + JAR,
            "lastcopy.cli.Main",
            "compare",
            DEMO,
            "--histories",
            "1000",
            "--charts",
            at("charts"));
    List<String> charts =
        loaded
            .lines()
            .filter(l -> l.contains(" org.jfree.") && l.contains("source:"))
            .filter(l -> !l.contains("$$Lambda")) // made at run time, from no file
            .toList();
    assertThat(charts).isNotEmpty().allMatch(l -> l.contains(other.getFileName().toString()));
    assertThat(directory.resolve("charts").resolve("loss-curve.png")).isNotEmptyFile();
  }

  @Test
  void theChartLibraryIsWholeAndUnchanged() throws Exception {
    try (JarFile own = new JarFile(JAR.toFile());
        JarFile published = new JarFile(chartLibrary().toFile())) {
      List<String> names =
          published.stream().map(e -> e.getName()).filter(n -> n.endsWith(".class")).toList();
      assertThat(names).hasSizeGreaterThan(500);
      for (String name : names) {
        if (!name.equals("module-info.class")) {
          assertThat(bytes(own, name)).as(name).isEqualTo(bytes(published, name));
        }
      }
    }
  }

  /**
   * A library without a text of its own must be named in NOTICE, and only one is under the LGPL.
   */
  @Test
  void everyLibraryHasItsLicence() throws Exception {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      String notice = text(jar, "META-INF/NOTICE");
      assertThat(text(jar, "META-INF/LICENSE")).contains("Apache License", "Version 2.0");
      List<String> libraries =
          text(jar, "META-INF/licenses/THIRD-PARTY.txt")
              .lines()
              .filter(l -> l.contains(" - ") && !l.contains("(lastcopy:"))
              .toList();
      assertThat(libraries).hasSizeGreaterThan(15);
      Set<String> lgpl = new TreeSet<>();
      for (String library : libraries) {
        String artifact = library.replaceFirst(".*\\([^ ]*?:([^: ]*):.*", "$1");
        Set<String> texts = under(jar, "META-INF/licenses/" + artifact + "-jar/");
        assertThat(texts.stream().anyMatch(t -> t.contains("LICENSE")) || notice.contains(artifact))
            .as(library)
            .isTrue();
        if (library.contains("(LGPL")) {
          lgpl.add(artifact);
        }
      }
      assertThat(lgpl).containsExactly("jfreechart");
      assertThat(text(jar, "META-INF/licenses/jfreechart-jar/LICENSE"))
          .contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 2.1, February 1999");
      assertThat(under(jar, "META-INF/licenses/jackson-core-jar/"))
          .anyMatch(t -> t.endsWith("FastDoubleParser-LICENSE"))
          .anyMatch(t -> t.endsWith("Schubfach-LICENSE"));
      assertThat(under(jar, "META-INF/licenses/commons-math3-jar/"))
          .anyMatch(t -> t.contains("NOTICE"));
    }
  }

  /** Red if jars keep the permissions that the umask of whoever builds them left. */
  @ParameterizedTest
  @ValueSource(strings = {"sim-engine", "charts", "sim-cli"})
  void permissionsAreTheSameWhoeverBuilds(String module) throws Exception {
    List<Path> jars;
    try (Stream<Path> built = Files.list(Path.of("..", module, "target"))) {
      jars = built.filter(file -> file.toString().endsWith(".jar")).toList();
    }
    assertThat(jars).isNotEmpty();
    for (Path jar : jars) {
      try (FileSystem zip =
              FileSystems.newFileSystem(jar, Map.of("enablePosixFileAttributes", "true"));
          Stream<Path> files = Files.walk(zip.getPath("/"))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Object permissions = Files.getAttribute(file, "zip:permissions");
          assertThat(permissions == null ? "none" : permissions)
              .as(jar + ": " + file)
              .isIn("none", PosixFilePermissions.fromString("rw-r--r--"));
        }
      }
    }
  }

  /** Parts of libraries that nothing here refers to. */
  @Test
  void nothingNeedlessIsInTheJar() throws Exception {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      Set<String> names =
          jar.stream()
              .map(e -> e.getName())
              .filter(n -> !n.endsWith("/") && !n.endsWith("package-info.class"))
              .collect(Collectors.toSet());
      assertThat(names)
          .noneMatch(n -> n.startsWith("org/jfree/svg"))
          .noneMatch(n -> n.startsWith("org/apache/commons/codec/language"))
          .noneMatch(n -> n.startsWith("org/apache/commons/math3/geometry/euclidean"))
          .noneMatch(n -> n.startsWith("org/apache/commons/math3/ode"))
          // The one table is that of Sobol's points, which possible worlds are drawn from.
          .filteredOn(n -> n.startsWith("assets/"))
          .allMatch(n -> n.contains("new-joe-kuo"));
      assertThat(names).noneMatch(n -> n.startsWith("META-INF/maven/"));
    }
  }

  private static Path chartLibrary() throws Exception {
    return Path.of(
        org.jfree.chart.JFreeChart.class
            .getProtectionDomain()
            .getCodeSource()
            .getLocation()
            .toURI());
  }

  private static Set<String> under(JarFile jar, String folder) {
    return jar.stream()
        .map(e -> e.getName())
        .filter(n -> n.startsWith(folder))
        .collect(Collectors.toSet());
  }

  private static String text(JarFile jar, String name) throws IOException {
    return new String(bytes(jar, name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(JarFile jar, String name) throws IOException {
    assertThat(jar.getEntry(name)).as(name).isNotNull();
    try (InputStream in = jar.getInputStream(jar.getEntry(name))) {
      return in.readAllBytes();
    }
  }

  private String at(String name) {
    return directory.resolve(name).toString();
  }

  private String run(String... arguments) throws Exception {
    return run(ExitStatus.DONE, List.of(arguments));
  }

  private String run(int status, List<String> arguments) throws Exception {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(arguments);
    Path output = directory.resolve("output.txt");
    Process process =
        new ProcessBuilder(line)
            .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertThat(process.waitFor()).as(Files.readString(output)).isEqualTo(status);
    return Files.readString(output);
  }
}
