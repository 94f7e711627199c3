package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lastcopy.cli.scenario.value.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The reference of keys is what the table and the schema make. To renew it after a change that is
 * meant: {@code mvn test -pl sim-cli -am -Dtest=KeysPageTest -Drenew
 * -Dsurefire.failIfNoSpecifiedTests=false}
 */
class KeysPageTest {

  private static final Path STORED = Path.of("..", "scenarios", "KEYS.md");

  @Test
  void theStoredPageIsTheOneThatIsMade() throws IOException {
    String made = KeysPage.make();
    if (System.getProperty("renew") != null) {
      Files.writeString(STORED, made);
    }
    assertThat(made).isEqualTo(Files.readString(STORED));
    assertThat(ScenarioPages.keys()).isEqualTo(made);
  }

  /** Each key stands in the section of its kind, with a meaning and a value. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyKeyIsExplained(Kind kind) throws IOException {
    String page = ScenarioPages.keys();
    int from = page.indexOf("\n## " + kind.phrase() + "\n");
    assertThat(from).isPositive();
    int to = page.indexOf("\n## ", from + 1);
    String section = page.substring(from, to < 0 ? page.length() : to);
    for (String key : kind.keys()) {
      assertThat(section)
          .containsPattern("(?m)^\\| (\\*\\*)?`" + key + "`(\\*\\*)? \\| [^|]+ \\| [^|]+ \\|$");
    }
  }
}
