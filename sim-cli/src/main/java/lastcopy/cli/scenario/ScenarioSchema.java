package lastcopy.cli.scenario;

import java.io.IOException;
import lastcopy.cli.scenario.value.Kind;
import lastcopy.cli.scenario.value.UnitTable;

/**
 * The JSON Schema of scenario files, with which an editor completes and explains keys. A test holds
 * its keys against {@link Kind} and its units against {@link UnitTable}; the reader checks more.
 */
public final class ScenarioSchema {

  private static final String RESOURCE = "scenario-1.schema.json";

  private ScenarioSchema() {}

  /**
   * The schema, draft 2020-12, as text.
   *
   * @throws IOException if it cannot be read
   */
  public static String text() throws IOException {
    return ScenarioPages.text(RESOURCE);
  }
}
