package lastcopy.cli.story;

import static lastcopy.cli.story.MadeStory.alone;
import static lastcopy.cli.story.MadeStory.loss;
import static lastcopy.cli.story.MadeStory.moment;
import static lastcopy.cli.story.MadeStory.on;
import static lastcopy.cli.story.MadeStory.story;
import static lastcopy.cli.story.MadeStory.studio;
import static lastcopy.cli.story.MadeStory.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Loss;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.story.Moment;
import lastcopy.story.Story;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was lost and why, or how nearly, of stories whose facts are made by hand. */
class StoryEndingTest {

  /** The hour of the loss, on day 4; what was so two days before began at hour 42. */
  private static final double LOSS = 90;

  private static final double BEFORE = 42;
  private static final Layout ALONE = alone(OptionalDouble.empty(), 0);
  private static final String LOST = "Why: it was lost.";
  private static final String NO_OTHER =
      "There was no other copy: one in another place, up to date, would have kept it.";

  private static StoryEnding ending(Story story) {
    return new StoryEnding(story, new StoryClock(Optional.empty(), story.studio().horizonHours()));
  }

  private static Moment lost(double hours, double bytes, double... held) {
    return moment(new Happening(Kind.LOST, hours, -1, -1, bytes, Double.NaN, "it was lost"), held);
  }

  private static Moment until(Kind kind, double hours, double until, double... held) {
    return moment(new Happening(kind, hours, -1, -1, 5, until, ""), held);
  }

  /** What is said of the loss of everything that the layout held, after some moments. */
  private static List<String> why(Layout layout, String cause, Moment... moments) {
    return why(Shoots.Spacing.EVEN, layout, cause, moments);
  }

  private static List<String> why(
      Shoots.Spacing spacing, Layout layout, String cause, Moment... moments) {
    List<Loss> losses = List.of(loss(LOSS, 2e12, 3, true, cause));
    Studio studio = studio(spacing).layout(layout).build();
    return ending(story(studio, List.of(moments), losses)).why();
  }

  private static String outcome(Studio studio, Loss... losses) {
    return ending(story(studio, List.of(), List.of(losses))).outcome();
  }

  @Test
  void whatWasLostIsAddedUp() {
    Studio plain = studio(Shoots.Spacing.EVEN).layout(ALONE).build();
    assertThat(outcome(plain)).isEqualTo("Nothing was lost.");
    assertThat(outcome(plain, loss(1, 2e12, 3, false, "drive")))
        .isEqualTo("Lost: 2 TB (3 shoots).");
    assertThat(outcome(plain, loss(1, 2e9, 1, false, "drive"))).isEqualTo("Lost: 2 GB (1 shoot).");
    assertThat(outcome(plain, loss(1, 2e12, 3, true, "drive")))
        .isEqualTo("Lost: 2 TB (3 shoots); then no drive and no service held anything any more.");
    // 2 and 1 TB are 3, and 3 and 1.5 shoots 4.5.
    assertThat(outcome(plain, loss(1, 2e12, 3, false, "drive"), loss(2, 1e12, 1.5, false, "drive")))
        .isEqualTo("Lost: 3 TB (4.5 shoots), in 2 losses.");
    assertThat(outcome(plain, loss(1, 2e12, 3, true, "drive"), loss(2, 1e12, 1.5, false, "drive")))
        .isEqualTo(
            "Lost: 3 TB (4.5 shoots), in 2 losses; at one of them no drive and no service held"
                + " anything any more.");
  }

  /** Three shoots at 500 each. */
  @Test
  void whatItWasWorthIsToldWhereTheFileSaysSo() {
    Footage footage =
        Footage.builder(new Shoots(31, 10, Shoots.Spacing.EVEN)).worthPerShoot(500).build();
    Loss three = loss(1, 2e12, 3, false, "drive");
    assertThat(outcome(Studio.builder("s", 1).footage(footage).layout(ALONE).build(), three))
        .isEqualTo("Lost: 2 TB (3 shoots, worth 1,500).");
    Studio priced = Studio.builder("s", 1).footage(footage).currency("EUR").layout(ALONE).build();
    assertThat(outcome(priced, three)).isEqualTo("Lost: 2 TB (3 shoots, worth 1,500 EUR).");
  }

  @Test
  void theStoryIsAboutItsLargestLoss() {
    List<Moment> moments =
        List.of(
            moment(Kind.START, 0, -1, 0, 100),
            lost(50, 1e9, 50),
            lost(LOSS, 2e9, 20),
            lost(95, 2e9, 0));
    List<Loss> losses =
        List.of(
            loss(50, 1e9, 1, false, "unreadable+rebuild"),
            loss(LOSS, 2e9, 1, false, "drive"),
            loss(95, 2e9, 1, false, "defect+rebuild"));
    Studio studio = studio(Shoots.Spacing.EVEN).layout(ALONE).build();
    StoryEnding ending = ending(story(studio, moments, losses));
    assertThat(ending.focus()).as("of equal ones the first").isEqualTo(2);
    assertThat(ending.why())
        .containsExactly("Why (the largest loss, day 4): it was lost.", NO_OTHER);
  }

  @Test
  void oneCopyHasNoOther() {
    assertThat(why(ALONE, "drive", moment(Kind.COPY_GONE, LOSS, 0, 5, -1), lost(LOSS, 5, -1)))
        .containsExactly(LOST, NO_OTHER);
  }

  @ParameterizedTest
  @CsvSource({"box:bay, outside of that box", "place:home, in another place"})
  void allWentTogether(String cause, String where) {
    assertThat(
            why(
                with("far"),
                cause,
                moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 5),
                moment(Kind.COPY_GONE, LOSS, 1, 5, -1, -1),
                lost(LOSS, 5, -1, -1)))
        .containsExactly(
            LOST,
            "All copies went at the same instant: one "
                + where
                + ", up to date, would have kept it.");
  }

  /** Two days after the first drive of the two. */
  @Test
  void aDriveWasDown() {
    Layout mirror = Layout.of("l", on("main", Arrangement.MIRROR, 2).build());
    Happening first = new Happening(Kind.DRIVE_FAILED, BEFORE, 0, 0, 0, Double.NaN, "");
    assertThat(
            why(
                mirror,
                "drive+unseen",
                moment(first, 100),
                moment(Kind.COPY_GONE, LOSS, 0, 5, -1),
                lost(LOSS, 5, -1)))
        .containsExactly(
            LOST,
            NO_OTHER,
            "Another drive of main had been down for 2 days: had it been seen, replaced and rebuilt"
                + " sooner, nothing would have been lost.");
  }

  @Test
  void anotherCopyWasGone() {
    Moment main = moment(Kind.COPY_GONE, LOSS, 0, 5, -1, -1, -1);
    assertThat(
            why(
                with("b", "c"),
                "drive+away",
                moment(Kind.COPY_GONE, BEFORE, 1, 5, 100, -1, 100),
                moment(Kind.COPY_GONE, BEFORE, 2, 5, 100, -1, -1),
                main,
                lost(LOSS, 5, -1, -1, -1)))
        .containsExactly(
            LOST, "Gone at the time: b and c, for 2 days. Back and full, it would have kept it.");
    assertThat(why(with("b", "c"), "drive+away", main, lost(LOSS, 5, -1, -1, 100)))
        .as("since nobody knows when")
        .containsExactly(
            LOST, "Gone at the time: b, for some time. Back and full, it would have kept it.");
  }

  @Test
  void anotherCopyWasNotFullAgain() {
    assertThat(
            why(
                with("far"),
                "drive+away",
                moment(Kind.COPY_GONE, BEFORE, 1, 5, 100, -1),
                moment(Kind.COPY_BACK, 60, 1, 0, 100, 0),
                moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 50),
                lost(LOSS, 5, -1, 50)))
        .containsExactly(
            LOST, "Not full again at the time: far, which had been struck 2 days before.");
  }

  /** All that there was at the start: it was shot 90 hours before, which are 3.75 days. */
  @Test
  void anotherCopyWasBehind() {
    Moment[] moments = {
      moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 50), lost(LOSS, 2e12, -1, 50),
    };
    String faster = ". Fed sooner or faster, it would have been kept there.";
    assertThat(why(with("far"), "drive+behind:days", moments))
        .containsExactly(
            LOST, "Behind at the time: far, though it had been shot 3.8 days before" + faster);
    assertThat(why(Shoots.Spacing.RANDOM, with("far"), "drive+behind:days", moments))
        .containsExactly(LOST, "Behind at the time: far" + faster);
    assertThat(
            why(
                Shoots.Spacing.RANDOM,
                with("far"),
                "desk:malware+behind:days",
                until(Kind.MALWARE, LOSS, 200, 0, 50),
                lost(LOSS, 5, 0, 50)))
        .as("no feed is fast enough for that")
        .containsExactly(LOST, "Behind at the time: far.");
  }

  @Test
  void itHadBeenDeletedOnAnotherCopy() {
    Moment main = moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 50);
    Moment deleted = until(Kind.DELETED, BEFORE, 200, 100, 50);
    String later = ", and nobody had noticed. Noticed sooner, it would have been put back.";
    assertThat(why(with("far"), "drive+deleted", deleted, main, lost(LOSS, 5, -1, 50)))
        .containsExactly(LOST, "Deleted or destroyed at the time: on far, 2 days before" + later);
    assertThat(why(with("far"), "drive+deleted", deleted, deleted, main, lost(LOSS, 5, -1, 50)))
        .as("which of the two nobody knows")
        .containsExactly(LOST, "Deleted or destroyed at the time: on far" + later);
  }

  @Test
  void aFeedHadStopped() {
    assertThat(
            why(
                with("far"),
                "drive+behind:days",
                moment(Kind.FEED_STOPPED, BEFORE, 1, 0, 100, 50),
                moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 50),
                lost(LOSS, 5, -1, 50)))
        .containsExactly(LOST, "The feed of far had stopped 2 days before, and nobody had looked.");
  }

  @Test
  void aCopyHadBeenUnusable() {
    assertThat(
            why(
                with("far"),
                "drive+spoilt",
                moment(Kind.SPOILT, BEFORE, 1, 5, 100, 0),
                moment(Kind.COPY_GONE, LOSS, 0, 5, -1, 0),
                lost(LOSS, 5, -1, 0)))
        .containsExactly(
            LOST,
            "far had been unusable for 2 days, and nobody knew: a restore that is tried shows it.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "desk:deletion | No copy keeps what is deleted: one that does, until somebody notices, would"
            + " have kept it.",
        "desk:malware | Malware reached every copy and none keeps old versions: one out of its reach,"
            + " up to date, would have kept it.",
        "unreadable+rebuild | No other copy held what could not be read: one would have helped out.",
        "defect+rebuild | No other copy held what could not be read: one would have helped out, and a"
            + " scrub before might have found it.",
        "drive+cards | Cards that are kept longer would have held it.",
      })
  void whatElseWouldHaveHelped(String cause, String words) {
    assertThat(why(with("far"), cause, lost(LOSS, 5, 100, 100))).containsExactly(LOST, words);
  }

  /** It would have been noticed at hour 138, two days after the loss. */
  @Test
  void nobodyNoticedInTime() {
    Moment lost = lost(LOSS, 5, 100, 100);
    Moment late = until(Kind.DELETED, BEFORE, 138, 100, 100);
    Moment never = until(Kind.DELETED, BEFORE, Double.POSITIVE_INFINITY, 100, 100);
    assertThat(why(with("far"), "desk:deletion+late", late, lost))
        .containsExactly(
            LOST,
            "The last copy dropped it 2 days before anybody would have noticed: a copy that keeps"
                + " deleted footage that much longer would have kept it.");
    assertThat(why(with("far"), "desk:deletion+late", never, lost))
        .containsExactly(
            LOST,
            "Nobody would ever have noticed: only a copy that keeps deleted footage for good would"
                + " have kept it.");
    assertThat(why(with("far"), "desk:deletion+late", late, never, lost))
        .as("which of the two nobody knows")
        .containsExactly(
            LOST,
            "No copy kept it until somebody noticed: one that keeps deleted footage longer would"
                + " have.");
  }

  private static Moment bare(Kind kind, double hours, int copy, int down, double... held) {
    Snapshot scene = MadeStory.scene(held);
    int[] drives = new int[held.length];
    drives[0] = down;
    return new Moment(
        new Happening(kind, hours, copy, 0, 0, Double.NaN, ""),
        new Snapshot(1e12, 0, scene.heldBytes(), scene.gone(), drives, 1e12, 1));
  }

  private static Moment end(double... held) {
    return moment(Kind.END, 8_760, -1, 0, held);
  }

  private static String peril(Layout layout, Moment... moments) {
    List<String> why = ending(story(layout, List.of(moments))).why();
    assertThat(why).hasSize(1);
    return why.get(0);
  }

  @Test
  void neverNearIsSaidOfOneCopyAndOfMore() {
    assertThat(peril(ALONE, moment(Kind.START, 0, -1, 0, 100), end(100)))
        .isEqualTo("All of it stood in one copy only, all the time, and nothing took that.");
    assertThat(peril(with("far"), moment(Kind.START, 0, -1, 0, 100, 100), end(100, 100)))
        .isEqualTo(
            "At no time did half of it or more stand in one copy only after something had failed.");
  }

  /** From hour 42 to 90 are two days, and 24 hours more until hour 114. */
  @Test
  void theNearestItCame() {
    Moment gone = bare(Kind.COPY_GONE, BEFORE, 1, 0, 1e12, -1);
    Moment back = bare(Kind.COPY_BACK, 60, 1, 0, 1e12, 0);
    Moment full = bare(Kind.REFILLED, LOSS, 1, 0, 1e12, 1e12);
    String nearest =
        "The nearest it came: from day 2, for 2 days, 1 TB stood on main only, and one more failure"
            + " there would have lost it.";
    assertThat(peril(with("far"), gone, back, full, end(1e12, 1e12))).isEqualTo(nearest);
    Moment after = bare(Kind.DRIVE_FAILED, 114, 0, 1, 1, 1e12);
    assertThat(peril(with("far"), gone, back, full, after, end(1e12, 1e12)))
        .isEqualTo(nearest + " main was struck 24 hours after that was over.");
  }

  @ParameterizedTest
  @CsvSource({
    "MIRROR, 3, 0, 3 more failures",
    "MIRROR, 3, 2, one more failure",
    "PAIRS, 4, 0, 2 more failures (of one pair)",
    "PAIRS, 4, 1, one more failure (of the partner)",
    "PAIRS, 2, 0, 2 more failures",
  })
  void howManyMoreFailures(Arrangement arrangement, int drives, int down, String failures) {
    Layout layout =
        Layout.of(
            "l",
            on("main", arrangement, drives).build(),
            on("far", Arrangement.SINGLE, 1).fed(MadeStory.fed()).build());
    List<Moment> moments = new ArrayList<>();
    moments.add(bare(Kind.COPY_GONE, BEFORE, 1, down, 1e12, -1));
    moments.add(end(1e12, -1));
    assertThat(peril(layout, moments.toArray(Moment[]::new)))
        .contains("stood on main only, and " + failures + " there would have lost it.");
  }
}
