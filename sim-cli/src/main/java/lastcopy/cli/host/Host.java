package lastcopy.cli.host;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.Supplier;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;

/**
 * What a command needs of the world around it, so that tests can give another.
 *
 * @param out for results
 * @param err for progress, warnings and messages
 * @param terminal whether somebody watches a terminal
 * @param scenarios reads scenario files
 * @param engine simulates
 * @param today the date printed on charts
 * @param interruption whether the user asked to stop
 * @param environment variables that say how a terminal is
 */
public record Host(
    PrintStream out,
    PrintStream err,
    boolean terminal,
    ScenarioLoading.Reading scenarios,
    Engine engine,
    Supplier<LocalDate> today,
    Interruption interruption,
    Map<String, String> environment) {

  /** Copies the map. */
  public Host {
    environment = Map.copyOf(environment);
  }

  /** A host whose environment says nothing. */
  public Host(
      PrintStream out,
      PrintStream err,
      boolean terminal,
      ScenarioLoading.Reading scenarios,
      Engine engine,
      Supplier<LocalDate> today,
      Interruption interruption) {
    this(out, err, terminal, scenarios, engine, today, interruption, Map.of());
  }

  /** Simulates a studio, in each possible world. */
  @FunctionalInterface
  public interface Engine {
    /**
     * Simulates every layout.
     *
     * @throws UnsupportedOperationException if the studio uses what is not built, with a sentence
     */
    Comparison run(PossibleStudios studios, Settings settings, Progress progress);
  }
}
