package lastcopy.history;

import static lastcopy.history.Rows.after;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.FootageBuilder;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * What becomes of runs and refills that something cuts short or outdates, by hand. A studio has 100
 * bytes on hand and shoots 10 more every 30 h; its far copy is fed from hour 2 on every 24 h at 10
 * bytes an hour and gives back 20 an hour; a replacement takes 24 h. Drives have 100 bytes where
 * they stand on a shelf, and its second enters service at 30 h.
 */
class CutFlowsByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;

  private static CopyBuilder copy(String id, Arrangement arrangement, double lives) {
    double size = arrangement == Arrangement.SHELF ? 100 : 1e6;
    return ByHand.copy(id, arrangement, size, lives, 24);
  }

  private static Copy far(Arrangement arrangement, double lives) {
    return fed(copy("far", arrangement, lives)).restoresAt(20 * PER_HOUR).build();
  }

  private static CopyBuilder fed(CopyBuilder copy) {
    return copy.fed(Feed.from("main").every(24, 2).link(10 * PER_HOUR).build());
  }

  private static List<String> told(
      double horizon, OptionalDouble cards, FootageBuilder footage, Copy... copies) {
    Layout layout = new Layout("l", "l", List.of(copies), cards);
    return Rows.told(
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(footage.build())
            .layout(layout)
            .build());
  }

  private static FootageBuilder footage() {
    return Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1);
  }

  /**
   * The shoot of 240 h crosses from 242 to 243 h, and the drive that it is read from dies at 242.5:
   * 5 of its 10 bytes stand on its cards only, kept for 60 h, until it is offloaded again at 266.5
   * with the shoot of 210; 60 bytes stand in the far copy only. Red if what the drive held goes on
   * coming.
   */
  @Test
  void aRunCannotReadFromADriveThatDied() {
    Copy main = copy("main", Arrangement.SHELF, 212.5).build();
    List<String> rows =
        told(269.8, OptionalDouble.of(60), footage(), main, far(Arrangement.SINGLE, FOREVER));
    assertThat(after("DRIVE_FAILED", rows))
        .containsExactly(
            "212.5 DRIVE_FAILED 0 0 100 236.5 [] 170 0 70 160 | 100",
            "236.5 DRIVE_READY 0 0 0 - [] 170 0 70 170 | 100",
            "236.5 REFILL_STARTED 0 -1 100 241.5 [far] 170 0 70 170 | 100",
            "241.5 REFILLED 0 -1 0 - [] 180 0 180 170 | 0",
            "242.5 DRIVE_FAILED 0 1 80 266.5 [] 180 0 100 175 | 65",
            "266.5 DRIVE_READY 0 1 0 - [] 180 0 100 175 | 65",
            "266.5 REFILL_STARTED 0 -1 60 269.5 [far] 180 0 120 175 | 60",
            "269.5 REFILLED 0 -1 0 - [] 180 0 180 175 | 0",
            "269.8 END -1 -1 0 - [] 180 0 180 175");
  }

  /**
   * Of a far shelf the first drive is empty from 212.5 h on and back at 236.5; at 242 a run begins
   * to bring its 100 bytes and the 10 of 240 h. At 242.5 the second dies with 70 bytes: the run
   * brings the first's only, to 252 h. The second is there at 266.5, after the run of 266; that of
   * 290 brings 90 bytes. Red if what is on its way fills a drive that is down.
   */
  @Test
  void aRunCannotFillADriveThatDied() {
    Copy main = copy("main", Arrangement.SINGLE, FOREVER).build();
    List<String> rows =
        told(299.5, OptionalDouble.empty(), footage(), main, far(Arrangement.SHELF, 212.5));
    assertThat(after("DRIVE_FAILED", rows))
        .containsExactly(
            "212.5 DRIVE_FAILED 1 0 100 236.5 [] 170 0 170 60 | 110",
            "236.5 DRIVE_READY 1 0 0 - [] 170 0 170 70 | 100",
            "242.5 DRIVE_FAILED 1 1 70 266.5 [] 180 0 180 5 | 175",
            "266.5 DRIVE_READY 1 1 0 - [] 180 0 180 100 | 80",
            "299 REFILLED 1 -1 0 - [] 190 0 190 190 | 0",
            "299.5 END -1 -1 0 - [] 190 0 190 190");
  }

  /**
   * Kept for 95 h: what was shot at 120, 150 and 180 h counts when the drive fails at 200.5, from
   * 215 on only the last two. Red if only the first that ages out is looked at.
   */
  @Test
  void footageAgesOutWhileACopyIsGone() {
    Copy main = copy("main", Arrangement.SINGLE, 200.5).build();
    List<String> rows =
        told(
            269,
            OptionalDouble.empty(),
            footage().keepFor(95),
            main,
            far(Arrangement.SINGLE, FOREVER));
    assertThat(after("COPY_GONE", rows))
        .containsExactly(
            "200.5 COPY_GONE 0 -1 30 224.5 [] 160 0 0 30 | 30",
            "224.5 COPY_BACK 0 -1 0 - [] 170 0 0 20 | 20",
            "224.5 REFILL_STARTED 0 -1 20 225.5 [far] 170 0 0 20 | 20",
            "225.5 REFILLED 0 -1 0 - [] 170 0 30 20 | 10",
            "269 END -1 -1 0 - [] 180 0 30 30");
  }

  /**
   * Kept for 95 h, while cards are kept for 200: at 210 h the shoots of 120, 150 and 180 h are
   * offloaded from them again, and that of 210. Red if those before come back too.
   */
  @Test
  void cardsThatAreKeptForLongerThanFootage() {
    Copy main = copy("main", Arrangement.SINGLE, 186).build();
    Copy far = far(Arrangement.SINGLE, FOREVER);
    List<String> rows = told(212, OptionalDouble.of(200), footage().keepFor(95), main, far);
    assertThat(after("COPY_GONE", rows))
        .containsExactly(
            "186 COPY_GONE 0 -1 30 210 [] 160 0 0 20 | 10",
            "210 COPY_BACK 0 -1 0 - [] 170 0 0 20 | 10",
            "210 REFILLED 0 -1 0 - [] 170 0 30 20 | 0",
            "212 END -1 -1 0 - [] 170 0 40 20");
  }

  private static Copy cloud(double afterHours) {
    Medium service =
        new Medium.Service(Rate.NONE, OptionalDouble.empty(), OptionalDouble.empty(), afterHours);
    return fed(Copy.builder("cloud").on(service)).restoresAt(1_000 * PER_HOUR).build();
  }

  private static String refill(double cloudAfterHours) {
    Copy main = copy("main", Arrangement.SINGLE, 200.5).build();
    Copy near = far(Arrangement.SINGLE, FOREVER);
    List<String> rows =
        told(295, OptionalDouble.empty(), footage(), main, cloud(cloudAfterHours), near);
    return after("REFILL_STARTED", rows).get(0);
  }

  /**
   * 160 bytes at 20 an hour take 8 h; the service gives 1,000 an hour, after 7 h (7.16) or 8 (8.16)
   * in which it sends nothing. Red if the faster link decides.
   */
  @Test
  void aRefillIsFromTheCopyThatHasGivenAllFirst() {
    assertThat(refill(7)).contains(" REFILL_STARTED 0 -1 160 231.66 [cloud] ");
    assertThat(refill(8)).contains(" REFILL_STARTED 0 -1 160 232.5 [far] ");
  }

  /**
   * A shelf lacks the 100 bytes of the first drive, which died at 200.5 h, and while the second is
   * down, from 210 to 234, knows that what was there cannot be had yet: 5 h from the far copy, and
   * a service that gives nothing for 6 is not sooner. Red if it lacks more, as that would be.
   */
  @Test
  void aRefillIsOfWhatIsLackedAndCanBeTaken() {
    for (double lives : new double[] {FOREVER, 180}) {
      DriveModel first = DriveModel.builder("m", 100).fails(new Fixed(200.5)).build();
      DriveModel second = DriveModel.builder("o", 100).fails(new Fixed(lives)).build();
      Medium shelf = Medium.DriveSet.builder(Arrangement.SHELF, 2).ofEach(first, second).build();
      Copy main = Copy.builder("main").on(shelf).arrival(new Fixed(24)).build();
      List<String> rows =
          told(
              240,
              OptionalDouble.empty(),
              footage(),
              main,
              cloud(6),
              far(Arrangement.SINGLE, FOREVER));
      assertThat(after("REFILL_STARTED", rows).get(0))
          .contains("224.5 REFILL_STARTED 0 -1 100 229.5 [far] ");
    }
  }

  /**
   * A shelf whose first drive died at 100 h, for good, gives back what the second has, which has an
   * unreadable spot since 50 h after it came: a byte. Red if the spot of the one that is gone is
   * met too.
   */
  @Test
  void aDriveThatIsGoneHidesNothing() {
    DriveModel first = DriveModel.builder("m", 100).fails(new Fixed(100)).build();
    DriveModel second = DriveModel.builder("o", 100).fails(new Fixed(FOREVER)).build();
    Medium shelf =
        Medium.DriveSet.builder(Arrangement.SHELF, 2)
            .ofEach(first, second)
            .latentDefects(new Fixed(50))
            .build();
    Copy far = fed(Copy.builder("far").on(shelf).arrival(new Fixed(FOREVER))).build();
    Copy main = copy("main", Arrangement.SINGLE, 200.5).build();
    assertThat(told(240, OptionalDouble.empty(), footage(), main, far))
        .filteredOn(row -> row.contains("UNREADABLE"))
        .singleElement()
        .asString()
        .startsWith("224.5 UNREADABLE 1 -1 1 ");
  }

  /**
   * Filled at one byte an hour from the start, a shelf has 50.5 bytes when its drive dies at 50.5
   * h, also after something else has happened at 20 h. Red if what came since is forgotten.
   */
  @Test
  void aDriveThatDiesWhileItIsFilled() {
    Feed slow = Feed.from("main").every(1_000).link(PER_HOUR).build();
    Copy far = copy("far", Arrangement.SHELF, 50.5).startsEmpty().fed(slow).build();
    Copy other = fed(copy("other", Arrangement.SINGLE, 20)).build();
    Copy main = copy("main", Arrangement.SINGLE, FOREVER).build();
    List<String> rows = told(60, OptionalDouble.empty(), footage(), main, far, other);
    assertThat(after("DRIVE_FAILED", rows).get(0)).startsWith("50.5 DRIVE_FAILED 1 0 50.5 74.5 ");
  }
}
