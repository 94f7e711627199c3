package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/**
 * When a drive fails that is strained four times while others are down, by hand from when it fails
 * without strain by the same luck: each strained hour uses up four of its hours.
 */
class StrainByHandTest {

  private static final double FOREVER = 1e9;
  private static final int HISTORIES = 300;

  private static DriveModel lives(Law life) {
    return DriveModel.builder("m", 1e6).fails(life).build();
  }

  private static History history(
      Arrangement arrangement,
      double strain,
      double arrives,
      double rebuild,
      DriveModel... drives) {
    Medium set =
        Medium.DriveSet.builder(arrangement, drives.length)
            .ofEach(drives)
            .rebuild(new Fixed(rebuild))
            .strain(strain)
            .build();
    Layout layout =
        Layout.of("l", Copy.builder("main").on(set).arrival(new Fixed(arrives)).build());
    Footage footage =
        Footage.builder(new Shoots(FOREVER, 10, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    Studio studio =
        Studio.builder("s", 1_000 / Units.HOURS_PER_YEAR).footage(footage).layout(layout).build();
    return new History(studio, layout, 1);
  }

  /** When something of a kind is first told of a history; infinite if never. */
  private static double first(History history, int number, Predicate<Happening> what) {
    List<Happening> told = new ArrayList<>();
    history.tell(number, (each, now) -> told.add(each));
    return told.stream()
        .filter(what)
        .mapToDouble(Happening::hours)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The other of a mirror dies every 100 h of its life and is whole again 50 h later: strained from
   * 100 to 150 h, from 250 to 300 and so on. Red if strain comes too late, stays, or never comes.
   */
  @Test
  void theOtherOfAMirror() {
    DriveModel[] drives = {lives(new Fixed(100)), lives(new Exponential(400))};
    History calm = history(Arrangement.MIRROR, 1, 30, 20, drives);
    History strained = history(Arrangement.MIRROR, 4, 30, 20, drives);
    Predicate<Happening> fails =
        each ->
            each.kind() == Kind.COPY_GONE
                || (each.kind() == Kind.DRIVE_FAILED && each.drive() == 1);
    int later = 0;
    for (int k = 0; k < HISTORIES; k++) {
      double calmly = first(calm, k, fails);
      double expected = 0;
      double left = calmly;
      for (boolean alone = false; left < FOREVER && left > 0; alone = !alone) {
        double stretch = alone ? 50 : 100;
        double uses = alone ? 4 * stretch : stretch;
        expected += stretch * Math.min(1, left / uses);
        left -= uses;
        later += alone && left > 0 ? 1 : 0;
      }
      if (calmly < FOREVER) {
        assertThat(first(strained, k, fails)).isCloseTo(expected, within(1e-6));
      }
    }
    assertThat(later).isPositive();
  }

  /**
   * Of three with parity two die at 100 and 120 h, so that the copy is gone, and back in seconds.
   * The third is strained from 100 to 120 h and no longer: it fails 60 h sooner than without. Red
   * if what strained it is forgotten with the copy.
   */
  @Test
  void noStrainOnceTheCopyIsGone() {
    DriveModel[] drives = {
      lives(new Fixed(100)), lives(new Fixed(120)), lives(new Exponential(400))
    };
    History calm = history(Arrangement.PARITY, 1, 1e-3, FOREVER, drives);
    History strained = history(Arrangement.PARITY, 4, 1e-3, FOREVER, drives);
    Predicate<Happening> fails = each -> each.kind() == Kind.DRIVE_FAILED && each.drive() == 2;
    int found = 0;
    for (int k = 0; k < HISTORIES; k++) {
      double calmly = first(calm, k, fails);
      if (calmly > 180 && calmly < 220) { // when the first two have failed once only
        assertThat(first(strained, k, fails)).isCloseTo(calmly - 60, within(1e-6));
        found++;
      }
    }
    assertThat(found).isPositive();
  }
}
