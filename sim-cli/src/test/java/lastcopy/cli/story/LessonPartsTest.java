package lastcopy.cli.story;

import static lastcopy.cli.story.MadeStory.alone;
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
import java.util.stream.LongStream;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.interval.Estimate;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Desk;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.story.Life;
import lastcopy.story.Moment;
import lastcopy.story.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a page for teaching draws and says, of facts made by hand. */
class LessonPartsTest {

  private static final Layout ALONE = alone(OptionalDouble.empty(), 0);

  private static ClassDraw draw(long... numbers) {
    List<Life> lives = new ArrayList<>(List.of(new Life(3, 9, 0, Optional.empty())));
    LongStream.of(numbers).forEach(n -> lives.add(new Life(n, 9, 2e12, Optional.empty())));
    return ClassDraw.of(new Survey(2_000, lives, true));
  }

  /** 50 in a row, 10 wide and high each: number 51 is the second of the second row. */
  @Test
  void studiosAreSquaresInTheOrderOfTheirNumbers() {
    ClassDraw draw = draw(0, 51, 999, 1_000);
    assertThat(draw.losing())
        .as("of 1,000, without that which loses nothing")
        .extracting(ClassDraw.Square::number)
        .containsExactly(0L, 51L, 999L);
    assertThat(draw.losing()).extracting(ClassDraw.Square::place).containsExactly(1L, 52L, 1_000L);
    assertThat(draw.losing()).extracting(ClassDraw.Square::x).containsExactly(0L, 10L, 490L);
    assertThat(draw.losing()).extracting(ClassDraw.Square::y).containsExactly(0L, 10L, 190L);
    assertThat(draw.width()).isEqualTo(500);
    assertThat(draw.height()).isEqualTo(200);
    assertThat(draw.data()).isEqualTo("1:2 TB;52:2 TB;1000:2 TB");
    String squares = "1,000 studios drawn as squares: ";
    assertThat(draw.pictured()).isEqualTo(squares + "3 lose footage");
    assertThat(draw(7).pictured()).isEqualTo(squares + "1 loses footage");
    assertThat(draw().pictured()).isEqualTo(squares + "none loses footage");
  }

  @Test
  void whatAClassSees() {
    Estimate often = new Estimate(0.07, 0.068, 0.072, true);
    String these = "The squares are the first 1,000 simulated studios of the seed, none left out: ";
    assertThat(LessonWords.seen(draw(1, 2), often)).isEqualTo(these + "2 of them lose footage.");
    assertThat(LessonWords.seen(draw(1), often)).isEqualTo(these + "1 of them loses footage.");
    assertThat(LessonWords.seen(draw(), often)).isEqualTo(these + "none of them loses footage.");
    assertThat(LessonWords.seen(draw(), new Estimate(1.0 / 1_024, 0, 1, true)))
        .isEqualTo(these + "none of them loses footage. On average one loses footage in 1,024.");
    assertThat(LessonWords.seen(draw(), new Estimate(0.001, 0, 1, true)))
        .as("one in 1,000 is what is drawn")
        .doesNotContain("average");
    assertThat(LessonWords.seen(draw(), new Estimate(0, 0, 1e-4, false)))
        .as("of what was never seen there is no average")
        .doesNotContain("average");
  }

  @Test
  void whatToBewareOfIsSaid() {
    assertThat(LessonWords.cautions())
        .hasSize(3)
        .contains("A copy counts only once restoring from it was tried.");
  }

  @Test
  void theChanceIsToldInStudios() {
    assertThat(LessonWords.chance(new Estimate(0.07, 0.068, 0.072, true), 5))
        .isEqualTo(
            "Of 1,000 studios like this one, 70 (68 to 72) lose footage within 5 years (95 %"
                + " interval).");
    assertThat(LessonWords.chance(new Estimate(0, 0, 3e-4, false), 1))
        .isEqualTo(
            "Of 10,000 studios like this one, at most 3 lose footage within 1 year (95 %"
                + " interval).");
  }

  @ParameterizedTest
  @EnumSource(Arrangement.class)
  void drivesThatStandInForEachOtherAreOneCopy(Arrangement arrangement) {
    boolean alike =
        switch (arrangement) {
          case MIRROR, PAIRS, PARITY, DOUBLE_PARITY -> true;
          case SINGLE, STRIPE, SHELF -> false;
        };
    int drives = arrangement == Arrangement.SINGLE ? 1 : 4;
    List<String> points = points(Desk.QUIET, on("main", arrangement, drives).build());
    assertThat(points.stream().anyMatch(p -> p.startsWith("Drives that stand in")))
        .isEqualTo(alike);
    assertThat(points)
        .contains("Every copy stands in one place: whatever takes that place takes them all.");
    assertThat(points.stream().anyMatch(p -> p.startsWith("A second copy"))).isFalse();
  }

  /** Of a deletion only where there are any and no copy keeps them. */
  @Test
  void aDeletionIsFinalWhereNoCopyKeepsIt() {
    Desk desk = Desk.of(new Desk.Deletion(new Rate(1e-5), new Desk.ShootCount(1), new Fixed(9)));
    Copy main = on("main", Arrangement.SINGLE, 1).at(Place.of("studio")).build();
    Copy keeps =
        on("far", Arrangement.SINGLE, 1)
            .at(Place.of("home"))
            .keepsDeleted(24)
            .fed(MadeStory.fed())
            .build();
    String deletion = "No copy keeps what was deleted: a deletion by mistake is final.";
    String behind =
        "A second copy is behind the first: what was shot since its last run is not there.";
    String place = "Every copy stands in one place: whatever takes that place takes them all.";
    assertThat(points(desk, main)).containsExactly(place, deletion);
    assertThat(points(Desk.QUIET, main)).containsExactly(place);
    assertThat(points(desk, main, keeps)).containsExactly(behind);
  }

  private static List<String> points(Desk desk, Copy... copies) {
    Layout layout = Layout.of("l", copies);
    Studio studio = studio(Shoots.Spacing.EVEN).desk(desk).layout(layout).build();
    return LessonWords.pointAt(studio, layout);
  }

  private static Moment held(double hours, double shot, double lost, double... held) {
    Snapshot scene = MadeStory.scene(held);
    return new Moment(
        new Happening(Kind.COPY_BACK, hours, 0, 0, 0, Double.NaN, ""),
        new Snapshot(shot, lost, scene.heldBytes(), scene.gone(), new int[held.length], 0, 1));
  }

  /**
   * 300 wide for a year and 30 high for 100 bytes, from above: a quarter is 75 and half 15. Until
   * it goes at a quarter, the copy follows what is shot.
   */
  @Test
  void aLaneFollowsWhatACopyHolds() {
    assertThat(
            LaneShape.of(
                story(
                    ALONE,
                    List.of(
                        held(0, 50, 0, 50),
                        held(2_190, 75, 0, 0),
                        held(4_380, 80, 0, 80),
                        held(8_760, 100, 0, 100))),
                0))
        .isEqualTo(
            "0.0,30.0 0.0,15.0 75.0,7.5 75.0,30.0 150.0,6.0 150.0,6.0 300.0,0.0 300.0,0.0"
                + " 300.0,30.0");
  }

  /** What lacks half of what is there lacks it until something comes; what is lost is not there. */
  @Test
  void aCopyThatIsBehindDoesNotFollow() {
    assertThat(
            LaneShape.of(
                story(with("far"), List.of(held(0, 50, 0, 50, 25), held(4_380, 100, 0, 100, 25))),
                1))
        .isEqualTo("0.0,30.0 0.0,22.5 150.0,22.5 150.0,22.5 300.0,30.0");
    assertThat(
            LaneShape.of(story(ALONE, List.of(held(0, 50, 20, 30), held(4_380, 100, 50, 50))), 0))
        .as("30 of 30, and 50 more are 80 until 30 of them go")
        .isEqualTo("0.0,30.0 0.0,21.0 150.0,6.0 150.0,15.0 300.0,30.0");
    assertThat(LaneShape.of(story(ALONE, List.of(held(0, 0, 0, 0))), 0))
        .as("nothing shot yet")
        .isEqualTo("0.0,30.0 0.0,30.0 300.0,30.0");
  }

  private static LifePicture picture(List<Moment> moments, boolean biased) {
    Told told =
        new Told(
            Optional.of(story(with("far"), moments)),
            "history",
            0,
            List.of("As asked."),
            true,
            biased ? Optional.of(new Estimate(1e-5, 0, 1, true)) : Optional.empty());
    return LifePicture.of("id", "A life", told, new StoryClock(Optional.empty(), 8_760));
  }

  private static List<Moment> failures(double... hours) {
    List<Moment> moments = new ArrayList<>();
    moments.add(moment(Kind.START, 0, -1, 0, 100, 100));
    for (double at : hours) {
      moments.add(moment(Kind.FEED_STOPPED, at, 1, 0, 100, 100));
    }
    moments.add(moment(Kind.END, 8_760, -1, 0, 100, 100));
    return moments;
  }

  /** 14 of 100 of a year are 1,226.4 hours; 876 hours are 30 of 300. */
  @Test
  void happeningsNearEachOtherHaveOneLabel() {
    LifePicture picture = picture(failures(876, 2_102, 2_103, 4_380), false);
    assertThat(picture.ticks())
        .containsExactly(
            new LifePicture.Tick("30.0", "1 to 2"),
            new LifePicture.Tick("72.0", "3"),
            new LifePicture.Tick("150.0", "4"));
    assertThat(picture.marks())
        .extracting(LifePicture.Happened::number)
        .containsExactly(1, 2, 3, 4);
    assertThat(picture.marks().get(0))
        .isEqualTo(
            new LifePicture.Happened(
                1, 876, "day 37", "The feed of far stops, and nobody sees it."));
    assertThat(picture.pictured())
        .isEqualTo("A life: what each copy holds over time, 4 happenings marked");
    assertThat(picture(failures(876), false).pictured()).endsWith(", 1 happening marked");
    assertThat(picture(failures(), false).ticks()).isEmpty();
  }

  @Test
  void aPictureSaysHowItWasChosenAndEnds() {
    assertThat(picture(failures(876), false).how())
        .containsExactly("As asked.", "History 0 under seed 1; --history 0 tells it in full.");
    assertThat(picture(failures(876), true).how())
        .containsExactly(
            "As asked.", "Biased history 0 under seed 1; --history 0 --biased tells it in full.");
    assertThat(picture(failures(876), false).ending())
        .containsExactly(
            "Nothing was lost.",
            "At no time did half of it or more stand in one copy only after something had failed.");
  }

  /** Lanes 30 high below gaps of 18; the axis is a gap below the second, at 2 x 48 + 18. */
  @Test
  void lanesStandBelowEachOther() {
    LifePicture picture = picture(failures(876), false);
    assertThat(picture.lanes()).extracting(LifePicture.Lane::name).containsExactly("main", "far");
    assertThat(picture.lanes()).extracting(LifePicture.Lane::top).containsExactly(18, 66);
    assertThat(picture.lanes()).extracting(LifePicture.Lane::textTop).containsExactly(14, 62);
    assertThat(picture.lanes().get(1).points()).startsWith("0.0,30.0 0.0,0.0 ");
    assertThat(picture.axis()).isEqualTo(114);
    assertThat(picture.labelTop()).isEqualTo(127);
    assertThat(picture.height()).isEqualTo(132);
    assertThat(picture.width()).isEqualTo(300);
    assertThat(picture.laneHeight()).isEqualTo(30);
  }

  /** Eight at most: five before the moment that matters, that, and what came of it. */
  @Test
  void aLongLifeKeepsWhatIsNearItsPoint() {
    double[] hours = LongStream.rangeClosed(1, 20).mapToDouble(h -> h).toArray();
    assertThat(picture(failures(hours), false).marks())
        .extracting(LifePicture.Happened::hours)
        .containsExactly(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0);
    List<Moment> moments = failures(hours);
    moments.set(2, lost(2, 5));
    moments.set(5, lost(5, 9));
    moments.set(10, lost(10, 99));
    moments.set(19, lost(19, 9));
    assertThat(picture(moments, false).marks())
        .as("and the first two losses")
        .extracting(LifePicture.Happened::hours)
        .containsExactly(2.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
  }

  private static Moment lost(double hours, double bytes) {
    return moment(Kind.LOST, hours, -1, bytes, 100, 100);
  }
}
