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
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * Histories without luck, event by event against a timeline by hand. A studio has 100 bytes on hand
 * and shoots 10 more every 30 h; its far copy is fed from hour 2 on every 24 h at 10 bytes an hour
 * and gives back 20 an hour. A drive of the working copy lives for so many hours and its
 * replacement takes 24 h. What a row says is told at {@link Rows}.
 */
class ToldByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;

  private static Medium.DriveSet drives(Arrangement arrangement, double lives) {
    DriveModel model = DriveModel.builder("m", 100).fails(new Fixed(lives)).build();
    return Medium.DriveSet.builder(arrangement, 1).of(model).build();
  }

  private static CopyBuilder main(Medium on) {
    return Copy.builder("main").on(on).arrival(new Fixed(24));
  }

  private static Copy far() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Fixed(1e9)).build();
    return Copy.builder("far")
        .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
        .fed(Feed.from("main").every(24, 2).link(10 * PER_HOUR).build())
        .restoresAt(20 * PER_HOUR)
        .build();
  }

  private static List<String> told(double horizon, OptionalDouble cards, Copy... copies) {
    Footage footage =
        Footage.builder(new Shoots(30, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(copies), cards);
    Studio studio =
        Studio.builder("s", horizon / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    return Rows.told(studio);
  }

  /** What was shot at 180 h has crossed by 195; the drive fails at 200.5. */
  @Test
  void whatHasCrossedIsSaved() {
    Copy main = main(drives(Arrangement.SINGLE, 200.5)).build();
    assertThat(after("COPY_GONE", told(415, OptionalDouble.empty(), main, far())))
        .containsExactly(
            "200.5 COPY_GONE 0 -1 160 224.5 [] 160 0 0 160 | 160",
            "224.5 COPY_BACK 0 -1 0 - [] 170 0 0 160 | 160",
            "224.5 REFILL_STARTED 0 -1 160 232.5 [far] 170 0 0 160 | 160",
            "232.5 REFILLED 0 -1 0 - [] 170 0 170 160 | 10",
            "415 END -1 -1 0 - [] 230 0 230 230");
  }

  /** At 190.5 h it has not: ten bytes, shot within the last day. */
  @Test
  void whatHasNotCrossedIsLost() {
    Copy main = main(drives(Arrangement.SINGLE, 190.5)).build();
    String why = "a drive failed while no other copy had what was shot within the last day";
    assertThat(after("COPY_GONE", told(295, OptionalDouble.empty(), main, far())))
        .containsExactly(
            "190.5 COPY_GONE 0 -1 160 214.5 [] 160 0 0 150 | 150",
            "190.5 LOST -1 -1 10 - [" + why + "] 160 10 0 150 | 150",
            "214.5 COPY_BACK 0 -1 0 - [] 170 10 0 150 | 150",
            "214.5 REFILL_STARTED 0 -1 150 222 [far] 170 10 0 150 | 150",
            "222 REFILLED 0 -1 0 - [] 170 10 160 160 | 0",
            "295 END -1 -1 0 - [] 190 10 180 180");
  }

  /** Cards are kept for 30 h: the last shoot is on them until 210, before the drive is back. */
  @Test
  void cardsThatExpireTooEarlyOnlyPutItOff() {
    Copy main = main(drives(Arrangement.SINGLE, 190.5)).build();
    String why = "a drive failed, and the camera cards were formatted before another copy had it";
    List<String> rows = after("COPY_GONE", told(230, OptionalDouble.of(30), main, far()));
    assertThat(rows.subList(0, 4))
        .containsExactly(
            "190.5 COPY_GONE 0 -1 160 214.5 [] 160 0 0 150 | 160",
            "210 CARDS_EXPIRED -1 -1 10 - [] 170 0 0 150 | 150",
            "210 LOST -1 -1 10 - [" + why + "] 170 10 0 150 | 150",
            "214.5 COPY_BACK 0 -1 0 - [] 170 10 0 150 | 150");
  }

  /** Kept for 60 h they have the last two shoots at 190.5 and the last at 214.5, copied at once. */
  @Test
  void cardsThatAreKeptGiveItBack() {
    Copy main = main(drives(Arrangement.SINGLE, 190.5)).build();
    List<String> rows = after("COPY_GONE", told(230, OptionalDouble.of(60), main, far()));
    assertThat(rows)
        .containsExactly(
            "190.5 COPY_GONE 0 -1 160 214.5 [] 160 0 0 150 | 150",
            "214.5 COPY_BACK 0 -1 0 - [] 170 0 0 150 | 160",
            "214.5 REFILL_STARTED 0 -1 150 222 [far] 170 0 10 150 | 150",
            "222 REFILLED 0 -1 0 - [] 170 0 170 170 | 0",
            "230 END -1 -1 0 - [] 170 0 170 170");
  }

  /**
   * Drives of 100 bytes one after another, each alive for 200.5 h: the first takes what was on
   * hand, the second, in service from just before the first shoot on, the next hundred. The shoot
   * of 240 h waits for it, and is offloaded after the returns of that instant.
   */
  @Test
  void aShelfLosesAndGetsBackDriveByDrive() {
    Copy main = main(drives(Arrangement.SHELF, 200.5)).build();
    assertThat(after("START", told(295, OptionalDouble.empty(), main, far())))
        .containsExactly(
            "0 START -1 -1 0 295 [] 100 0 100 100",
            "30 DRIVE_ADDED 0 1 0 - [] 110 0 100 100",
            "200.5 DRIVE_FAILED 0 0 100 224.5 [] 160 0 60 160 | 100",
            "224.5 DRIVE_READY 0 0 0 - [] 170 0 70 170 | 100",
            "224.5 REFILL_STARTED 0 -1 100 229.5 [far] 170 0 70 170 | 100",
            "229.5 REFILLED 0 -1 0 - [] 170 0 170 170 | 0",
            "230.5 DRIVE_FAILED 0 1 70 254.5 [] 170 0 100 170 | 70",
            "254.5 DRIVE_READY 0 1 0 - [] 180 0 100 170 | 70",
            "254.5 REFILL_STARTED 0 -1 70 258 [far] 180 0 100 170 | 70",
            "258 REFILLED 0 -1 0 - [] 180 0 180 170 | 10",
            "295 END -1 -1 0 - [] 190 0 190 190");
  }

  /** Swapped at 155 h and again after 155, before any fails at 200.5. */
  @Test
  void drivesAreSwappedAtTheirAge() {
    DriveModel model = DriveModel.builder("m", 1e6).fails(new Fixed(200.5)).build();
    Medium set = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).replaceAt(155).build();
    assertThat(told(415, OptionalDouble.empty(), main(set).build(), far()))
        .containsExactly(
            "0 START -1 -1 0 415 [] 100 0 100 100",
            "155 DRIVE_SWAPPED 0 0 0 - [] 150 0 150 140",
            "310 DRIVE_SWAPPED 0 0 0 - [] 200 0 200 190",
            "415 END -1 -1 0 - [] 230 0 230 230");
  }
}
