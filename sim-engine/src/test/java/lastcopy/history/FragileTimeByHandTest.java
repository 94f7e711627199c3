package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
 * How long footage is in one copy only, how long of that one failure from loss, and how long work
 * waits, by hand: what a ledger is told of time.
 */
class FragileTimeByHandTest {

  private static final double PER_HOUR = 1 / Units.SECONDS_PER_HOUR;

  private static DriveModel lives(double hours) {
    return DriveModel.builder("m", 1e6).fails(new Fixed(hours)).build();
  }

  private static Medium mirror(double one, double other) {
    return Medium.DriveSet.builder(Arrangement.MIRROR, 2)
        .ofEach(lives(one), lives(other))
        .rebuild(new Fixed(500))
        .build();
  }

  private static Medium single(double hours) {
    return Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(lives(hours)).build();
  }

  /** 100 bytes on hand and more shoots if any; the far copy is fed every day at 10 an hour. */
  private static double[] times(Shoots shoots, Medium main, Medium far) {
    CopyBuilder fed =
        Copy.builder("far")
            .on(far)
            .arrival(new Fixed(24))
            .fed(Feed.from("main").every(24, 2).link(10 * PER_HOUR).build())
            .restoresAt(20 * PER_HOUR);
    Copy working = Copy.builder("main").on(main).arrival(new Fixed(24)).build();
    return times(shoots, 100, working, fed.build());
  }

  private static double[] times(Shoots shoots, double onHand, Copy... copies) {
    Layout layout = Layout.of("l", copies);
    Studio studio =
        Studio.builder("s", 200 / Units.HOURS_PER_YEAR)
            .footage(Footage.builder(shoots).onHand(onHand).clip(1).build())
            .layout(layout)
            .build();
    Log log = new Log();
    new History(studio, layout, 1).simulate(0, log);
    return log.time;
  }

  private static final Shoots NONE = new Shoots(1e9, 10, Shoots.Spacing.EVEN);

  private static void told(double[] found, double... expected) {
    assertThat(found).containsExactly(expected, within(1e-6));
  }

  /**
   * The working drive is gone from 100 to 124 h, and the refill of 100 bytes at 20 an hour ends at
   * 129: 29 h in one copy, which a failure ends if it is one drive, never if it is two, and from
   * 110 h on, for 19 h, if one of the two is down.
   */
  @Test
  void inTheFarCopy() {
    told(times(NONE, single(100), single(1e9)), 200, 29, 29, 24, 29, 100);
    told(times(NONE, single(100), mirror(1e9, 1e9)), 200, 29, 0, 24, 29, 100);
    told(times(NONE, single(100), mirror(110, 1e9)), 200, 29, 19, 24, 29, 100);
  }

  /**
   * Ten bytes at 60, 120 and 180 h cross from 74, 122 and 194 h on in an hour: 15, 3 and 15 h.
   * Nothing happens; each stands on one drive, or on two.
   */
  @Test
  void onTheWorkingCopy() {
    Shoots some = new Shoots(60, 10, Shoots.Spacing.EVEN);
    told(times(some, single(1e9), single(1e9)), 200, 33, 33, 0, 0, 10);
    told(times(some, mirror(1e9, 1e9), single(1e9)), 200, 33, 0, 0, 0, 10);
  }

  /**
   * All 100 bytes are lost with the only drive at 100 h; those of 150 h, 26 h after it is back,
   * stand in one copy to the end. Red if a studio that has nothing is told to have it in one copy.
   */
  @Test
  void afterATotalLossNothingStandsAnywhere() {
    Shoots some = new Shoots(150, 10, Shoots.Spacing.EVEN);
    Copy lone = Copy.builder("main").on(single(100)).arrival(new Fixed(24)).build();
    told(times(some, 100, lone), 200, 100 + 50, 100 + 50, 24, 24, 100);
  }

  /**
   * Of 150 bytes, on a shelf of two drives of 100, a run carries one an hour to the far copy from 2
   * h on. The first drive dies at 50.5 h, is back 24 h later and has its 48.5 bytes at 20 an hour
   * 2.425 h after that; the run, which lacks the 51.5 that are lost, ends at 100.5 h. Red if all is
   * thought to be as if nothing had happened while the run that goes on would carry what is lost.
   */
  @Test
  void aRunDoesNotLastForWhatIsLost() {
    DriveModel old =
        DriveModel.builder("m", 100).fails(new Fixed(1e3)).age(new Fixed(949.5)).build();
    DriveModel other = DriveModel.builder("o", 100).fails(new Fixed(1e9)).build();
    Medium shelf = Medium.DriveSet.builder(Arrangement.SHELF, 2).ofEach(old, other).build();
    Copy working = Copy.builder("main").on(shelf).arrival(new Fixed(24)).build();
    Copy far =
        Copy.builder("far")
            .on(single(1e9))
            .startsEmpty()
            .fed(Feed.from("main").every(1e6, 2).link(PER_HOUR).build())
            .restoresAt(20 * PER_HOUR)
            .build();
    told(times(NONE, 150, working, far), 200, 100.5, 100.5, 0, 2.425, 150);
  }
}
