package lastcopy.cli.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import lastcopy.charts.ChartException;
import lastcopy.charts.FitChartFiles;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.ChartOptions;
import lastcopy.cli.option.ConfidenceOption;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.typical.DriveKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lifetimes from records of drives, some of them still running. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Tell from records of drives how often they fail, and how little that is known.",
    footer = {
      "",
      "RECORDS.csv has a header and a line for each drive. Either ages: exit (age at",
      "failure or at the end of the record), failed (1 or 0, yes or no), and if wanted",
      "entry (age when the record begins; 0). Or dates such as 2024-03-14: in_service,",
      "until, failed, and if wanted from (when the record begins). With either, if",
      "wanted: last_seen_running, where a failure was found only at a check (exit or",
      "until is then when it was found); model or group, to tell drives apart; drive",
      "and note, which are not read."
    })
public final class FitCommand implements Callable<Integer> {

  /** Kinds of typical drives, as asked for. */
  enum TypicalKind {
    HARD_DISK,
    PORTABLE,
    USED_HARD_DISK,
    SOLID_STATE,
    NONE;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Optional<DriveKind> drives() {
      return Stream.of(DriveKind.values()).filter(k -> k.name().equals(name())).findFirst();
    }
  }

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "RECORDS.csv", description = "The records.")
  private Path file;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      defaultValue = "hours",
      description =
          "Of ages, and of results as JSON: hours, days, months or years (default: hours).")
  private AgeUnit unit;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      defaultValue = "hard-disk",
      description =
          "What typical drives to set beside few failures: hard-disk, portable, used-hard-disk,"
              + " solid-state or none (default: hard-disk).")
  private TypicalKind kind;

  @Mixin private ConfidenceOption confidence;

  @Option(names = "--details", description = "Also the fitted laws side by side.")
  private boolean details;

  @Mixin private JsonOption json;

  @Mixin private ChartOptions charts;

  @Mixin private PageOptions page;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  /** The command with what it needs of the world around it. */
  public FitCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call()
      throws WrongScenarioException, ChartException, IOException, RefusedException {
    check();
    RecordsFile.Read read = RecordsFile.of(file, unit, host.today().get());
    json.prepare(Optional.of(file));
    charts.prepare(json.beside(Optional.of(file)));
    FitResult result = FitResult.of(name(), read, unit, kind.drives(), confidence.value());
    List<Path> written =
        new ArrayList<>(
            json.write(
                host,
                Optional.of(file),
                json.alone() ? "" : FitText.of(result, details, page.on(host)),
                out -> FitJson.write(result, out)));
    if (charts.folder().isPresent()) {
      written.addAll(
          FitChartFiles.writeAll(pictured(result), charts.folder().get(), charts.formats()));
    }
    Wrote.say(host, written);
    return ExitStatus.DONE;
  }

  /** A page that is the same wherever the file lies. */
  private String name() {
    return String.valueOf(file.getFileName());
  }

  private void check() {
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(spec.commandLine(), "no such file of records: " + file);
    }
  }

  private FitChartFiles.Pictured pictured(FitResult result) {
    return new FitChartFiles.Pictured(
        result.file(),
        result.unit().toHours(1),
        result.confidence(),
        host.today().get(),
        result.all().fitted(),
        result.groups().stream()
            .map(group -> new FitChartFiles.Group(group.name(), group.fitted()))
            .toList());
  }
}
