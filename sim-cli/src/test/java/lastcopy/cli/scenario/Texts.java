package lastcopy.cli.scenario;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import lastcopy.cli.scenario.yaml.Problem;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;

/** Small scenario texts and what comes of them. */
public final class Texts {
  /** A valid scenario; tests replace parts of it. */
  public static final String VALID =
      """
      lastcopy: 1
      studio: Reed Bank Films
      years: 5
      footage:
        shoots: {every: 7 days, size: 96 GB}
      places:
        studio: {mishaps: {fire: {rate: 1 %/year}}}
      boxes:
        tower: {rate: 1 %/year}
      drives:
        desk: {size: 8 TB, fails: 2 %/year}
      layouts:
        pair:
          copies:
            main: {place: studio, drives: 1 x desk}
            far: {drives: 1 x desk, feed: {from: main, every: 1 day}}
      """;

  private Texts() {}

  public static Scenario scenario(String text) {
    try {
      return ScenarioReader.parse("demo.yaml", text);
    } catch (ScenarioException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  public static Studio studio(String text) {
    return scenario(text).studio();
  }

  /** The messages of all problems of a text. */
  public static List<String> problems(String text) {
    ScenarioException e =
        catchThrowableOfType(
            ScenarioException.class, () -> ScenarioReader.parse("demo.yaml", text));
    if (e == null) {
      return List.of();
    }
    return e.problems().stream().map(Problem::toString).toList();
  }

  /** The valid scenario with more keys for its only drive model. */
  public static String withDrive(String drive) {
    return VALID.replace("{size: 8 TB, fails: 2 %/year}", "{" + drive + "}");
  }

  /** The valid scenario with more keys for its first copy. */
  public static String withMain(String keys) {
    return VALID.replace("{place: studio, drives: 1 x desk}", "{" + keys + "}");
  }

  /** The valid scenario with more keys for its second copy. */
  public static String withFar(String keys) {
    return VALID.replace("{drives: 1 x desk, feed: {from: main, every: 1 day}}", "{" + keys + "}");
  }

  public static String withFootage(String keys) {
    return VALID.replace("  shoots: {every: 7 days, size: 96 GB}", "  " + keys);
  }

  public static Copy main(String text) {
    return studio(text).layouts().get(0).workingCopy();
  }

  static Copy far(String text) {
    return studio(text).layouts().get(0).copies().get(1);
  }

  public static Medium.DriveSet mainDrives(String text) {
    return main(text).driveSet().orElseThrow();
  }

  public static DriveModel model(String text) {
    return mainDrives(text).model(0);
  }
}
