package lastcopy.cli.host;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lastcopy.cli.output.OpenWords;
import lastcopy.cli.scenario.Scenario;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;

/** Where commands get their scenario from. */
public final class ScenarioLoading {

  /** Reads a scenario. */
  @FunctionalInterface
  public interface Reading {
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
   * @param studios what it says, in each possible world
   * @param warnings sentences for whoever reads the result, possibly none
   * @param defaults each default that was used, and each typical value
   */
  public record Loaded(PossibleStudios studios, List<String> warnings, List<Default> defaults) {
    public Loaded {
      warnings = List.copyOf(warnings);
      defaults = List.copyOf(defaults);
    }

    /** A scenario of which all is known, and that names everything. */
    public Loaded(Studio studio, List<String> warnings) {
      this(PossibleStudios.only(studio), warnings, List.of());
    }

    /** The studio in which each unknown has its median. */
    public Studio studio() {
      return studios.central();
    }
  }

  private static final int MOST_SHOWN = 50;

  private ScenarioLoading() {}

  /**
   * Reads a scenario file.
   *
   * @throws WrongScenarioException if it is wrong
   * @throws IOException if it cannot be read
   */
  public static Loaded fromFile(Path file) throws WrongScenarioException, IOException {
    Scenario scenario = read(file);
    return new Loaded(
        scenario.studios(),
        OpenWords.sentence(scenario.open()).map(List::of).orElse(List.of()),
        scenario.defaults());
  }

  /**
   * Reads a scenario file with the defaults that it used.
   *
   * @throws WrongScenarioException if it is wrong
   * @throws IOException if it cannot be read
   */
  public static Scenario read(Path file) throws WrongScenarioException, IOException {
    try {
      return ScenarioReader.read(file);
    } catch (ScenarioException e) {
      throw new WrongScenarioException(shown(e.problems()));
    }
  }

  /** Messages of problems, the first of many. */
  public static List<String> shown(List<Problem> problems) {
    List<String> lines = new ArrayList<>();
    problems.stream().limit(MOST_SHOWN).map(Problem::toString).forEach(lines::add);
    int more = problems.size() - lines.size();
    if (more > 0) {
      lines.add(String.format(Locale.ROOT, "... and %,d more like these", more));
    }
    return lines;
  }
}
