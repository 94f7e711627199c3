package lastcopy.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lastcopy.scenario.Studio;

/** Where commands get their scenario from. */
final class ScenarioLoading {

  /** Reads a scenario. */
  @FunctionalInterface
  interface Loader {
    /**
     * Reads and checks a scenario.
     *
     * @throws WrongScenarioException if it is wrong
     * @throws IOException if it cannot be read
     */
    Loaded load(Path file) throws WrongScenarioException, IOException;
  }

  /**
   * A scenario that was read.
   *
   * @param studio what it says
   * @param warnings sentences for whoever reads the result, possibly none
   */
  record Loaded(Studio studio, List<String> warnings) {
    Loaded {
      warnings = List.copyOf(warnings);
    }
  }

  private ScenarioLoading() {}

  /**
   * Reads a scenario file.
   *
   * @throws WrongScenarioException if it is wrong
   * @throws IOException if it cannot be read
   */
  static Loaded fromFile(Path file) throws WrongScenarioException, IOException {
    throw new UnsupportedOperationException("scenario files cannot be read yet: " + file);
  }
}
