package lastcopy.cli.advise;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lastcopy.charts.ChartException;
import lastcopy.charts.CostRiskChart;
import lastcopy.cli.edit.Candidates;
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
import lastcopy.cli.option.LuckOptions;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.option.WriteOption;
import lastcopy.cli.option.YearsOption;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.decide.Advice;
import lastcopy.decide.Question;
import lastcopy.decide.Selection;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Priced;
import lastcopy.scenario.Studio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which of all layouts that a file stands for, under a target or within a budget. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Find the cheapest layout under a chance of loss, the safest within a budget, and what each"
            + " step between them buys.")
public final class AdviseCommand implements Callable<Integer> {

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      description = "The scenario; what it leaves open (one_of, optional) is weighed.")
  private Path file;

  @Option(
      names = "--target",
      paramLabel = "PERCENT",
      converter = Converters.Percent.class,
      description = "The chance of any loss over the horizon that is still accepted, such as 1%%.")
  private Double target;

  @Option(
      names = "--budget",
      paramLabel = "MONEY",
      description = "What it may cost over the horizon, in the file's currency.")
  private Double budget;

  @Mixin private YearsOption years;

  @Mixin private LuckOptions luck;

  @Mixin private ConfidenceOption confidence;

  @Option(
      names = "--precision",
      paramLabel = "PERCENT",
      defaultValue = "5%",
      converter = Converters.Percent.class,
      description = "How closely the chances of what is named are told (default: 5%%).")
  private double precision;

  @Option(
      names = "--time",
      paramLabel = "TIME",
      defaultValue = "60s",
      converter = Converters.Time.class,
      description = "Stop after that time, such as 10s or 5min, or none (default: 60s).")
  private Converters.TimeCap time;

  @Option(
      names = "--histories",
      paramLabel = "N",
      converter = Converters.Count.class,
      description = "At most that many histories of a layout.")
  private Long histories;

  @Option(
      names = "--impossible",
      description = "Tell which combinations are no valid layouts, and why.")
  private boolean impossible;

  @Mixin private WriteOption written;

  @Mixin private JsonOption json;

  @Mixin private ChartOptions charts;

  @Mixin private PageOptions page;

  @Option(names = "--quiet", description = "Nothing on standard error unless it fails.")
  private boolean quiet;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public AdviseCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call()
      throws WrongScenarioException, ChartException, IOException, RefusedException {
    if (!Files.isRegularFile(file)) {
      throw wrong("no such scenario file: " + file);
    }
    checkLimits();
    PossibleStudios studios = years.over(host.scenarios().load(file).studios());
    json.prepare(Optional.of(file));
    charts.prepare(json.beside(Optional.of(file)));
    written.prepare(json, file);
    Candidates candidates = candidates(studios.central());
    Question question =
        new Question(candidates.studio(), candidates.layouts(), optional(target), optional(budget));
    if (budget != null && !Priced.in(question.studio())) {
      throw wrong("a budget (--budget) needs prices, and the file has none");
    }
    AdviceFindings findings =
        new AdviceFindings(candidates, question, choose(question), settings(), !studios.isOne());
    List<Path> files = write(findings);
    if (!quiet) {
      Wrote.say(host, files);
    }
    return findings.advice().finished() ? ExitStatus.DONE : ExitStatus.INTERRUPTED;
  }

  private void checkLimits() {
    if (target != null && target > 1) {
      throw wrong("Invalid value for option '--target': must be above 0% and at most 100%");
    }
    if (budget != null && !(budget >= 0 && budget < Double.POSITIVE_INFINITY)) {
      throw wrong("Invalid value for option '--budget': must be an amount of at least 0");
    }
  }

  private static OptionalDouble optional(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private Candidates candidates(Studio studio) throws WrongScenarioException, IOException {
    try {
      return Candidates.of(
          ScenarioTree.read(file).with(List.of("years"), Double.toString(studio.years())));
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
        luck.threads());
  }

  private Advice choose(Question question) {
    TerminalProgress progress =
        new TerminalProgress(
            host.err(), host.terminal() && !quiet, host.interruption(), id -> id, System::nanoTime);
    try {
      return Selection.run(question, settings(), progress);
    } finally {
      progress.end();
    }
  }

  private List<Path> write(AdviceFindings findings)
      throws ChartException, IOException, RefusedException {
    List<Path> files =
        new ArrayList<>(
            json.write(
                host,
                Optional.of(file),
                AdviceText.of(findings, impossible, page.on(host)),
                out -> AdviceJson.write(findings, out)));
    if (charts.folder().isPresent() && findings.isPriced()) {
      files.addAll(
          CostRiskChart.writeAll(
              findings.pictured(),
              findings.frame(AdviceWords.of(findings).outOf(), host.today().get()),
              charts.folder().get(),
              charts.formats()));
    }
    List<String> comments =
        List.of(
            "Today's layout of "
                + file.getFileName()
                + ", and those that advise named: the answers and the front.",
            "Comments of that file are not kept.");
    files.addAll(
        written.write(
            json,
            file,
            out -> findings.candidates().withPlain(findings.told()).writeTo(out, comments)));
    return files;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
