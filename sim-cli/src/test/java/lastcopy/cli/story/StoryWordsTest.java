package lastcopy.cli.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lastcopy.cli.output.Spans;
import lastcopy.cli.scenario.ScenarioReader;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Words of a story, from happenings made up by hand. */
class StoryWordsTest {

  private static final double YEAR = 8_760;
  private static final StoryClock DAYS = new StoryClock(Optional.empty(), 5 * YEAR);

  private Story mirror;
  private Story two;

  @BeforeEach
  void read() throws Exception {
    Path demo = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");
    Studio studio = ScenarioReader.read(demo).studio();
    mirror = story(studio, 1, List.of());
    two = story(studio, 2, List.of());
  }

  private static Story story(Studio studio, int layout, List<Moment> moments) {
    Layout of = studio.layouts().get(layout);
    List<String> names = of.copies().stream().map(Copy::id).toList();
    return new Story(studio, of, names, 1, 0, moments, List.of());
  }

  private String sentence(Kind kind, int copy, double bytes, double until, String subject) {
    return new StorySentences(two, DAYS)
        .of(new Happening(kind, 100, copy, 0, bytes, until, subject));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyKindHasASentenceWhateverIsUnknown(Kind kind) {
    for (double until : new double[] {Double.NaN, 100, 172, Double.POSITIVE_INFINITY, 1e7}) {
      for (int copy : new int[] {-1, 1}) {
        for (double bytes : new double[] {0, 2e12}) {
          for (String subject : new String[] {"", "theft", "fire struck at 'home'", "main"}) {
            assertThat(sentence(kind, copy, bytes, until, subject))
                .isNotBlank()
                .endsWith(".")
                .doesNotContain("NaN", "nfinit", "null", "-1", "  ", "..", " .");
          }
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DRIVE_FAILED | 172 | main | The drive of far fails with the 2 TB on it. It should be"
            + " replaced and whole again in 3 days (day 8).",
        "COPY_GONE | 172 | main | far is gone with the 2 TB that it held. New hardware should be"
            + " there in 3 days (day 8).",
        "COPY_GONE | 1e7 | main | far is gone with the 2 TB that it held. New hardware should be"
            + " there only after the end of the story.",
        "REFILL_STARTED | 105.5 | main | far is filled again from main: 2 TB. It should be done in"
            + " 5.5 hours.",
        "CARRIED | 172 | main | A drive with 2 TB is carried to far, which is sooner than its link. It"
            + " should be there in 3 days (day 8).",
        "MISHAP | NaN | theft struck at 'home' | Theft struck at 'home'.",
        "MISHAP | NaN | theft | Theft strikes.",
        "DELETION_ARRIVED | 820 | main | The deletion reaches far, which keeps the old state for 30 days"
            + " (day 35).",
        "DELETION_ARRIVED | 100 | main | The deletion reaches far, which keeps nothing of the old state.",
        "DELETION_ARRIVED | Infinity | main | The deletion reaches far, which keeps the old state for"
            + " good.",
        "LOST | NaN | a drive failed | LOST FOR GOOD: 2 TB. Why: a drive failed.",
      })
  void sentencesReadWell(Kind kind, double until, String subject, String sentence) {
    assertThat(sentence(kind, 1, 2e12, until, subject)).isEqualTo(sentence);
  }

  @Test
  void aDriveOfSeveralHasANumber() {
    Happening it = new Happening(Kind.DRIVE_READY, 100, 0, 1, 0, Double.NaN, "");
    assertThat(new StorySentences(mirror, DAYS).of(it))
        .isEqualTo("Drive 2 of main is replaced and whole again.");
  }

  /** A copy goes with its mishap, by a drive too many, or because it was unusable unseen. */
  @Test
  void howACopyWentIsReadFromWhatCameBefore() {
    assertThat(gone(mirror)).startsWith("One drive too many of main is down. main is gone");
    assertThat(gone(two)).startsWith("The drive of main fails. main is gone");
    assertThat(gone(two, Kind.MISHAP)).startsWith("main is gone");
    assertThat(gone(two, Kind.SPOILT)).startsWith("main is needed and found unusable. main is");
    assertThat(gone(two, Kind.SPOILT, Kind.COPY_GONE)).startsWith("The drive of main fails.");
  }

  private static String gone(Story of, Kind... before) {
    List<Moment> moments = new ArrayList<>();
    for (Kind kind : before) {
      moments.add(new Moment(new Happening(kind, 7, 0, -1, 1, 9, "theft"), null));
    }
    moments.add(new Moment(new Happening(Kind.COPY_GONE, 7, 0, -1, 1, 9, ""), null));
    Story story = story(of.studio(), of.studio().layouts().indexOf(of.layout()), moments);
    return new StorySentences(story, DAYS).of(before.length);
  }

  @ParameterizedTest
  @CsvSource({
    "0.6, 36 minutes",
    "1, 1 hour",
    "9.04, 9 hours",
    "47, 47 hours",
    "60, 2.5 days",
    "1000, 42 days",
    "8760, 12 months",
    "30000, 3.4 years"
  })
  void spansReadWell(double hours, String words) {
    assertThat(Spans.span(hours)).isEqualTo(words);
  }

  @Test
  void timesAreCountedFromTheStartOrDated() {
    assertThat(DAYS.year(YEAR)).isEqualTo("Year 2");
    assertThat(DAYS.stamp(24 * 1_234 + 14 + 5 / 60.0)).isEqualTo("day 1,235 14:05");
    assertThat(DAYS.iso(5)).isEmpty();
    // 2028 has a leap day, so three years of 365 days later it is 30 December.
    StoryClock dated = new StoryClock(Optional.of(LocalDate.of(2026, 1, 1)), 5 * YEAR);
    assertThat(dated.day(3 * YEAR)).isEqualTo("31 Dec 2028");
    assertThat(dated.year(3 * YEAR)).isEqualTo("2028");
    assertThat(dated.stamp(3 * YEAR + 1.5)).isEqualTo("31 Dec 01:30");
    assertThat(dated.iso(1.5)).contains("2026-01-01T01:30:00");
  }

  @Test
  void barsAreFullOnlyIfNothingIsMissing() {
    assertThat(StoryBars.bar(10, 10)).isEqualTo("##########");
    assertThat(StoryBars.bar(9.999, 10)).isEqualTo("#########.");
    assertThat(StoryBars.bar(0.001, 10)).isEqualTo("#.........");
    assertThat(StoryBars.bar(0, 10)).isEqualTo("..........");
    assertThat(StoryBars.bar(0, 0)).isEqualTo("..........");
  }

  @Test
  void barsOfManyCopiesStayWithinTheLine() {
    List<String> names =
        IntStream.range(0, 7).mapToObj(i -> "a-copy-with-a-very-long-name-" + i).toList();
    Snapshot scene =
        new Snapshot(
            9e12,
            0,
            new double[] {9e12, 8.123e12, 0, 1, 9e12, 3e12, 9e12},
            new boolean[] {false, false, true, false, false, false, false},
            new int[] {2, 0, 0, 0, 1, 0, 0},
            0,
            1);
    String text = StoryBars.of(names, scene, 9e12, " ".repeat(19), 80);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(StoryBars.of(names, scene, 9e12, " ".repeat(19), 60).lines())
        .allMatch(line -> line.length() <= 60);
    assertThat(text).contains("2 drives down").contains("gone").contains("8.12 TB");
  }

  /** A long story keeps its ends, its losses and what is near to the moment that matters. */
  @Test
  void aLongStoryLeavesOutWhatIsFarFromItsPoint() {
    List<Moment> moments =
        IntStream.range(0, 500)
            .mapToObj(i -> i == 400 ? Kind.LOST : Kind.DRIVE_FAILED)
            .map(kind -> new Moment(new Happening(kind, 1, 0, 0, 1, 2, ""), null))
            .toList();
    var shown = StoryTimeline.shown(moments, 100, false);
    assertThat(shown.cardinality()).isLessThanOrEqualTo(StoryTimeline.MOST);
    assertThat(IntStream.of(0, 90, 100, 105, 400, 499)).allMatch(shown::get);
    assertThat(StoryTimeline.shown(moments, 100, true).cardinality()).isEqualTo(500);
  }

  /** Ten losses beside the 36 around its point and both ends. */
  @Test
  void ofManyLossesTheFirstTenAreKept() {
    List<Moment> moments =
        IntStream.range(0, 500)
            .mapToObj(i -> i >= 400 && i < 412 ? Kind.LOST : Kind.DRIVE_FAILED)
            .map(kind -> new Moment(new Happening(kind, 1, 0, 0, 1, 2, ""), null))
            .toList();
    var shown = StoryTimeline.shown(moments, 100, false);
    assertThat(shown.cardinality()).isEqualTo(36 + 10 + 2);
    assertThat(shown.get(409)).isTrue();
    assertThat(shown.get(410)).isFalse();
  }
}
