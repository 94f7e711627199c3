package lastcopy.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.WrongScenarioException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said where a file leaves something open, and where it does not. */
class OpenWordsTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {ingest: 1 TB/year}
      drives: {d: {size: 8 TB, fails: 1 %/year}}
      layouts: {one: {copies: {main: {drives: 2 x d, arrangement: mirror, noticed: 1 day}}}}
      """;

  @TempDir Path folder;

  private String warnings(String text) throws IOException, WrongScenarioException {
    Path file = Files.writeString(folder.resolve("a.yaml"), text);
    return String.join(" ", ScenarioLoading.fromFile(file).warnings());
  }

  @Test
  void itIsSaidHowMuchIsOpen() throws Exception {
    assertThat(warnings(STUDIO)).isEmpty();
    assertThat(warnings(STUDIO.replace("noticed: 1 day", "noticed: {one_of: [1 day, 2 days]}")))
        .isEqualTo(
            "The file leaves one choice open, 2 layouts in all: what is there today is taken here;"
                + " advise weighs them all.");
    String two =
        STUDIO
            .replace("noticed: 1 day", "noticed: {one_of: [1 day, 2 days]}")
            .replace("2 x d", "{one_of: [2 x d, 3 x d, 4 x d]}");
    assertThat(warnings(two)).startsWith("The file leaves 2 choices open, 6 layouts in all:");
  }
}
