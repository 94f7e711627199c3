package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import lastcopy.scenario.Layout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The scenarios that come with the program, and reading from a file. */
class ScenarioFilesTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");

  static Stream<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void everyScenarioCanBeRead(Path file) throws Exception {
    assertThat(ScenarioReader.read(file).studio().layouts()).isNotEmpty();
  }

  @Test
  void harbourHasThreeLayoutsWithOneWorkingCopyName() throws Exception {
    Scenario scenario = ScenarioReader.read(SCENARIOS.resolve("harbour-mirror-or-far-copy.yaml"));
    assertThat(scenario.studio().layouts())
        .extracting(Layout::id)
        .containsExactly("one-drive", "mirror", "drive-and-far-copy");
    assertThat(scenario.studio().layouts())
        .allSatisfy(layout -> assertThat(layout.workingCopy().id()).isEqualTo("main"));
    assertThat(scenario.defaults())
        .noneMatch(d -> d.key().equals("noticed") || d.key().equals("wait"));
  }

  @Test
  void aFileThatIsNoTextIsOneProblem(@TempDir Path dir) throws Exception {
    Path file = Files.write(dir.resolve("photo.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0});
    assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> ScenarioReader.read(file)))
        .isInstanceOf(ScenarioException.class)
        .hasMessageEndingWith(
            "photo.yaml:1:1: found bytes that are no text in UTF-8; accepted: YAML 1.2 in UTF-8.");
  }
}
