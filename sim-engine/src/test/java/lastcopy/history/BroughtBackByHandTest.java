package lastcopy.history;

import static lastcopy.history.Rows.after;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
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
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** From where and until when copies are brought back that were gone, by hand. */
class BroughtBackByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;
  private static final double FOREVER = 1e9;

  private static FootageBuilder onHand(double bytes) {
    return Footage.builder(new Shoots(FOREVER, 10, Shoots.Spacing.EVEN)).onHand(bytes).clip(1);
  }

  private static List<String> told(double horizon, FootageBuilder footage, Copy... copies) {
    Layout layout = new Layout("l", "l", List.of(copies), OptionalDouble.empty());
    return Rows.told(
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR)
            .footage(footage.build())
            .layout(layout)
            .build());
  }

  private static CopyBuilder copy(String id, double lives) {
    return ByHand.copy(id, Arrangement.SINGLE, 1e6, lives, 24);
  }

  private static Copy shelf(double first) {
    DriveModel one = DriveModel.builder("m", 100).fails(new Fixed(first)).build();
    DriveModel other = DriveModel.builder("o", 100).fails(new Fixed(FOREVER)).build();
    Medium shelf = Medium.DriveSet.builder(Arrangement.SHELF, 2).ofEach(one, other).build();
    return Copy.builder("main").on(shelf).arrival(new Fixed(1_000)).build();
  }

  /** Dies at 100 h, of an age; is fed every day at 2 at ten bytes an hour. */
  private static Copy far() {
    DriveModel old =
        DriveModel.builder("m", 1e6).fails(new Fixed(1_000)).age(new Fixed(900)).build();
    return Copy.builder("far")
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(old).build())
        .arrival(new Fixed(24))
        .fed(Feed.from("main").every(24, 2).link(10 * PER_HOUR).build())
        .build();
  }

  /**
   * Of 150 bytes 40 have crossed when the working shelf's first drive dies at 150 h: 60 are lost,
   * and the copy has all that is to be had when the other 50 have crossed, at 155. Red if it waits
   * for what nobody has.
   */
  @Test
  void whatIsLostIsNotWaitedFor() {
    String why = "a drive failed while another copy was gone or not yet full again";
    assertThat(after("COPY_GONE", told(200, onHand(150), shelf(150), far())))
        .containsExactly(
            "100 COPY_GONE 1 -1 150 124 [] 150 0 150 0 | 150",
            "124 COPY_BACK 1 -1 0 - [] 150 0 150 0 | 150",
            "150 DRIVE_FAILED 0 0 100 1150 [] 150 0 50 40 | 90",
            "150 LOST -1 -1 60 - [" + why + "] 150 60 50 40 | 90",
            "155 REFILLED 1 -1 0 - [] 150 60 50 90 | 40",
            "200 END -1 -1 0 - [] 150 60 50 90");
  }

  /** All ages out at 150 h, when 40 bytes have crossed; a shelf goes on holding it. */
  @Test
  void whatHasAgedOutIsNotWaitedFor() {
    assertThat(after("COPY_BACK", told(200, onHand(150).keepFor(150), shelf(FOREVER), far())))
        .containsExactly(
            "124 COPY_BACK 1 -1 0 - [] 150 0 150 0 | 150",
            "150 REFILLED 1 -1 0 - [] 150 0 150 0 | 0",
            "200 END -1 -1 0 - [] 150 0 150 0");
  }

  /**
   * The near copy is fed from the far one at one byte an hour from the start; the working copy dies
   * at 50 h and is back at 74, when it has 74 of 100 bytes.
   */
  private static List<String> refills(double nearGives) {
    Copy main = copy("main", 50).build();
    Copy far =
        copy("far", FOREVER)
            .fed(Feed.from("main").every(24).build())
            .restoresAt(20 * PER_HOUR)
            .build();
    Copy near =
        copy("near", FOREVER)
            .startsEmpty()
            .fed(Feed.from("far").continuous().link(PER_HOUR).build())
            .restoresAt(nearGives * PER_HOUR)
            .build();
    return after("COPY_BACK", told(90, onHand(100), main, far, near));
  }

  /** It gives 74 bytes in 0.74 h; what trickles in meanwhile is had from the far copy, at 20. */
  @Test
  void fromTheFastestAndThenFromTheNext() {
    assertThat(refills(100))
        .containsExactly(
            "74 COPY_BACK 0 -1 0 - [] 100 0 0 100 74 | 26",
            "74 REFILL_STARTED 0 -1 74 74.74 [near] 100 0 0 100 74 | 26",
            "74.74 REFILL_STARTED 0 -1 26 76.04 [far] 100 0 74 100 74.74 | 25.26",
            "76.04 REFILLED 0 -1 0 - [] 100 0 100 100 76.04 | 0",
            "90 END -1 -1 0 - [] 100 0 100 100 90");
  }

  /** It would give them in less than a quarter of an hour, and then nearly nothing ever again. */
  @Test
  void notFromOneThatIsItselfBeingFedAndHasLittle() {
    assertThat(refills(1_000))
        .containsExactly(
            "74 COPY_BACK 0 -1 0 - [] 100 0 0 100 74 | 26",
            "74 REFILL_STARTED 0 -1 100 79 [far] 100 0 0 100 74 | 26",
            "79 REFILLED 0 -1 0 - [] 100 0 100 100 79 | 0",
            "90 END -1 -1 0 - [] 100 0 100 100 90");
  }

  /**
   * The near copy is filled at one byte an hour from 2 h on, and the far one, behind it, at each
   * quarter of an hour with the quarter of a byte that has come, in 1.5 minutes. Red if the far one
   * waits for the end.
   */
  @Test
  void aCopyBehindOneThatIsBeingFilled() {
    Copy near =
        copy("near", FOREVER)
            .startsEmpty()
            .fed(Feed.from("main").every(1_000, 2).link(PER_HOUR).build())
            .build();
    Copy far =
        copy("far", FOREVER)
            .startsEmpty()
            .fed(Feed.from("near").continuous().link(10 * PER_HOUR).build())
            .build();
    assertThat(told(52.1, onHand(100), copy("main", FOREVER).build(), near, far))
        .endsWith("52.1 END -1 -1 0 - [] 100 0 100 50.1 50");
  }

  /**
   * Ten bytes come to the near copy from 50.1 to 50.2 h, and go on to the far one at once when all
   * are there, in as long. If the working copy dies at 50.15 h, and another has died before, five
   * have come, and go on then. Red if they wait for a quarter of an hour.
   */
  @Test
  void aCopyBehindOneThatHasBeenFilled() {
    Copy near =
        copy("near", FOREVER)
            .startsEmpty()
            .fed(Feed.from("main").every(1_000, 50.1).link(100 * PER_HOUR).build())
            .build();
    Copy far =
        copy("far", FOREVER)
            .startsEmpty()
            .fed(Feed.from("near").continuous().link(100 * PER_HOUR).build())
            .build();
    assertThat(told(50.3001, onHand(10), copy("main", FOREVER).build(), near, far))
        .endsWith("50.3 END -1 -1 0 - [] 10 0 10 10 10");
    Copy other =
        copy("other", 20)
            .arrival(new Fixed(FOREVER))
            .fed(Feed.from("main").every(1_000).build())
            .build();
    Copy main = copy("main", 50.15).build();
    assertThat(told(50.2001, onHand(10), main, near, far, other))
        .endsWith("50.2 END -1 -1 0 - [] 10 5 0 5 5 0");
  }

  /**
   * The working copy starts empty and is filled from a drive with a spot that has been unreadable
   * from the start: a byte is lost at once.
   */
  @Test
  void whatIsMetAtTheStartIsLostThen() {
    Medium bad =
        Medium.DriveSet.builder(Arrangement.SINGLE, 1)
            .of(DriveModel.builder("m", 1e6).fails(new Fixed(FOREVER)).build())
            .latentDefects(new Fixed(0))
            .build();
    Copy far =
        Copy.builder("far")
            .on(bad)
            .restoresAt(20 * PER_HOUR)
            .fed(Feed.from("main").every(24, 5).build())
            .build();
    List<String> lost =
        told(9, onHand(100), copy("main", FOREVER).startsEmpty().build(), far).stream()
            .filter(row -> row.contains(" LOST "))
            .map(row -> row.substring(0, row.indexOf(" - [")))
            .toList();
    assertThat(lost).containsExactly("0 LOST -1 -1 1");
  }

  /**
   * One of a stripe of two dies at 100 h, and the other at 120, when the copy is gone anyway: both
   * are new at 150 h, so that the other dies again at 270.
   */
  @Test
  void aDriveThatDiesWhileItsCopyIsGone() {
    DriveModel one =
        DriveModel.builder("m", 1e6).fails(new Fixed(1_000)).age(new Fixed(900)).build();
    DriveModel other = DriveModel.builder("o", 1e6).fails(new Fixed(120)).build();
    Medium stripe = Medium.DriveSet.builder(Arrangement.STRIPE, 2).ofEach(one, other).build();
    Copy main = Copy.builder("main").on(stripe).arrival(new Fixed(50)).build();
    assertThat(told(300, onHand(100), main).stream().filter(row -> row.contains("COPY_GONE")))
        .extracting(row -> row.substring(0, row.indexOf(" [")))
        .containsExactly("100 COPY_GONE 0 -1 100 150", "270 COPY_GONE 0 -1 0 320");
  }

  /**
   * The working copy is filled from 74 h on by the far copy, which dies at 76 h with 60 bytes still
   * to come. The near one, to which it turns at once, has an unreadable spot: what is lost of a
   * byte is lost then, unless it has come already.
   */
  @Test
  void whatIsMetWhenASourceDiesIsLostThen() {
    Medium bad =
        Medium.DriveSet.builder(Arrangement.SINGLE, 1)
            .of(DriveModel.builder("m", 1e6).fails(new Fixed(FOREVER)).build())
            .latentDefects(new Fixed(10))
            .build();
    Feed daily = Feed.from("main").every(24).build();
    Copy far = copy("far", 76).fed(daily).restoresAt(20 * PER_HOUR).build();
    Copy near = Copy.builder("near").on(bad).fed(daily).restoresAt(10 * PER_HOUR).build();
    Studio studio =
        Studio.builder("s", 90 / Units.HOURS_PER_YEAR)
            .footage(onHand(100).build())
            .layout(Layout.of("l", copy("main", 50).build(), far, near))
            .build();
    History history = new History(studio, studio.layouts().get(0), 1);
    int lossy = 0;
    for (int k = 0; k < 50; k++) {
      ToldHistory told = ToldHistory.of(history, k);
      assertThat(told.all(Kind.UNREADABLE)).extracting(Happening::hours).containsExactly(76.0);
      double lost = told.lostAt(76);
      assertThat(told.all(Kind.LOST)).hasSize(lost > 0 ? 1 : 0);
      assertThat(told.after(Kind.END).heldBytes()[0]).isCloseTo(100 - lost, within(1e-9));
      lossy += lost > 0 ? 1 : 0;
    }
    assertThat(lossy).isBetween(1, 49);
  }
}
