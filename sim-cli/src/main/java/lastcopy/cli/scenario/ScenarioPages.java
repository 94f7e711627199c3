package lastcopy.cli.scenario;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import lastcopy.cli.scenario.value.Kind;

/** What is written about scenario files, and comes with the program. */
public final class ScenarioPages {

  private ScenarioPages() {}

  /**
   * Every key with its meaning, as Markdown; a test makes it from {@link Kind} and the schema.
   *
   * @throws IOException if it cannot be read
   */
  public static String keys() throws IOException {
    return text("KEYS.md");
  }

  /**
   * A scenario with comments to start from.
   *
   * @throws IOException if it cannot be read
   */
  public static String template() throws IOException {
    return text("template.yaml");
  }

  static String text(String resource) throws IOException {
    try (InputStream in = ScenarioPages.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new FileNotFoundException(resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
