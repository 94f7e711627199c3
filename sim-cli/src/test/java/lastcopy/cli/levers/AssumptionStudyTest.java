package lastcopy.cli.levers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lastcopy.cli.output.Page;
import lastcopy.cli.output.PageLook;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.decide.assumed.Assumption;
import lastcopy.decide.assumed.Assumptions;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.words.OutOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers that are taken for granted, in the demos and in words. */
class AssumptionStudyTest {

  private static final String STUDIO =
      """
      lastcopy: 1
      studio: A
      years: 5
      footage: {on_hand: 1 TB, shoots: {every: 7 days, size: 24 GB}}
      places: {quiet: {mishaps: {fire: {rate: 0 %/year}}}, busy: {mishaps: {fire: {rate: 2 %/year}}}}
      drives: {d: {size: 8 TB, fails: 1 %/year}}
      layouts:
        one: {title: One, copies: {main: {place: quiet, drives: 1 x d, noticed: 2 h, wait: 1 day}}}
        two: {title: Two, copies: {main: {place: busy, drives: 2 x d, arrangement: mirror}}}
      """;

  static List<Path> demos() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  /** Red where rewriting a record drops a part of it. */
  @ParameterizedTest
  @MethodSource("demos")
  void timesOneIsTheStudioItselfAndTimesTwoIsNot(Path demo) throws Exception {
    Studio studio = ScenarioReader.read(demo).studio();
    List<Assumption> numbers = Assumptions.of(studio, studio.layouts());

    assertThat(numbers).hasSizeGreaterThan(3).extracting(Assumption::id).doesNotHaveDuplicates();
    for (Assumption each : numbers) {
      assertThat(each.times().apply(1)).as(each.id()).isEqualTo(studio);
      assertThat(each.times().apply(2)).as(each.id()).isNotEqualTo(studio);
    }
  }

  /**
   * What hides in a set of drives, and what is more or less each year, is taken for granted too.
   */
  @Test
  void whatDrivesDoToEachOtherIsAmongThem() throws Exception {
    String text =
        STUDIO
            .replace("size: 24 GB}}", "size: 24 GB}, growth: 20 %/year}")
            .replace(
                "arrangement: mirror",
                "arrangement: mirror, strain: 3, batch: {name: spring, spread: 0.5},"
                    + " latent_defects: 4 %/year, scrub: 30 days");
    Studio studio = ScenarioReader.parse("a", text).studio();
    List<Assumption> numbers = Assumptions.of(studio, studio.layouts());

    assertThat(numbers)
        .extracting(
            each -> each.id() + ": " + AssumptionWords.value(each, 1),
            each -> AssumptionWords.value(each, 2))
        .contains(
            tuple("growth: 20 % a year", "40 % a year"),
            tuple("batches.spring: 0.5", "1"),
            tuple("two.main.strain: 3", "6"),
            tuple("two.main.latent_defects: 4 % a year", "7.84 % a year"));
    assertThat(numbers).noneMatch(each -> each.id().equals("one.main.strain"));
    for (Assumption each : numbers) {
      assertThat(each.times().apply(1)).as(each.id()).isEqualTo(studio);
      assertThat(each.times().apply(2)).as(each.id()).isNotEqualTo(studio);
    }
  }

  private static String section(String text) throws Exception {
    Studio studio = ScenarioReader.parse("a", text).studio();
    Layout layout = studio.layouts().get(0);
    Settings settings =
        new Settings(1, 0.95, 0.05, OptionalLong.of(8_000), Optional.empty(), 2, Method.PLAIN);
    AssumptionStudy study =
        AssumptionStudy.of(studio, layout, settings, Progress.SILENT).orElseThrow();
    Page page = new Page(PageLook.PLAIN);
    new AssumptionText(new AssumptionWords(study, new OutOf(1_000)), page).section();
    return page.taken().replaceAll("\\s+", " ");
  }

  /** A drive loses 49 of 1,000 by then, 25 at half its rate and 96 at double. */
  @Test
  void theNumberThatMattersIsToldFirstAndWhereItTurnsTheOrder() throws Exception {
    assertThat(section(STUDIO))
        .contains("How often a d fails (its first year): 1 % a year")
        .containsPattern("2[0-9] \\([0-9]+ to [0-9]+\\) fewer 4[0-9] \\([0-9]+ to [0-9]+\\) more")
        .contains("No effect could be measured of: how long a failure goes unnoticed (main); how")
        .containsPattern("\"One\" or \"Two\"\\? Which is safer turns round at 2\\.?[0-9]* % a year")
        .contains("it is 1 % a year now.");
  }

  @Test
  void whereNothingTurnsItSaysSo() throws Exception {
    assertThat(section(STUDIO.replace("place: busy", "place: quiet")))
        .contains("No value between a tenth and ten times flips which is safer.")
        .doesNotContain("turns round");
  }
}
