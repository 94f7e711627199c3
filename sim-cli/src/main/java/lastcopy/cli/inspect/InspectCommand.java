package lastcopy.cli.inspect;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lastcopy.charts.ChartException;
import lastcopy.charts.RoomChart;
import lastcopy.charts.RoomChartFiles;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.ChartOptions;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.option.YearsOption;
import lastcopy.cli.output.OpenWords;
import lastcopy.cli.scenario.Scenario;
import lastcopy.cli.scenario.ScenarioPages;
import lastcopy.cli.scenario.ScenarioSchema;
import lastcopy.cli.scenario.yaml.Default;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.room.RoomAndTime;
import lastcopy.scenario.PossibleStudios;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a scenario without simulating it. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Read, check and explain a scenario without simulating it.")
public final class InspectCommand implements Callable<Integer> {

  /** Reads a scenario with the defaults that it used. */
  @FunctionalInterface
  public interface Source {
    /**
     * Reads and checks a scenario.
     *
     * @throws WrongScenarioException if it is wrong
     * @throws IOException if it cannot be read
     */
    Inspected read(Path file) throws WrongScenarioException, IOException;
  }

  /**
   * A scenario that was read.
   *
   * @param studios what it says, in each possible world
   * @param defaults each default that was used
   * @param open what the file leaves open
   */
  public record Inspected(PossibleStudios studios, List<Default> defaults, Scenario.Open open) {
    /** Copies the list. */
    public Inspected {
      defaults = List.copyOf(defaults);
    }

    /** Each default as one line. */
    List<String> each() {
      return DefaultLines.each(defaults);
    }

    /** What matters for the result first, and the rest in one line. */
    List<String> grouped() {
      int copies =
          studios.central().layouts().stream().mapToInt(layout -> layout.copies().size()).sum();
      return DefaultLines.grouped(defaults, copies);
    }
  }

  private final Host host;
  private final Source source;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "The scenario.")
  private Path file;

  @Option(
      names = "--schema",
      description = "Print the JSON Schema of scenario files, for an editor, and nothing else.")
  private boolean schema;

  @Option(
      names = "--keys",
      description = "Print every key of scenario files with its meaning, and nothing else.")
  private boolean keys;

  @Option(
      names = "--template",
      description = "Print a scenario with comments to start from, and nothing else.")
  private boolean template;

  @Option(
      names = "--all",
      description = "Tell long lists whole: each default, each drive that is due, each year.")
  private boolean all;

  @Mixin private RoomOptions room;

  @Mixin private YearsOption years;

  @Mixin private JsonOption json;

  @Mixin private ChartOptions charts;

  @Mixin private PageOptions page;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public InspectCommand(Host host, Source source) {
    this.host = host;
    this.source = source;
  }

  @Override
  public Integer call()
      throws WrongScenarioException, ChartException, IOException, RefusedException {
    if (schema || keys || template) {
      host.out().print(printed());
      host.out().flush();
      return ExitStatus.DONE;
    }
    if (file == null) {
      throw new ParameterException(
          spec.commandLine(), "which scenario file? (or --template, --keys, --schema)");
    }
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(spec.commandLine(), "no such scenario file: " + file);
    }
    Inspected read = source.read(file);
    PossibleStudios studios = years.over(read.studios());
    json.prepare(Optional.of(file));
    charts.prepare(json.beside(Optional.of(file)));
    List<Outlook> outlooks = Outlook.of(studios.central());
    RoomAndTime roomAndTime = room.of(studios.central(), outlooks);
    List<Path> written = new ArrayList<>();
    written.addAll(
        json.write(
            host,
            Optional.of(file),
            InspectText.render(
                studios,
                outlooks,
                roomAndTime,
                all ? read.each() : read.grouped(),
                OpenWords.sentence(read.open()),
                all,
                page.on(host)),
            out -> InspectJson.write(studios, outlooks, roomAndTime, read.each(), out)));
    if (charts.folder().isPresent()) {
      written.addAll(
          RoomChartFiles.writeAll(
              new RoomChart.Pictured(
                  studios.central().name(), outlooks, roomAndTime, host.today().get()),
              charts.folder().get(),
              charts.formats()));
    }
    Wrote.say(host, written);
    return ExitStatus.DONE;
  }

  private String printed() throws IOException {
    if (schema) {
      return ScenarioSchema.text();
    }
    return keys ? ScenarioPages.keys() : ScenarioPages.template();
  }

  /**
   * Reads a scenario file.
   *
   * @throws WrongScenarioException if it is wrong
   * @throws IOException if it cannot be read
   */
  public static Inspected fromFile(Path file) throws WrongScenarioException, IOException {
    Scenario scenario = ScenarioLoading.read(file);
    return new Inspected(scenario.studios(), scenario.defaults(), scenario.open());
  }
}
