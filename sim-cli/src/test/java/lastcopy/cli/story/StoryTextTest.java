package lastcopy.cli.story;

import static lastcopy.cli.story.MadeStory.DRIVE;
import static lastcopy.cli.story.MadeStory.alone;
import static lastcopy.cli.story.MadeStory.fed;
import static lastcopy.cli.story.MadeStory.on;
import static lastcopy.cli.story.MadeStory.story;
import static lastcopy.cli.story.MadeStory.studio;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lastcopy.cli.output.PageLook;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.interval.Estimate;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of a told story, of facts made by hand, to the last character. */
class StoryTextTest {

  private static final StoryText.Telling PLAIN =
      new StoryText.Telling(
          new StoryClock(Optional.empty(), 8_760), false, new PageLook(100, false, false));

  private static Snapshot weighing(double weight) {
    return new Snapshot(100, 0, new double[] {100}, new boolean[1], new int[1], 0, weight);
  }

  /** One copy, nothing happens. */
  private static Story quiet(double weight) {
    Happening begins = new Happening(Kind.START, 0, -1, -1, 0, 8_760, "");
    Happening ends = new Happening(Kind.END, 8_760, -1, -1, 0, Double.NaN, "");
    return story(
        alone(OptionalDouble.empty(), 0),
        List.of(new Moment(begins, weighing(1)), new Moment(ends, weighing(weight))));
  }

  private static String page(Layout layout, Told told) {
    Studio studio = studio(Shoots.Spacing.EVEN).layout(layout).build();
    return StoryText.of(told, studio, layout, PLAIN);
  }

  private static String page(Story story, boolean finished, Optional<Estimate> chance) {
    return page(
        story.layout(),
        new Told(Optional.of(story), "history", 0, List.of("As asked."), finished, chance));
  }

  @Test
  void aQuietLifeOnOnePage() {
    assertThat(page(quiet(1), true, Optional.empty()))
        .isEqualTo(
            """
            s: one simulated life over 1 year
            l: l
              main: 1 drive, the working copy

            History 0 under seed 1 (--history 0 --seed 1 tells it again).
            As asked.
            Each bar is what a copy holds of all footage that there is at that moment.

            Year 1
              day 1 00:00      It begins.
                               main [##########] 100 B
              ...              12 months pass
              the end          The story ends.

            Nothing was lost.
            All of it stood in one copy only, all the time, and nothing took that.

            - One simulated life, told to show how things go wrong; it is not a forecast. How often it comes to
              that, compare says.
            - It is a model: rates left to their defaults are assumptions.
            - A copy counts only once restoring from it was tried.
            """);
  }

  /** A thousandth as likely is a thousand times rarer. */
  @Test
  void howLikelyABiasedLifeIs() {
    String drawn =
        "It was drawn with failures made likelier on purpose: a plain history like it is about ";
    Optional<Estimate> chance = Optional.of(new Estimate(1e-5, 9e-6, 1.1e-5, true));
    assertThat(flat(page(quiet(0.001), true, chance)))
        .contains(
            "Biased history 0 under seed 1 (--history 0 --biased --seed 1 tells it again).",
            drawn + "1,000 times rarer. Each bar");
    assertThat(flat(page(quiet(2.54), true, chance))).contains(drawn + "2.5 times as likely. Each");
    assertThat(flat(page(quiet(1), true, chance))).doesNotContain("It was drawn");
    assertThat(flat(page(quiet(Double.NaN), true, chance))).doesNotContain("It was drawn");
  }

  @Test
  void aSearchThatWasInterruptedIsMarked() {
    String ended = "\nUnfinished: the search was interrupted; this is what there was.\n";
    assertThat(page(quiet(1), false, Optional.empty()))
        .startsWith("s: one simulated life over 1 year - UNFINISHED\n")
        .endsWith("\n" + ended);
    assertThat(page(quiet(1), true, Optional.empty())).doesNotContainIgnoringCase("unfinished");
    Told none = new Told(Optional.empty(), "first-loss", 9, List.of("None of 9."), false);
    assertThat(page(alone(OptionalDouble.empty(), 0), none))
        .endsWith("  main: 1 drive, the working copy\n\nNone of 9.\n" + ended);
  }

  private static String flat(String page) {
    return page.replaceAll("\\s+", " ");
  }

  private static String described(Copy copy) {
    Layout layout = Layout.of("l", on("main", Arrangement.SINGLE, 1).build(), copy);
    Told none = new Told(Optional.empty(), "history", 0, List.of(), true);
    return page(layout, none).lines().skip(3).findFirst().orElseThrow().strip();
  }

  @Test
  void eachCopyIsDescribed() {
    assertThat(described(on("far", Arrangement.SINGLE, 1).fed(fed()).build()))
        .isEqualTo("far: 1 drive, fed from main every day");
    assertThat(described(on("far", Arrangement.MIRROR, 2).at(Place.of("home")).fed(fed()).build()))
        .isEqualTo("far: 2 drives (mirror) at 'home', fed from main every day");
    assertThat(
            described(
                on("far", Arrangement.SINGLE, 1)
                    .rotation(2, 168)
                    .fed(Feed.from("main").every(168).link(1).build())
                    .build()))
        .isEqualTo("far: 2 in turn, each 1 drive, fed from main every 7 days");
    assertThat(
            described(
                Copy.builder("paid")
                    .on(Medium.Service.losing(new Rate(1e-5)))
                    .fed(Feed.from("main").continuous().link(1).build())
                    .build()))
        .isEqualTo("paid: a service, fed from main all the time");
  }

  /** Alike ones that stand beside each other are counted together, as the file lists them. */
  @Test
  void unlikeDrivesAreListed() {
    DriveModel other = DriveModel.builder("n", 1e12).fails(DRIVE.fails()).build();
    assertThat(
            described(
                Copy.builder("far")
                    .on(
                        Medium.DriveSet.builder(Arrangement.PARITY, 4)
                            .ofEach(DRIVE, DRIVE, other, DRIVE)
                            .build())
                    .fed(fed())
                    .build()))
        .isEqualTo("far: 4 drives (parity: 2 x m, 1 x n, 1 x m), fed from main every day");
  }

  @ParameterizedTest
  @CsvSource({
    "20, 6, ' between 20:00 and 06:00'",
    "8.5, 17, ' between 08:30 and 17:00'",
    "0, 24, ''"
  })
  void hoursOfALinkAreTold(double opens, double closes, String words) {
    Feed feed = Feed.from("main").continuous().link(1).between(opens, closes).build();
    assertThat(described(on("far", Arrangement.SINGLE, 1).fed(feed).build()))
        .isEqualTo("far: 1 drive, fed from main all the time" + words);
  }

  private static String timeline(Story story, PageLook look, boolean all) {
    StoryClock clock = new StoryClock(Optional.empty(), 8_760);
    return StoryTimeline.of(story, 0, new StoryText.Telling(clock, all, look));
  }

  private static Moment shot(Kind kind, double hours, double shot, double lost, double... held) {
    Snapshot scene = MadeStory.scene(held);
    return new Moment(
        new Happening(kind, hours, 1, 0, 5e9, Double.NaN, ""),
        new Snapshot(shot, lost, scene.heldBytes(), scene.gone(), new int[held.length], 0, 1));
  }

  /** 30 days without a happening are told, an hour less is not; 2 TB less 1 TB is 1 TB. */
  @Test
  void quietStretchesAndYearsAreTold() {
    Story story =
        story(
            MadeStory.with("far"),
            List.of(
                shot(Kind.START, 0, 1e12, 0, 1e12, 1e12),
                shot(Kind.DRIVE_FAILED, 720, 2e12, 0, 2e12, 1e12),
                shot(Kind.COPY_GONE, 720, 2e12, 0, 2e12, -1),
                shot(Kind.COPY_BACK, 1_439, 2e12, 0, 2e12, 0),
                shot(Kind.REFILLED, 2_159, 2e12, 0, 2e12, 2e12),
                shot(Kind.MISHAP, 8_759, 2e12, 0, 2e12, 2e12),
                shot(Kind.DELETED, 8_759.5, 2e12, 0, 1.5e12, 2e12),
                shot(Kind.LOST, 8_759.5, 2e12, 5e11, 1.5e12, 1.5e12),
                shot(Kind.END, 8_760, 2e12, 5e11, 1.5e12, 1.5e12)));
    assertThat(timeline(story, PageLook.PLAIN, false))
        .isEqualTo(
            """
            Year 1
              day 1 00:00      It begins.
                               main [##########] 1 TB   far [##########] 1 TB
              ...              30 days pass; 1 TB is shot
              day 31 00:00     The drive of far fails with the 5 GB on it.
                               The drive of far fails. far is gone with the 5 GB that it
                               held.
                               main [##########] 2 TB   far [..........] gone
              day 60 23:00     far has hardware again and is empty.
                               main [##########] 2 TB   far [..........] empty
              ...              30 days pass
              day 90 23:00     far holds again everything that the other copies could give
                               back.
                               main [##########] 2 TB   far [##########] 2 TB
              ...              9 months pass
              day 365 23:00    A mishap strikes. No copy is harmed.
              day 365 23:30    5 GB is deleted by mistake on far.
                               main [#######...] 1.5 TB   far [##########] 2 TB
                               LOST FOR GOOD: 5 GB.
                               main [##########] 1.5 TB   far [##########] 1.5 TB
              the end          The story ends.
            """);
  }

  /** A warning for a loss and a heading for a year, and nothing else, in colour. */
  @Test
  void whatWasLostStandsOut() {
    Story story =
        story(
            MadeStory.with("far"),
            List.of(
                shot(Kind.START, 0, 1e12, 0, 1e12, 1e12),
                shot(Kind.LOST, 8_760, 1e12, 5e11, 5e11, 5e11),
                shot(Kind.FEED_SEEN, 9_000, 1e12, 5e11, 5e11, 5e11)));
    assertThat(timeline(story, new PageLook(80, true, false), false))
        .isEqualTo(
            """
            \u001b[1mYear 1\u001b[0m
              day 1 00:00      It begins.
                               main [##########] 1 TB   far [##########] 1 TB
              ...              12 months pass

            \u001b[1mYear 2\u001b[0m
            \u001b[33m  day 366 00:00    LOST FOR GOOD: 5 GB.\u001b[0m
                               main [##########] 500 GB   far [##########] 500 GB
              day 376 00:00    Somebody looks: the feed of far goes on.
            """);
  }

  /** Of 60 happenings it keeps 12 from its point on and the end; of 41 the same. */
  @Test
  void whatIsLeftOutIsCounted() {
    String left = " left out here (--all tells them)";
    assertThat(timeline(failures(60), PageLook.PLAIN, false))
        .contains("...              47 happenings are" + left);
    assertThat(timeline(failures(60), PageLook.PLAIN, true)).doesNotContain("left out");
    assertThat(timeline(failures(40), PageLook.PLAIN, false)).doesNotContain("left out");
    assertThat(StoryTimeline.shown(failures(41).moments(), 26, false).cardinality()).isEqualTo(38);
    assertThat(timeline(failures(41), PageLook.PLAIN, false)).contains("28 happenings are" + left);
  }

  private static Story failures(int count) {
    List<Moment> moments =
        IntStream.range(0, count).mapToObj(i -> shot(Kind.FEED_SEEN, i, 1e12, 0, 1, 1)).toList();
    return story(MadeStory.with("far"), moments);
  }

  /** Where footage ages out, a full bar is the fullest copy that lets it go; a shelf keeps all. */
  @Test
  void whatAgedOutIsMissingNowhere() {
    Footage footage =
        Footage.builder(new Shoots(31, 10, Shoots.Spacing.EVEN)).keepFor(900).clip(1).build();
    Layout layout =
        Layout.of(
            "l",
            on("main", Arrangement.SINGLE, 1).build(),
            on("shelf", Arrangement.SHELF, 3).fed(fed()).build());
    Studio studio = Studio.builder("s", 1).footage(footage).layout(layout).build();
    List<Moment> moments = List.of(shot(Kind.START, 0, 2e12, 0, 1e12, 2e12));
    assertThat(timeline(story(studio, moments, List.of()), PageLook.PLAIN, false))
        .contains("main [##########] 1 TB   shelf [##########] 2 TB");
    assertThat(timeline(story(layout, moments), PageLook.PLAIN, false))
        .contains("main [#####.....] 1 TB   shelf [##########] 2 TB");
  }

  /** Before anything is held there is nothing to picture. */
  @Test
  void anEmptyBeginningHasNoPicture() {
    Story story =
        story(
            MadeStory.with("far"),
            List.of(
                shot(Kind.START, 0, 0, 0, 0, 0),
                shot(Kind.FEED_STOPPED, 1, 1e12, 0, 1e12, 0),
                shot(Kind.SPOILT, 2, 1e12, 0, 1e12, 0),
                shot(Kind.SPOIL_FOUND, 3, 1e12, 0, 1e12, 0)));
    assertThat(timeline(story, PageLook.PLAIN, false))
        .isEqualTo(
            """
            Year 1
              day 1 00:00      It begins.
              day 1 01:00      The feed of far stops, and nobody sees it.
              day 1 02:00      far can no longer be restored from, and nobody knows: 5 GB.
                               main [##########] 1 TB   far [..........] empty
              day 1 03:00      A restore from far fails: now it is known to be unusable.
            """);
  }
}
