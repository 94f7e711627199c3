package lastcopy.cli.story;

import static lastcopy.cli.story.MadeStory.alone;
import static lastcopy.cli.story.MadeStory.four;
import static lastcopy.cli.story.MadeStory.moment;
import static lastcopy.cli.story.MadeStory.story;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences of a working drive, a shelf, a mirror and a service, whose facts are made by hand. */
class StoryDetailsTest {

  private static final StoryClock DAYS = new StoryClock(Optional.empty(), 8_760);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "DRIVE_FAILED | 1 | 1 | 2e12 | 124 | - | Drive 2 of shelf fails with the 2 TB on it. A new one"
            + " should be there in 24 hours (day 6).",
        "DRIVE_FAILED | 2 | 0 | 0 | 124 | - | Drive 1 of pair fails. It should be replaced and whole"
            + " again in 24 hours (day 6).",
        "DRIVE_FAILED | 0 | 0 | 0 | NaN | - | The drive of main fails.",
        "DRIVE_READY | 1 | 0 | 0 | NaN | - | Drive 1 of shelf is replaced by a new, empty one.",
        "DRIVE_READY | 0 | 0 | 0 | NaN | - | The drive of main is replaced and whole again.",
        "DRIVE_SWAPPED | 2 | 1 | 0 | NaN | - | Drive 2 of pair has its planned age: it is swapped for"
            + " a new one.",
        "DRIVE_ADDED | 1 | 2 | 0 | NaN | - | shelf is full: drive 3 of shelf is added.",
        "COPY_GONE | 3 | -1 | 2e12 | 102 | - | paid is gone with the 2 TB that it held. It should take"
            + " footage again in 2 hours.",
        "COPY_GONE | 2 | -1 | 0 | NaN | - | pair is gone.",
        "COPY_BACK | 3 | -1 | 0 | NaN | - | paid takes footage again and is empty.",
        "COPY_BACK | 2 | -1 | 0 | NaN | - | pair has hardware again and is empty.",
        "UNREADABLE | 2 | -1 | 1e9 | NaN | x | Unreadable spots are found on pair: 1 GB. What another"
            + " copy holds is put back.",
        "SPOILT | 2 | -1 | 1e9 | NaN | - | pair can no longer be restored from, and nobody knows: 1"
            + " GB.",
        "SPOILT | 2 | -1 | 0 | NaN | - | pair can no longer be restored from, and nobody knows.",
        "SPOIL_FOUND | 2 | -1 | 0 | NaN | - | A restore from pair fails: now it is known to be"
            + " unusable.",
        "DELETED | -1 | -1 | 1e9 | 124 | - | 1 GB is deleted by mistake on main. It will be noticed in"
            + " 24 hours (day 6).",
        "DELETED | 2 | -1 | 0 | 90 | - | nothing is deleted by mistake on pair.",
        "MALWARE | -1 | -1 | 1e9 | 9000 | - | Malware destroys 1 GB on the copies that it can reach. It"
            + " will be noticed only after the end of the story.",
        "MALWARE | -1 | -1 | 0 | NaN | - | Malware strikes and finds nothing to destroy.",
        "DELETION_ARRIVED | 2 | -1 | 1e9 | 9000 | malware struck | What malware did reaches pair, which"
            + " keeps the old state until after the end.",
        "DELETION_ARRIVED | 2 | -1 | 0 | 124 | deleted | The deletion reaches pair, which held nothing"
            + " of it.",
        "DELETION_ARRIVED | 2 | -1 | 0 | Infinity | deleted | The deletion reaches pair, which held"
            + " nothing of it.",
        "DROPPED | 2 | -1 | 1e9 | NaN | - | pair drops what it still held of it: 1 GB.",
        "FEED_STOPPED | 2 | -1 | 0 | 124 | - | The feed of pair stops, and nobody sees it.",
        "FEED_SEEN | 2 | -1 | 0 | NaN | - | Somebody looks: the feed of pair goes on.",
        "CARDS_EXPIRED | -1 | -1 | 1e9 | NaN | - | Camera cards are formatted that alone still held 1"
            + " GB.",
        "LOST | -1 | -1 | 1e9 | NaN | - | LOST FOR GOOD: 1 GB.",
        "MISHAP | -1 | -1 | 0 | NaN | - | A mishap strikes.",
        "MISHAP | -1 | -1 | 0 | NaN | the box took all drives | The box took all drives.",
        "START | -1 | -1 | 0 | 8760 | - | It begins.",
        "END | -1 | -1 | 0 | NaN | - | The story ends.",
      })
  void sentences(
      Kind kind, int copy, int drive, double bytes, double until, String subject, String sentence) {
    Happening it =
        new Happening(kind, 100, copy, drive, bytes, until, subject == null ? "" : subject);
    assertThat(new StorySentences(story(four(), List.of()), DAYS).of(it)).isEqualTo(sentence);
  }

  @Test
  void aLoneCopyHasNoOtherToPutAnythingBack() {
    Story story = story(alone(OptionalDouble.empty(), 0), List.of());
    Happening it = new Happening(Kind.UNREADABLE, 1, 0, -1, 1e9, Double.NaN, "");
    assertThat(new StorySentences(story, DAYS).of(it))
        .isEqualTo("Unreadable spots are found on main: 1 GB.");
  }

  private static String told(Layout layout, Moment... moments) {
    Story story = story(layout, List.of(moments));
    return new StorySentences(story, DAYS).of(moments.length - 1);
  }

  @Test
  void whatComesBackIsReadFromWhatCopiesHold() {
    assertThat(told(four(), moment(Kind.REFILLED, 9, 0, 0, 50, 0, 7, 0)))
        .isEqualTo("main holds again everything that the other copies could give back.");
    assertThat(told(four(), moment(Kind.REFILLED, 9, 0, 0, 0, 0, 7, 0)))
        .isEqualTo("Nothing comes back to main.");
    assertThat(told(four(), moment(Kind.REFILLED, 9, 0, 0, 0, 0, 0, 0)))
        .isEqualTo("Nothing comes back to main: no other copy holds anything.");
    Layout alone = alone(OptionalDouble.of(50), 0);
    assertThat(told(alone, moment(Kind.COPY_BACK, 9, 0, 0, 0), moment(Kind.REFILLED, 9, 0, 0, 5)))
        .isEqualTo("main takes what camera cards still held.");
    String none = "Nothing comes back to main: there is no other copy.";
    assertThat(told(alone, moment(Kind.COPY_BACK, 9, 0, 0, 0), moment(Kind.REFILLED, 9, 0, 0, 0)))
        .isEqualTo(none);
    assertThat(told(alone, moment(Kind.COPY_BACK, 8, 0, 0, 0), moment(Kind.REFILLED, 9, 0, 0, 5)))
        .as("shot since")
        .isEqualTo(none);
  }

  @Test
  void whatIsNoticedMayHaveToWait() {
    assertThat(told(four(), moment(Kind.NOTICED, 9, -1, 0, 50, 0, 0, 0)))
        .isEqualTo("Somebody notices; there is nothing to put back.");
    assertThat(told(four(), moment(Kind.NOTICED, 9, -1, 1e9, 50, 0, 0, 0)))
        .isEqualTo("Somebody notices: 1 GB is put back from where it was still held.");
    String waits =
        "Somebody notices: copies still hold 1 GB of it, which can come back once main does.";
    assertThat(told(four(), moment(Kind.NOTICED, 9, -1, 1e9, -1, 0, 0, 0))).isEqualTo(waits);
    assertThat(
            told(
                four(),
                moment(Kind.SPOILT, 5, 0, 0, 0, 0, 0, 0),
                moment(Kind.NOTICED, 9, -1, 1e9, 0, 1, 0, 0)))
        .isEqualTo(waits);
    String kept = "Somebody notices: 1 GB is put back from what main had kept.";
    String held = "Somebody notices: 1 GB is put back from where it was still held.";
    Moment noticed = moment(Kind.NOTICED, 9, -1, 1e9, 50);
    assertThat(told(alone(OptionalDouble.empty(), 60), noticed)).isEqualTo(kept);
    assertThat(told(alone(OptionalDouble.of(9), 60), noticed)).isEqualTo(held);
    assertThat(told(alone(OptionalDouble.empty(), 0), noticed)).isEqualTo(held);
  }

  @Test
  void howACopyWent() {
    assertThat(told(four(), moment(Kind.COPY_GONE, 9, 3, 0, 0, 0, 0, -1)))
        .isEqualTo("The service of paid fails. paid is gone.");
    Moment found = moment(Kind.SPOIL_FOUND, 9, 3, 0, 0, 0, 0, 0);
    assertThat(told(four(), found, moment(Kind.COPY_GONE, 9, 3, 0, 0, 0, 0, -1)))
        .as("it was said")
        .isEqualTo("paid is gone.");
    Moment before = moment(Kind.MISHAP, 8, -1, 0, 0, 0, 0, 0);
    assertThat(told(four(), before, moment(Kind.COPY_GONE, 9, 2, 0, 0, 0, -1, 0)))
        .as("of another instant")
        .isEqualTo("One drive too many of pair is down. pair is gone.");
  }

  @Test
  void aMishapThatTakesNothingHarmsNothing() {
    Moment mishap = moment(Kind.MISHAP, 9, -1, 0, 0, 0, 0, 0);
    Story harmless = story(four(), List.of(mishap, moment(Kind.COPY_GONE, 10, 2, 0, 0, 0, -1, 0)));
    assertThat(new StorySentences(harmless, DAYS).of(0))
        .isEqualTo("A mishap strikes. No copy is harmed.");
    for (Kind kind : List.of(Kind.COPY_GONE, Kind.LOST)) {
      List<Moment> moments = new ArrayList<>(List.of(mishap));
      moments.add(moment(Kind.NOTICED, 9, -1, 1, 0, 0, 0, 0));
      moments.add(moment(kind, 9, 2, 1, 0, 0, -1, 0));
      assertThat(new StorySentences(story(four(), moments), DAYS).of(0))
          .isEqualTo("A mishap strikes.");
    }
  }

  @Test
  void barsSayWhatIsHeldGoneOrDown() {
    Snapshot scene =
        new Snapshot(
            1e12,
            0,
            new double[] {1e12, 5e11, 0, 0},
            new boolean[] {false, false, true, false},
            new int[] {0, 1, 0, 2},
            0,
            1);
    List<String> names = List.of("main", "sixteen-letters-", "gone-copy", "seventeen-letters");
    assertThat(StoryBars.of(names, scene, 1e12, "  ", 80))
        .isEqualTo(
            """
              main [##########] 1 TB   sixteen-letters- [#####.....] 500 GB, 1 drive down
              gone-copy [..........] gone
              seventeen-lette~ [..........] empty, 2 drives down
            """);
  }

  @Test
  void aDayIsCountedFromOne() {
    assertThat(DAYS.stamp(0)).isEqualTo("day 1 00:00");
    assertThat(DAYS.stamp(23 + 59 / 60.0)).isEqualTo("day 1 23:59");
    assertThat(DAYS.day(24)).isEqualTo("day 2");
    assertThat(DAYS.year(8_759)).isEqualTo("Year 1");
    assertThat(DAYS.year(8_760)).isEqualTo("Year 2");
  }

  /** Four drives, two of them of another model, as two pairs; its other drive is down. */
  @Test
  void ofPairsTheDrivesAreNamedWithTheirModels() {
    DriveModel other = DriveModel.builder("n", 1e12).fails(MadeStory.DRIVE.fails()).build();
    Medium.DriveSet set =
        Medium.DriveSet.builder(Arrangement.PAIRS, 4)
            .ofEach(MadeStory.DRIVE, MadeStory.DRIVE, other, other)
            .build();
    Layout pairs = Layout.of("l", Copy.builder("main").on(set).build());
    Happening fails = new Happening(Kind.DRIVE_FAILED, 8, 0, 2, 0, Double.NaN, "");
    Happening gone = new Happening(Kind.COPY_GONE, 9, 0, 3, 0, Double.NaN, "");
    Story story = story(pairs, List.of(moment(fails, 5), moment(gone, -1)));
    assertThat(new StorySentences(story, DAYS).of(0)).isEqualTo("Drive 3 of main (n) fails.");
    assertThat(new StorySentences(story, DAYS).of(1))
        .isEqualTo(
            "Drive 4 of main fails while drive 3, the other of its pair, is down. main is gone.");
    Happening first = new Happening(Kind.COPY_GONE, 9, 0, 1, 0, Double.NaN, "");
    assertThat(told(pairs, moment(first, -1)))
        .as("its other is drive 1, the first")
        .startsWith("Drive 2 of main fails while drive 1, the other of its pair, is down.");
  }

  /** A capital letter, but the name of a copy stays as the owner writes it. */
  @Test
  void namesOfCopiesKeepTheirSmallLetters() {
    Layout layout = MadeStory.with("fire");
    assertThat(mishap(layout, "fire struck at 'home'")).isEqualTo("fire struck at 'home'.");
    assertThat(mishap(layout, "theft struck at 'home'")).isEqualTo("Theft struck at 'home'.");
  }

  private static String mishap(Layout layout, String subject) {
    Happening it = new Happening(Kind.MISHAP, 9, -1, -1, 0, Double.NaN, subject);
    return new StorySentences(story(layout, List.of()), DAYS).of(it);
  }

  /** Noticed or whole again just at the end is within the story, and at once takes no time. */
  @Test
  void whatEndsWithTheStoryIsWithinIt() {
    StorySentences sentences = new StorySentences(story(four(), List.of()), DAYS);
    Happening end = new Happening(Kind.DRIVE_FAILED, 8_736, 0, 0, 0, 8_760, "");
    assertThat(sentences.of(end))
        .isEqualTo(
            "The drive of main fails. It should be replaced and whole again in 24 hours (day 366).");
    Happening now = new Happening(Kind.DELETED, 9, 0, -1, 1e9, 9, "");
    assertThat(sentences.of(now)).isEqualTo("1 GB is deleted by mistake on main.");
    Happening ready = new Happening(Kind.DRIVE_FAILED, 9, 0, 0, 0, 9, "");
    assertThat(sentences.of(ready)).isEqualTo("The drive of main fails.");
    Happening shelf = new Happening(Kind.DELETED, 9, 1, -1, 1e9, 9, "");
    assertThat(sentences.of(shelf)).isEqualTo("1 GB is deleted by mistake on shelf.");
  }

  /** The working copy may be a shelf or a service; it is the first of all. */
  @Test
  void theWorkingCopyMayBeAShelfOrAService() {
    Layout shelf = Layout.of("l", MadeStory.on("main", Arrangement.SHELF, 3).build());
    Happening failed = new Happening(Kind.DRIVE_FAILED, 9, 0, 0, 0, 33, "");
    assertThat(new StorySentences(story(shelf, List.of()), DAYS).of(failed))
        .isEqualTo("Drive 1 of main fails. A new one should be there in 24 hours (day 2).");
    Layout paid =
        Layout.of("l", Copy.builder("main").on(Medium.Service.losing(new Rate(1e-5))).build());
    Happening back = new Happening(Kind.COPY_BACK, 9, 0, -1, 0, Double.NaN, "");
    assertThat(new StorySentences(story(paid, List.of()), DAYS).of(back))
        .isEqualTo("main takes footage again and is empty.");
  }

  /** What is known of one copy says nothing of another, nor of one that is new since. */
  @Test
  void onlyWhatThatCopyWentThroughCounts() {
    Moment other = moment(Kind.SPOILT, 5, 3, 0, 50, 0, 0, 0);
    assertThat(told(four(), other, moment(Kind.COPY_GONE, 9, 2, 0, 0, 0, -1, 0)))
        .isEqualTo("One drive too many of pair is down. pair is gone.");
    Moment spoilt = moment(Kind.SPOILT, 5, 2, 0, 50, 0, 0, 0);
    Moment looked = moment(Kind.FEED_SEEN, 6, 2, 0, 50, 0, 0, 0);
    assertThat(told(four(), spoilt, looked, moment(Kind.COPY_GONE, 9, 2, 0, 0, 0, -1, 0)))
        .isEqualTo("pair is needed and found unusable. pair is gone.");
  }

  /** 5 now and 5 at its return: nothing came. */
  @Test
  void whatACopyHadAlreadyDidNotComeFromCards() {
    Layout alone = alone(OptionalDouble.of(50), 0);
    assertThat(told(alone, moment(Kind.COPY_BACK, 9, 0, 0, 5), moment(Kind.REFILLED, 9, 0, 0, 5)))
        .isEqualTo("Nothing comes back to main: there is no other copy.");
  }

  /** Two cells of 18 and the three spaces between are 39. */
  @Test
  void barsThatJustFitStandBesideEachOther() {
    Snapshot scene = new Snapshot(2, 0, new double[] {2, 1}, new boolean[2], new int[2], 0, 1);
    String one = "a [##########] 2 B";
    String two = "b [#####.....] 1 B";
    assertThat(StoryBars.of(List.of("a", "b"), scene, 2, "", 39))
        .isEqualTo(one + "   " + two + "\n");
    assertThat(StoryBars.of(List.of("a", "b"), scene, 2, "", 38))
        .isEqualTo(one + "\n" + two + "\n");
    assertThat(StoryBars.of(List.of("a", "b"), scene, 2, "", 18))
        .isEqualTo(one + "\n" + two + "\n");
    assertThat(StoryBars.of(List.of("a", "b"), scene, 2, "", 17))
        .isEqualTo("a [##########] 2\n   B\nb [#####.....] 1\n   B\n");
  }
}
