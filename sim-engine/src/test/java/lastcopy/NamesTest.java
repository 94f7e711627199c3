package lastcopy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whoever reads of a class must not have to ask which one. Read from the sources of all modules,
 * since no module's classes see all others.
 */
class NamesTest {

  private static final List<String> MODULES = List.of("sim-engine", "charts", "sim-cli");

  private static final Pattern NESTED =
      Pattern.compile("(?m)^ +([a-z -]*)\\b(?:class|record|enum|interface) ([A-Z]\\w*)");

  /** Red when a test has a class of the name of another, or of one that it tests. */
  @Test
  void noTwoClassesHaveOneName() throws IOException {
    Map<String, List<Path>> byName = new HashMap<>();
    for (String module : MODULES) {
      for (Path file : sources(module, "src")) {
        byName.computeIfAbsent(name(file), name -> new ArrayList<>()).add(file);
      }
    }
    assertThat(byName).hasSizeGreaterThan(500);
    byName.values().removeIf(files -> files.size() == 1);
    assertThat(byName).isEmpty();
  }

  /** Red when a record within another is named as a class of the same module is. */
  @Test
  void noClassWithinAnotherIsNamedAsOneOfItsModule() throws IOException {
    List<String> found = new ArrayList<>();
    for (String module : MODULES) {
      Set<String> names = new HashSet<>();
      List<Path> files = sources(module, "src/main");
      files.forEach(file -> names.add(name(file)));
      for (Path file : files) {
        Matcher nested = NESTED.matcher(Files.readString(file));
        while (nested.find()) {
          if (!nested.group(1).contains("private") && names.contains(nested.group(2))) {
            found.add(name(file) + "." + nested.group(2));
          }
        }
      }
    }
    assertThat(found).isEmpty();
  }

  /** Red when a package does not say what it is for. */
  @Test
  void everyPackageSaysWhatItIsFor() throws IOException {
    List<Path> silent = new ArrayList<>();
    for (String module : MODULES) {
      for (Path file : sources(module, "src/main")) {
        Path said = file.resolveSibling("package-info.java");
        if (!Files.exists(said) && !silent.contains(said)) {
          silent.add(said);
        }
      }
    }
    assertThat(silent).isEmpty();
  }

  private static List<Path> sources(String module, String folder) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("..", module).resolve(folder))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .toList();
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }
}
