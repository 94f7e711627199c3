package lastcopy.cli.compare;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lastcopy.charts.ChartException;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.TerminalProgress;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.sentence.Remarks;
import lastcopy.cli.sentence.TypicalWords;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
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
public final class CompareCommand implements Callable<Integer> {

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The scenario.")
  private Path file;

  @Mixin private SimulationOptions simulation;

  @Mixin private OutputOptions outputs;

  @Option(names = "--quiet", description = "Nothing on standard error unless it fails.")
  private boolean quiet;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public CompareCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call()
      throws WrongScenarioException, ChartException, IOException, RefusedException {
    Settings settings = simulation.settings();
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(spec.commandLine(), "no such scenario file: " + file);
    }
    ScenarioLoading.Loaded loaded = host.scenarios().load(file);
    outputs.prepare(file);
    PossibleStudios studios = simulation.over(loaded.studios());
    Studio studio = studios.central();
    Comparison result = simulate(studios, settings);
    Remarks remarks = remarks(loaded, studio, result);
    List<Path> written =
        outputs.write(result, remarks, studio, host, file, spec.root().version()[0]);
    if (!quiet) {
      Wrote.say(host, written);
    }
    if (!quiet && outputs.onlyJson()) {
      warn(remarks.warnings());
    }
    return result.finished() ? ExitStatus.DONE : ExitStatus.INTERRUPTED;
  }

  private Comparison simulate(PossibleStudios studios, Settings settings) {
    Studio studio = studios.central();
    boolean shown = host.terminal() && !quiet;
    PrintStream err = host.err();
    TerminalProgress progress =
        new TerminalProgress(err, shown, host.interruption(), studio::titleOf, System::nanoTime);
    try {
      return host.engine().run(studios, settings, progress);
    } finally {
      progress.end();
    }
  }

  private static Remarks remarks(ScenarioLoading.Loaded loaded, Studio studio, Comparison result) {
    Remarks all = Remarks.of(studio, loaded.warnings());
    Remarks remarks = TypicalWords.sentence(loaded.defaults()).map(all::andCaution).orElse(all);
    return result.finished()
        ? remarks
        : remarks.andWarning(
            "Unfinished: the run was interrupted; the figures are what there was.");
  }

  private void warn(List<String> warnings) {
    for (String warning : warnings) {
      host.err().println("lastcopy: " + warning);
    }
  }
}
