package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
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
 * Two drives of a working shelf, 100 each and full, fail at 50 h and are back at 74 h. The far copy
 * gives 10 an hour: the first is full again at 84 and the second at 94.
 *
 * <p>Each byte that is read costs a clip of 1 with a chance of 5 %, found when a refill ends, and a
 * spot has become unreadable, which costs one when a refill begins. At 84 h both happen: all that
 * is lost at one instant is one loss event.
 */
class OnceOnlyTest {

  private static final int HISTORIES = 200;

  private static Studio studio() {
    DriveModel small = DriveModel.builder("small", 100).fails(new Fixed(50)).build();
    DriveModel big = DriveModel.builder("big", 1e6).fails(new Exponential(1e30)).build();
    Copy main =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SHELF, 2).of(small).build())
            .arrival(new Fixed(24))
            .build();
    Copy far =
        Copy.builder("far")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(big).build())
            .fed(Feed.from("main").every(1_000).link(1e6).build())
            .restoresAt(10 / Units.SECONDS_PER_HOUR)
            .build();
    Footage footage =
        Footage.builder(new Shoots(1_000, 60, Shoots.Spacing.EVEN)).onHand(200).clip(1).build();
    return Studio.builder("s", 100 / Units.HOURS_PER_YEAR)
        .footage(footage)
        .layout(new Layout("l", "l", List.of(main, far), OptionalDouble.empty()))
        .build();
  }

  /**
   * Two drives of a working shelf, 100 each and full, fail at 50 h and are back at 74 h. The far
   * copy gives 10 an hour: the first is full again at 84 and the second at 94. Red if the return of
   * the second begins the first one's refill again, which would meet what is unreadable twice.
   */
  @Test
  void aRefillIsNotBegunAgainWhenAnotherDriveIsBack() {
    Studio studio = studio();
    History history = new History(studio, studio.layouts().get(0), 1);
    for (int k = 0; k < HISTORIES; k++) {
      List<String> refills = new ArrayList<>();
      history.tell(
          k,
          (told, now) -> {
            if (told.kind() == Kind.REFILL_STARTED) {
              refills.add(Math.round(told.hours()) + " h: until " + Math.round(told.until()));
            }
          });
      assertThat(refills).containsExactly("74 h: until 84", "84 h: until 94");
    }
  }

  /**
   * A lone drive fails at 50 h with 80 that were on hand; the cards of the shoot of 60 at 26 h are
   * formatted at 50 h, after the failure. Red if that is a second event.
   */
  @Test
  void whatIsLostAtOneInstantIsOneEvent() {
    DriveModel model = DriveModel.builder("drive", 1e6).fails(new Fixed(50)).build();
    Copy main =
        Copy.builder("main")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build())
            .arrival(new Fixed(24))
            .build();
    Footage footage =
        Footage.builder(new Shoots(26, 60, Shoots.Spacing.EVEN)).onHand(80).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(main), OptionalDouble.of(24));
    Studio studio =
        Studio.builder("s", 51 / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    Log log = new Log();
    new History(studio, layout, 1).simulate(0, log);
    assertThat(log.losses).hasSize(1);
    double[] loss = log.losses.get(0);
    assertThat(loss[0]).isEqualTo(50);
    assertThat(loss[1]).as("bytes").isEqualTo(140);
    assertThat(loss[2]).as("shoots").isCloseTo(140 / 60., within(1e-12));
    assertThat(loss[3]).as("shoots hit: 80 on hand are two").isEqualTo(3);
    assertThat(loss[4]).as("everything").isEqualTo(1);
    assertThat(log.causes).containsExactly("drive");
  }

  /**
   * The far copy is gone at 50 h, back at 74 h and whole at 84 h, when the 100 that it lacked have
   * been read; each byte of them costs a clip of 1 with a chance of 5 %. What it lacks then nobody
   * has any more. The shoot at 80 h is brought by a run that pays for nothing. Red if that is taken
   * for one that brings back, which meets the unreadable spot of the working copy again.
   */
  @Test
  void whatNobodyHasIsNotWaitedFor() {
    DriveModel used =
        DriveModel.builder("used", 1e6).fails(new Exponential(1e30)).age(new Fixed(20)).build();
    DriveModel brief = DriveModel.builder("brief", 1e6).fails(new Fixed(50)).build();
    Copy main =
        Copy.builder("main")
            .on(
                Medium.DriveSet.builder(Arrangement.SINGLE, 1)
                    .of(used)
                    .latentDefects(new Fixed(10))
                    .readErrors(0.05 / 8)
                    .build())
            .build();
    Copy far =
        Copy.builder("far")
            .on(Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(brief).build())
            .arrival(new Fixed(24))
            .fed(Feed.from("main").continuous().link(10 / Units.SECONDS_PER_HOUR).build())
            .build();
    Footage footage =
        Footage.builder(new Shoots(80, 100, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Layout layout = new Layout("l", "l", List.of(main, far), OptionalDouble.empty());
    Studio studio =
        Studio.builder("s", 90 / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    History history = new History(studio, layout, 1);
    int[] errors = new int[1];
    for (int k = 0; k < HISTORIES; k++) {
      List<String> met = new ArrayList<>();
      history.tell(
          k,
          (told, now) -> {
            if (told.kind() == Kind.UNREADABLE) {
              met.add(Math.round(told.hours()) + " h: " + told.subject().substring(0, 6));
            }
            if (told.kind() == Kind.REFILLED) {
              met.add(Math.round(told.hours()) + " h: whole");
            }
          });
      errors[0] += met.remove("84 h: bits c") ? 1 : 0;
      assertThat(met).as("history %s", k).containsExactly("74 h: a spot", "84 h: whole");
    }
    assertThat(errors[0]).isGreaterThan(HISTORIES / 2);
  }
}
