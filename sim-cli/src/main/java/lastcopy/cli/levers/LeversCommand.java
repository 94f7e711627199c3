package lastcopy.cli.levers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lastcopy.charts.ChartException;
import lastcopy.cli.edit.ScenarioTree;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.TerminalProgress;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.ChartOptions;
import lastcopy.cli.option.ConfidenceOption;
import lastcopy.cli.option.Converters;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.LayoutOption;
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.option.WriteOption;
import lastcopy.cli.option.YearsOption;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.decide.effect.EffectMeasurement;
import lastcopy.decide.effect.Effects;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Layout;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which single change of a layout lowers the risk most, and what it costs. */
@Command(
    name = "levers",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Find the single changes of a layout that take most off its risk.")
public final class LeversCommand implements Callable<Integer> {

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The scenario.")
  private Path file;

  @Mixin private LayoutOption chosen;

  @Mixin private YearsOption years;

  @Mixin private LuckOptions luck;

  @Mixin private ConfidenceOption confidence;

  @Option(
      names = "--precision",
      paramLabel = "PERCENT",
      defaultValue = "5%",
      converter = Converters.Percent.class,
      description =
          "Stop when the chance of loss is known that closely and the first three changes are apart"
              + " from the rest (default: 5%%).")
  private double precision;

  @Option(
      names = "--time",
      paramLabel = "TIME",
      defaultValue = "12s",
      converter = Converters.Time.class,
      description = "Stop after that time, such as 10s or 5min, or none (default: 12s).")
  private Converters.TimeCap time;

  @Option(
      names = "--histories",
      paramLabel = "N",
      converter = Converters.Count.class,
      description = "Stop after that many histories of each change.")
  private Long histories;

  @Option(
      names = "--method",
      paramLabel = "METHOD",
      defaultValue = "auto",
      converter = Converters.MethodName.class,
      description = "How losses are estimated: auto, plain or rare (default: auto).")
  private Method method;

  @Mixin private WriteOption written;

  @Mixin private JsonOption json;

  @Mixin private ChartOptions charts;

  @Mixin private PageOptions page;

  @Option(names = "--quiet", description = "Nothing on standard error unless it fails.")
  private boolean quiet;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public LeversCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call()
      throws WrongScenarioException, ChartException, IOException, RefusedException {
    if (!Files.isRegularFile(file)) {
      throw wrong("no such scenario file: " + file);
    }
    PossibleStudios studios = years.over(host.scenarios().load(file).studios());
    Layout layout = chosen.in(studios.central());
    json.prepare(Optional.of(file));
    charts.prepare(json.beside(Optional.of(file)));
    written.prepare(json, file);
    LeverStudy study = study(studios.central(), layout);
    LeverFindings findings = measure(study, !studios.isOne());
    List<Path> files = write(findings);
    if (!quiet) {
      Wrote.say(host, files);
    }
    return findings.isFinished() ? ExitStatus.DONE : ExitStatus.INTERRUPTED;
  }

  private LeverStudy study(Studio studio, Layout layout)
      throws WrongScenarioException, IOException {
    try {
      ScenarioTree tree =
          ScenarioTree.read(file).today().with(List.of("years"), Double.toString(studio.years()));
      return LeverStudy.of(tree, studio, layout);
    } catch (ScenarioException e) {
      throw new WrongScenarioException(ScenarioLoading.shown(e.problems()));
    }
  }

  private Settings settings() {
    return new Settings(
        luck.seed(),
        confidence.value(),
        precision,
        histories == null ? OptionalLong.empty() : OptionalLong.of(histories),
        time.duration(),
        luck.threads(),
        method);
  }

  /** Deeds have half of the time; numbers, and where they turn the order round, a quarter each. */
  private LeverFindings measure(LeverStudy study, boolean isMedian) {
    TerminalProgress progress =
        new TerminalProgress(
            host.err(),
            host.terminal() && !quiet,
            host.interruption(),
            id -> study.layout().title(),
            System::nanoTime);
    Settings settings = settings();
    Settings aQuarter = withTime(settings, settings.time().map(all -> all.dividedBy(4)));
    try {
      Effects effects =
          EffectMeasurement.run(
              study.base(),
              study.others(),
              withTime(settings, settings.time().map(all -> all.dividedBy(2))),
              progress);
      Optional<AssumptionStudy> assumptions =
          effects.finished()
              ? AssumptionStudy.of(study.studio(), study.layout(), aQuarter, progress)
              : Optional.empty();
      boolean finished = effects.finished() && !progress.cancelled();
      return new LeverFindings(study, effects, assumptions, settings, isMedian, finished);
    } finally {
      progress.end();
    }
  }

  private static Settings withTime(Settings of, Optional<Duration> time) {
    return new Settings(
        of.seed(),
        of.confidence(),
        of.precision(),
        of.histories(),
        time,
        of.threads(),
        of.method());
  }

  private List<Path> write(LeverFindings findings)
      throws ChartException, IOException, RefusedException {
    List<Path> files =
        new ArrayList<>(
            json.write(
                host,
                Optional.of(file),
                LeversText.of(findings, page.on(host)),
                out -> LeversJson.write(findings, out)));
    if (charts.folder().isPresent()) {
      files.addAll(
          LeverBars.write(
              findings,
              LeversText.outOf(findings.effects()),
              host.today().get(),
              charts.folder().get(),
              charts.formats()));
    }
    List<String> comments =
        List.of(
            "A layout of "
                + file.getFileName()
                + " as it is, and one for each change that levers found.",
            "Comments of that file are not kept.");
    files.addAll(written.write(json, file, out -> findings.study().whole().writeTo(out, comments)));
    return files;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
