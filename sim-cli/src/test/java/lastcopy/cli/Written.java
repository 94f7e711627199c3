package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.cli.scenario.ScenarioException;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.report.Happening;
import lastcopy.outlook.CopyOutlook;
import lastcopy.outlook.Outlook;
import lastcopy.outlook.Warning;
import lastcopy.scenario.Studio;
import lastcopy.simulate.Simulation;
import lastcopy.story.Moment;
import lastcopy.story.Stories;
import lastcopy.story.Story;

/**
 * A studio as a file says it, for tests that hold words against what the engine does. The layout is
 * the first.
 *
 * @param studio as read
 */
public record Written(Studio studio) {

  /** Alarm rate of one statistical check. */
  static final double ALARM = 1e-6;

  /** Reads a scenario without mistakes. */
  public static Written of(String yaml) {
    try {
      Path file = Files.createTempFile("studio", ".yaml");
      Files.writeString(file, yaml);
      Studio studio = ScenarioReader.read(file).studio();
      Files.delete(file);
      return new Written(studio);
    } catch (IOException | ScenarioException e) {
      throw new AssertionError(yaml, e);
    }
  }

  public Story tell(long number) {
    return new Stories(studio, studio.layouts().get(0), 1).tell(number);
  }

  Outlook outlook() {
    return Outlook.of(studio).get(0);
  }

  public CopyOutlook outlook(String copy) {
    return outlook().copies().stream()
        .filter(c -> c.copy().id().equals(copy))
        .findFirst()
        .orElseThrow();
  }

  public Warning warning(String id) {
    assertThat(outlook().warnings()).extracting(Warning::id).contains(id);
    return outlook().warnings().stream().filter(w -> w.id().equals(id)).findFirst().orElseThrow();
  }

  /** What plain histories say, with intervals of the alarm rate. */
  public LayoutResult simulated(long histories) {
    Settings settings =
        new Settings(
            1,
            1 - ALARM,
            Double.MIN_NORMAL,
            OptionalLong.of(histories),
            Optional.empty(),
            1,
            Method.PLAIN);
    return Simulation.run(studio.withLayout(studio.layouts().get(0)), settings, Progress.SILENT)
        .layouts()
        .get(0);
  }

  /** When a happening of a kind first comes at or after a time. */
  public static double first(Story story, Happening.Kind kind, double from) {
    List<Moment> moments = story.moments();
    return moments.stream()
        .filter(m -> m.kind() == kind && m.hours() >= from)
        .mapToDouble(Moment::hours)
        .findFirst()
        .orElseThrow(() -> new AssertionError(kind + " in " + moments));
  }
}
