package lastcopy.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import lastcopy.charts.ChartException;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Warning;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Comparison;
import lastcopy.simulate.Settings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The main job: simulates each layout of a scenario and tells how they compare. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Simulate each layout of a scenario and compare them.")
final class CompareCommand implements Callable<Integer> {

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The scenario.")
  private Path file;

  @Mixin private SimulationOptions simulation;

  @Mixin private OutputOptions outputs;

  @Option(names = "--quiet", description = "No progress and no warnings on standard error.")
  private boolean quiet;

  @Option(names = "--trace", description = "Show where a failure came from.")
  // Failures look for it among the arguments, since those may be what is wrong.
  @SuppressWarnings("UnusedVariable")
  private boolean trace;

  /** Warnings without which a figure would be misread; the rest is for {@code inspect}. */
  private static final Set<String> BESIDE_THE_FIGURES =
      Set.of("seen-at-once", "rate-above-hardware", "fills", "feed-too-slow", "run-at-shoot");

  CompareCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call() throws WrongScenarioException, ChartException, IOException {
    Settings settings = simulation.settings();
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(spec.commandLine(), "no such scenario file: " + file);
    }
    ScenarioLoading.Loaded loaded = host.scenarios().load(file);
    outputs.prepare();
    Studio studio = simulation.over(loaded.studio());
    Comparison result = simulate(studio, settings);
    List<String> warnings = warnings(loaded, studio, result);
    outputs.write(result, warnings, host);
    if (!quiet && outputs.onlyJson()) {
      warn(warnings);
    }
    return result.finished() ? ExitStatus.DONE : ExitStatus.INTERRUPTED;
  }

  private Comparison simulate(Studio studio, Settings settings) {
    boolean shown = host.terminal() && !quiet;
    PrintStream err = host.err();
    TerminalProgress progress =
        new TerminalProgress(err, shown, host.interruption(), System::nanoTime);
    try {
      return host.engine().run(studio, settings, progress);
    } finally {
      progress.end();
    }
  }

  private static List<String> warnings(
      ScenarioLoading.Loaded loaded, Studio studio, Comparison result) {
    List<String> warnings = new ArrayList<>(loaded.warnings());
    for (Outlook outlook : Outlook.of(studio)) {
      for (Warning warning : outlook.warnings()) {
        if (BESIDE_THE_FIGURES.contains(warning.id())) {
          String copy = warning.copy().isEmpty() ? "" : ", " + warning.copy();
          warnings.add(outlook.layout().id() + copy + ": " + warning.text());
        }
      }
    }
    if (!result.finished()) {
      warnings.add("Unfinished: the run was interrupted; the figures are what there was.");
    }
    return warnings;
  }

  private void warn(List<String> warnings) {
    for (String warning : warnings) {
      host.err().println("lastcopy: " + warning);
    }
  }
}
