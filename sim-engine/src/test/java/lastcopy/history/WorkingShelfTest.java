package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.CopyBuilder;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * A shelf as the working copy. Shoots wait on their cards while the drive that they go to is down:
 * none of them is lost meanwhile, all can be from their offload on. A drive that is back is
 * refilled, even if nobody knows that the shelf is unusable.
 */
class WorkingShelfTest {

  private static final int STUDIOS = 300;
  private static final int HISTORIES = 30;
  private static final Set<Kind> REFILLS = EnumSet.of(Kind.REFILL_STARTED, Kind.SPOIL_FOUND);

  private static CopyBuilder shelf(double lives) {
    DriveModel model = DriveModel.builder("m", 100).fails(new Fixed(lives)).build();
    return Copy.builder("main")
        .on(Medium.DriveSet.builder(Arrangement.SHELF, 2).of(model).build())
        .arrival(new Fixed(24));
  }

  private static Studio studio(double hours, Copy copy, OptionalDouble cards) {
    Footage footage =
        Footage.builder(new Shoots(60, 60, Shoots.Spacing.EVEN)).onHand(80).clip(1).build();
    return Studio.builder("s", hours / Units.HOURS_PER_YEAR)
        .footage(footage)
        .layout(new Layout("l", "l", List.of(copy), cards))
        .build();
  }

  private static List<String> losses(Studio studio) {
    List<String> losses = new ArrayList<>();
    new History(studio, studio.layouts().get(0), 1)
        .tell(
            0,
            (told, now) -> {
              if (told.kind() == Kind.DRIVE_READY && told.hours() == 74) {
                assertThat(now.heldBytes()).as("%s", told).containsExactly(0);
              }
              if (told.kind() == Kind.LOST) {
                losses.add(told.hours() + " h: " + told.bytes());
              }
            });
    return losses;
  }

  /**
   * Drives of 100 live 50 h and are back after 24: the first fails at 50 with 80 on it. The shoot
   * of 60 at hour 60 ends on the second drive, which enters then and fails at 110. It waits as a
   * whole and is offloaded at 74, when the first drive is back: the second takes its 40 at 110, the
   * first 20 at 124. Red if its end goes to the second drive while its beginning waits and is then
   * offloaded again with the rest from kept cards, lost or not.
   */
  @Test
  void oneThatEndsOnAnotherDriveWaitsAsAWhole() {
    List<String> byHand = List.of("50.0 h: 80.0", "110.0 h: 40.0");
    assertThat(losses(studio(119, shelf(50).build(), OptionalDouble.empty()))).isEqualTo(byHand);
    // Cards kept for 60 h after the offload at 74 have it still.
    assertThat(losses(studio(130, shelf(50).build(), OptionalDouble.of(60))))
        .isEqualTo(List.of("50.0 h: 80.0"));
    // Cards kept for 45 h are formatted at 119, and the first drive fails at 124.
    assertThat(losses(studio(130, shelf(50).build(), OptionalDouble.of(45))))
        .isEqualTo(List.of("50.0 h: 80.0", "119.0 h: 40.0", "124.0 h: 20.0"));
  }

  /**
   * A shelf turns out unusable while a shoot waits for its drive: what is offloaded to it then is
   * lost at once. Red if it goes neither to the copy nor to what is lost.
   */
  @Test
  void whatIsOffloadedToAnUnusableShelfIsLost() {
    Copy copy = shelf(50).spoils(new Rate(1.0 / 55)).build();
    Studio studio = studio(75, copy, OptionalDouble.empty());
    History history = new History(studio, studio.layouts().get(0), 1);
    int[] met = new int[1];
    for (int k = 0; k < 200; k++) {
      List<Double> spoilt = new ArrayList<>();
      history.tell(
          k,
          (told, now) -> {
            if (told.kind() == Kind.SPOILT) {
              spoilt.add(told.hours());
            }
            if (told.kind() == Kind.END && !spoilt.isEmpty() && spoilt.get(0) < 74) {
              met[0]++;
              assertThat(now.lostBytes()).isEqualTo(140);
            }
          });
    }
    assertThat(met[0]).isGreaterThan(20);
  }

  /**
   * The drive that fails at 50 with 80 on it is back at 74; the far copy gives 10 an hour, which
   * takes until 82, whether or not the shelf turned out unusable in between: that a drive is empty
   * its owner knows. If the far copy is unusable it is found then. Red if an unusable shelf is
   * thought to be whole.
   */
  @Test
  void aDriveOfAnUnusableShelfIsRefilled() {
    Copy main = shelf(50).spoils(new Rate(1.0 / 50)).build();
    CopyBuilder far =
        Copy.builder("far")
            .on(
                Medium.DriveSet.builder(Arrangement.SINGLE, 1)
                    .of(DriveModel.builder("big", 1e6).fails(new Fixed(1e9)).build())
                    .build())
            .fed(Feed.from("main").continuous().link(1).build())
            .restoresAt(10 / Units.SECONDS_PER_HOUR)
            .spoils(new Rate(1.0 / 200));
    int[] kinds = new int[4];
    for (int k = 0; k < 100; k++) {
      List<String> spoilt = new ArrayList<>();
      List<String> at74 = new ArrayList<>();
      new History(twoCopies(main, far.build()), twoCopies(main, far.build()).layouts().get(0), 3)
          .tell(
              k,
              (told, now) -> {
                if (told.hours() < 74 && told.kind() == Kind.SPOILT) {
                  spoilt.add(told.copy() == 0 ? "main" : "far");
                }
                if (told.hours() == 74 && REFILLS.contains(told.kind())) {
                  at74.add(told.hours() + " h: " + told.kind() + " until " + told.until());
                }
              });
      boolean farIs = spoilt.contains("far");
      assertThat(at74)
          .as("history %s, spoilt: %s", k, spoilt)
          .containsExactly(
              farIs ? "74.0 h: SPOIL_FOUND until NaN" : "74.0 h: REFILL_STARTED until 82.0");
      kinds[(farIs ? 2 : 0) + (spoilt.contains("main") ? 1 : 0)]++;
    }
    assertThat(kinds).doesNotContain(0);
  }

  /**
   * The first drive of a shelf fails at 90 and is back at 114, the second enters at 60, fails at
   * 150 and is back at 174 for its positions [100, 200). The near copy, fed at hour 1 only, gives
   * faster than the far one but has none of these: it is not turned to, usable or not. Red if an
   * unusable shelf is thought to lack its first drive's footage too.
   */
  @Test
  void aCopyThatHasNothingOfAnEmptyDriveIsNotTurnedTo() {
    Copy main = shelf(90).spoils(new Rate(1.0 / 120)).build();
    double perHour = 1 / Units.SECONDS_PER_HOUR;
    DriveModel big = DriveModel.builder("big", 1e6).fails(new Fixed(1e9)).build();
    Medium.DriveSet one = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(big).build();
    Feed once = Feed.from("main").every(1_000, 1).link(1 * perHour).build();
    Copy near =
        Copy.builder("near")
            .on(one)
            .fed(once)
            .startsEmpty()
            .restoresAt(100 * perHour)
            .spoils(new Rate(1.0 / 100))
            .build();
    Copy far =
        Copy.builder("far")
            .on(one)
            .fed(Feed.from("main").continuous().link(1).build())
            .restoresAt(10 * perHour)
            .build();
    Footage footage =
        Footage.builder(new Shoots(60, 60, Shoots.Spacing.EVEN)).onHand(80).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(main, near, far), OptionalDouble.empty());
    Studio studio =
        Studio.builder("s", 179 / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    int met = 0;
    for (int k = 0; k < 2_000; k++) {
      List<Integer> spoilt = new ArrayList<>();
      List<String> at174 = new ArrayList<>();
      new History(studio, layout, 3)
          .tell(
              k,
              (told, now) -> {
                if (told.kind() == Kind.SPOILT && told.hours() > 125) {
                  spoilt.add(told.copy());
                }
                if (told.hours() == 174 && REFILLS.contains(told.kind())) {
                  at174.add(told.kind() + " " + told.bytes());
                }
              });
      if (spoilt.containsAll(List.of(0, 1))) {
        met++;
        assertThat(at174).as("history %s", k).containsExactly("REFILL_STARTED 100.0");
      }
    }
    assertThat(met).isGreaterThan(30);
  }

  private static Studio twoCopies(Copy main, Copy far) {
    Footage footage =
        Footage.builder(new Shoots(1_000, 60, Shoots.Spacing.EVEN)).onHand(80).clip(1).build();
    return Studio.builder("s", 75 / Units.HOURS_PER_YEAR)
        .footage(footage)
        .layout(new Layout("l", "l", List.of(main, far), OptionalDouble.empty()))
        .build();
  }

  /**
   * Of one copy, without cards, desk or an age at which footage is given up: all that was shot is
   * held, lost, or waits for a drive that is down; kept cards only add. Red if something that is
   * lost is held again, or something is no longer held and not lost.
   */
  @Test
  void nothingIsLostAndHeldNorNeither() {
    RandomStudios studios = new RandomStudios(77);
    int[] lossy = new int[1];
    for (int i = 0; i < STUDIOS; i++) {
      Studio drawn = i % 2 == 0 ? studios.next() : studios.nextOfRandomShoots();
      Layout layout = drawn.layouts().get(0);
      for (OptionalDouble cards : List.of(OptionalDouble.empty(), OptionalDouble.of(70))) {
        Layout alone = new Layout("l", "l", List.of(layout.copies().get(0)), cards);
        Footage of = drawn.footage();
        Studio studio =
            Studio.builder("s", drawn.years())
                .footage(
                    Footage.builder(of.shoots())
                        .onHand(of.onHandBytes())
                        .growth(of.growthPerYear())
                        .clip(of.clipBytes())
                        .build())
                .layout(alone)
                .build();
        History history = new History(studio, alone, 5);
        for (int k = 0; k < HISTORIES; k++) {
          String what = "studio " + i + " history " + k;
          history.tell(k, (told, now) -> lossy[0] += adds(told, now, cards, what));
        }
      }
    }
    assertThat(lossy[0]).isGreaterThan(STUDIOS);
  }

  private static int adds(Happening told, Snapshot now, OptionalDouble cards, String what) {
    double slack = 1e-9 * now.shotBytes();
    double known = now.lostBytes() + now.heldBytes()[0];
    assertThat(known).as(what).isLessThanOrEqualTo(now.shotBytes() + slack);
    boolean whole = !now.gone()[0] && now.drivesDown()[0] == 0;
    if (told.kind() == Kind.END && whole && cards.isEmpty()) {
      assertThat(known).as(what).isCloseTo(now.shotBytes(), within(slack));
    }
    return told.kind() == Kind.END && now.lostBytes() > 0 ? 1 : 0;
  }
}
