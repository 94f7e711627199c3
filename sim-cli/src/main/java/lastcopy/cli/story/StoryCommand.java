package lastcopy.cli.story;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lastcopy.cli.host.ExitStatus;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.RefusedException;
import lastcopy.cli.host.TerminalProgress;
import lastcopy.cli.host.WrongScenarioException;
import lastcopy.cli.host.Wrote;
import lastcopy.cli.option.Converters;
import lastcopy.cli.option.JsonOption;
import lastcopy.cli.option.LayoutOption;
import lastcopy.cli.option.PageOptions;
import lastcopy.cli.option.TraceOption;
import lastcopy.cli.option.YearsOption;
import lastcopy.scenario.Layout;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.story.SearchLimit;
import lastcopy.story.Stories;
import lastcopy.story.UnlikelyLosses;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells one simulated history event by event. */
@Command(
    name = "story",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Tell one simulated history of a layout event by event.",
      "Without a choice: the first history that loses footage if a short search finds one, else"
          + " the one in which a loss was nearest."
    })
public final class StoryCommand implements Callable<Integer> {

  private static final long LONGEST_SEARCH = 20_000_000;
  private static final Duration LONGEST_TIME = Duration.ofSeconds(20);
  private static final long SURVEYED = 20_000;

  /** Which history; at most one of these. */
  static final class Which {
    @Option(
        names = "--history",
        paramLabel = "K",
        description = "The history of that number, from 0 on.")
    private Long history;

    @Option(names = "--first-loss", description = "The first history that loses footage.")
    private boolean firstLoss;

    @Option(
        names = "--typical",
        description = "A history of the commoner outcome and of median size.")
    private boolean typical;

    @Option(
        names = "--near-miss",
        description = "The history without a loss in which one was nearest.")
    private boolean nearMiss;
  }

  private final Host host;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The scenario.")
  private Path file;

  @Mixin private LayoutOption chosen;

  @ArgGroup private Which which = new Which();

  @Option(
      names = "--biased",
      description =
          "With --history: of the biased histories, in which failures are made likelier on purpose.")
  private boolean biased;

  @Option(
      names = "--start",
      paramLabel = "DATE",
      description = "Tell dates, counted from a first day such as 2026-01-01.")
  private LocalDate start;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Where random numbers begin; the same and a number tell the same (default: 1).")
  private long seed;

  @Mixin private YearsOption years;

  @Option(
      names = "--histories",
      paramLabel = "N",
      converter = Converters.Count.class,
      description =
          "Search that many (default: up to 20,000,000 for a loss, else 20,000, in 20 s).")
  private Long histories;

  @Option(names = "--all", description = "Leave out nothing of a long story.")
  private boolean all;

  @Mixin private JsonOption json;

  @Mixin private PageOptions page;

  @Option(
      names = "--report",
      paramLabel = "FILE.html",
      description = "Also write a page for teaching: three lives, and studios that a class draws.")
  private Path report;

  @Option(names = "--quiet", description = "No progress on standard error.")
  private boolean quiet;

  @Mixin
  @SuppressWarnings("UnusedVariable") // as its option
  private TraceOption trace;

  public StoryCommand(Host host) {
    this.host = host;
  }

  @Override
  public Integer call() throws WrongScenarioException, IOException, RefusedException {
    if (which.history != null && which.history < 0) {
      throw wrong("--history must be at least 0: " + which.history);
    }
    if (biased && which.history == null) {
      throw wrong("--biased goes with --history K only");
    }
    if (!Files.isRegularFile(file)) {
      throw wrong("no such scenario file: " + file);
    }
    PossibleStudios studios = years.over(host.scenarios().load(file).studios());
    Studio studio = studios.central();
    Layout layout = chosen.in(studio);
    json.prepare(Optional.of(file));
    if (report != null) {
      json.beside(Optional.of(file)).check(report);
    }
    Told told = choose(studio, layout);
    if (!studios.isOne()) {
      told = told.inTheMiddle();
    }
    StoryClock clock = new StoryClock(Optional.ofNullable(start), studio.horizonHours());
    write(told, studio, layout, clock);
    if (report != null && told.finished()) {
      teach(studio, layout, clock, !studios.isOne());
    }
    return told.finished() ? ExitStatus.DONE : ExitStatus.INTERRUPTED;
  }

  private void teach(Studio studio, Layout layout, StoryClock clock, boolean middle)
      throws IOException, RefusedException {
    TerminalProgress progress = progress(studio);
    Optional<Lesson> lesson;
    try {
      Lesson.Search search =
          new Lesson.Search(stories(studio, layout), unlikely(studio, layout), progress);
      lesson = search.find(studio, layout, limit(LONGEST_SEARCH), limit(SURVEYED));
    } finally {
      progress.end();
    }
    if (lesson.isPresent()) {
      Lesson found = middle ? lesson.get().inTheMiddle() : lesson.get();
      ByteArrayOutputStream lessonPage = new ByteArrayOutputStream();
      LessonPage.write(found, clock, seed, spec.root().version()[0], lessonPage);
      json.beside(Optional.of(file)).write(report, lessonPage::writeTo);
      if (!quiet) {
        Wrote.say(host, List.of(report));
      }
    }
  }

  private TerminalProgress progress(Studio studio) {
    return new TerminalProgress(
        host.err(),
        host.terminal() && !quiet,
        host.interruption(),
        studio::titleOf,
        System::nanoTime);
  }

  private Stories stories(Studio studio, Layout layout) {
    Stories stories = new Stories(studio, layout, seed);
    stories.giveUpWhen(host.interruption()::asked);
    return stories;
  }

  private UnlikelyLosses unlikely(Studio studio, Layout layout) {
    UnlikelyLosses unlikely = new UnlikelyLosses(studio, layout, seed);
    unlikely.giveUpWhen(host.interruption()::asked);
    return unlikely;
  }

  private Told choose(Studio studio, Layout layout) {
    TerminalProgress progress = progress(studio);
    StoryChoice choice =
        new StoryChoice(stories(studio, layout), unlikely(studio, layout), progress);
    SearchLimit survey = limit(SURVEYED);
    try {
      if (which.history != null) {
        return biased ? choice.biased(which.history) : choice.history(which.history);
      }
      if (which.firstLoss) {
        return choice.firstLoss(limit(LONGEST_SEARCH));
      }
      if (which.typical) {
        return choice.typical(survey);
      }
      return which.nearMiss ? choice.nearMiss(survey) : choice.any(survey);
    } finally {
      progress.end();
    }
  }

  /** As many as asked for, however long it takes; else up to a number within a time. */
  private SearchLimit limit(long most) {
    return histories == null
        ? new SearchLimit(most, Optional.of(LONGEST_TIME))
        : SearchLimit.histories(histories);
  }

  private void write(Told told, Studio studio, Layout layout, StoryClock clock)
      throws IOException, RefusedException {
    List<Path> written =
        json.write(
            host,
            Optional.of(file),
            StoryText.of(told, studio, layout, new StoryText.Telling(clock, all, page.on(host))),
            out -> StoryJson.write(told, studio, layout, seed, clock, out));
    if (!quiet) {
      Wrote.say(host, written);
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
