package lastcopy.history.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.footage.ShootTable;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
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

/** Shoots of 10 bytes that come at random, every 100 h on average, beside 100 on hand. */
class RandomShootsTest {

  private static final double EVERY = 100;

  private final Draws draws = new Draws(2);

  private static Plan plan(double growth, boolean full) {
    Footage footage =
        Footage.builder(new Shoots(EVERY, 10, Shoots.Spacing.RANDOM))
            .onHand(100)
            .growth(growth)
            .clip(1)
            .build();
    DriveModel model = DriveModel.builder("m", 1e9).fails(new Fixed(1e9)).build();
    Medium single = Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(single).build(),
            Copy.builder("far")
                .on(single)
                .startsFull(full)
                .fed(Feed.from("main").every(24, 2).link(10 / Units.SECONDS_PER_HOUR).build())
                .build());
    return Plan.of(Studio.builder("s", 2).footage(footage).layout(layout).build(), layout);
  }

  /** The gaps of a Poisson process are exponential: mean and deviation 100 h. */
  @Test
  void gapsAreExponential() {
    RandomShoots shoots = new RandomShoots(plan(0, true), draws);
    draws.start(3);
    ShootTable all = shoots.until(1e6);
    double squares = 0;
    double last = 0;
    for (int k = 0; k < all.count(); k++) {
      assertThat(all.time(k)).isGreaterThan(last).isLessThanOrEqualTo(1e6);
      assertThat(all.end(k)).isEqualTo(110 + 10.0 * k);
      squares += Math.pow(all.time(k) - last, 2);
      last = all.time(k);
    }
    // 10,000 of them, and a mean square of 2·100² with a deviation of √20·100²: five of each
    assertThat(all.count()).isBetween(9_500, 10_500);
    assertThat(squares / all.count() / 2 / EVERY / EVERY).isCloseTo(1, within(.12));
    double third = all.time(2);
    assertThat(shoots.until(third).count()).as("up to and including").isEqualTo(3);
    assertThat(shoots.until(Math.nextDown(third)).count()).isEqualTo(2);
    draws.start(4);
    assertThat(shoots.until(1e4).time(0)).as("other luck").isNotEqualTo(all.time(0));
  }

  /** Twelve deviations of a Poisson count of 175.2, and 40 more. */
  @Test
  void mostThatIsEverShot() {
    double deviations = 12 * Math.sqrt(175.2);
    assertThat(plan(0, true).mostEverShot())
        .isCloseTo(100 + 10 * (175.2 + deviations + 40), within(1e-6));
    assertThat(plan(.5, true).mostEverShot())
        .as("each as large as the last can be")
        .isCloseTo(100 + 22.5 * (175.2 + deviations + 40), within(1e-6));
    assertThat(plan(-.5, true).mostEverShot())
        .as("none larger than the first")
        .isEqualTo(plan(0, true).mostEverShot());
    assertThat(plan(0, true).evenShoots()).isFalse();
  }

  /** A run takes an hour from the first 2 o'clock after a shoot, or ten for what was on hand. */
  @Test
  void aShootIsHeldOnceItsRunHasEnded() {
    for (long history = 0; history < 20; history++) {
      draws.start(history);
      ReckonedCourse full = new ReckonedCourse(plan(0, true), draws);
      full.begin();
      double first = full.shoots().time(0);
      double second = full.shoots().time(1);
      double held = Math.floor((first - 2) / 24 + 1) * 24 + 2 + 1;
      assertThat(areHeld(full, first + 1e-6)).as("it is shot just then").isFalse();
      assertThat(areHeld(full, first - 1e-6)).isTrue();
      assertThat(areHeld(full, held - .01)).isFalse();
      if (second > held + .01) {
        assertThat(areHeld(full, held + .01)).isTrue();
      }
      ReckonedCourse empty = new ReckonedCourse(plan(0, false), draws);
      empty.begin();
      if (first > 26) {
        assertThat(areHeld(empty, 11.9)).isFalse();
        assertThat(areHeld(empty, 12.1)).isTrue();
      }
    }
  }

  private static boolean areHeld(ReckonedCourse course, double at) {
    course.moveTo(at, false);
    return course.base(1) >= course.base(0);
  }
}
