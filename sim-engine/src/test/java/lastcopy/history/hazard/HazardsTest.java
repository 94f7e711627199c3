package lastcopy.history.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.history.course.BareTimes;
import lastcopy.history.plan.Plan;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Copy;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.DriveModelBuilder;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Mishap;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import org.junit.jupiter.api.Test;

/**
 * Hazards by hand: a working copy that ages, two drives that take turns every 24 h from 10 h on and
 * stay for 3 h, 0.1 an hour while they are on and 0.01 while they are off, and a fire of 0.002.
 */
class HazardsTest {

  private static final int TURN = 1;
  private static final int FIRE = 3;

  static Plan plan(Law main) {
    return plan(DriveModel.builder("m", 1e12).fails(main));
  }

  static Plan plan(DriveModelBuilder main) {
    return plan(main, new Exponential(10), new Exponential(100));
  }

  private static Plan plan(DriveModelBuilder main, Law on, Law off) {
    DriveModel turning = DriveModel.builder("t", 1e12).fails(on).failsOff(off).build();
    Place studio = Place.of("studio", new Mishap("fire", new Rate(.002), 1));
    Layout layout =
        Layout.of(
            "l",
            Copy.builder("main").on(single(main.build())).at(studio).build(),
            Copy.builder("turns")
                .on(single(turning))
                .rotation(2, 24)
                .offline()
                .fed(Feed.from("main").every(24, 10).visits(3).build())
                .build());
    Footage footage =
        Footage.builder(new Shoots(1e9, 1, Shoots.Spacing.EVEN)).onHand(100).clip(1).build();
    return Plan.of(Studio.builder("s", 1).footage(footage).layout(layout).build(), layout);
  }

  private static Medium single(DriveModel model) {
    return Medium.DriveSet.builder(Arrangement.SINGLE, 1).of(model).build();
  }

  private final Plan plan = plan(new Weibull(2, 100, 0));
  private final Hazards hazards = new Hazards(plan);

  @Test
  void aDriveRunsUpTheHazardOfItsAge() {
    assertThat(hazards.between(0, 50, 20, 80)).isCloseTo(.25 - .04, within(1e-12));
    assertThat(hazards.after(0, 50, 20, .21)).isCloseTo(80, within(1e-9));
    assertThat(hazards.isConstant(0)).isFalse();
    assertThat(new Hazards(plan(new Exponential(9))).isConstant(0)).isTrue();
  }

  @Test
  void aShockHasTheSameAtAllTimes() {
    assertThat(hazards.between(FIRE, 100, 7, 350)).isCloseTo(.5, within(1e-12));
    assertThat(hazards.after(FIRE, 100, 7, .5)).isCloseTo(350, within(1e-9));
    assertThat(hazards.isConstant(FIRE)).isTrue();
    assertThat(hazards.groupOf(FIRE)).isEqualTo(plan.groups().of(plan.shock(0)));
  }

  /** Off to 10, on to 13, off to 58: 0.1, 0.3 and 0.45, visits being 48 h apart. */
  @Test
  void aDriveIsOnWhileItVisits() {
    assertThat(hazards.between(TURN, 0, 0, 10)).isCloseTo(.1, within(1e-12));
    assertThat(hazards.between(TURN, 0, 0, 58)).isCloseTo(.85, within(1e-12));
    assertThat(hazards.between(TURN, 12, 12, 14)).isCloseTo(.11, within(1e-12));
    assertThat(hazards.after(TURN, 0, 0, .05)).isCloseTo(5, within(1e-9));
    assertThat(hazards.after(TURN, 0, 0, .25)).isCloseTo(11.5, within(1e-9));
    assertThat(hazards.after(TURN, 12, 12, .11)).isCloseTo(14, within(1e-9));
    assertThat(hazards.after(TURN, 0, 0, 1e6)).isInfinite();
    assertThat(hazards.isConstant(TURN)).isFalse();
    assertThat(hazards.between(TURN + 1, 0, 0, 34))
        .as("the other, later")
        .isCloseTo(.34, within(1e-12));
  }

  /** On, (t/100)² and off, (t/1000)²: it ages all the while, whichever law counts. */
  @Test
  void aDriveAgesOnAndOff() {
    DriveModelBuilder main = DriveModel.builder("m", 1e12).fails(new Exponential(9));
    Hazards turns = new Hazards(plan(main, new Weibull(2, 100, 0), new Weibull(2, 1_000, 0)));
    double exact = (100 + 58 * 58 - 169) / 1e6 + (169 - 100) / 1e4;
    assertThat(turns.between(TURN, 0, 0, 58)).isCloseTo(exact, within(1e-12));
    double half = (100 + 30 * 30 - 169) / 1e6 + (169 - 100) / 1e4;
    assertThat(turns.after(TURN, 0, 0, half)).isCloseTo(30, within(1e-9));
    double older = ((60.0 * 60 - 2_500) + (108.0 * 108 - 63 * 63)) / 1e6;
    double on = (63.0 * 63 - 3_600) / 1e4;
    assertThat(turns.between(TURN, 0, 50, 58))
        .as("from age 50")
        .isCloseTo(older + on, within(1e-12));
  }

  @Test
  void aVisitThatIsSkippedLeavesItOff() {
    hazards.skipVisit(plan.copy(1), 10);
    assertThat(hazards.between(TURN, 0, 0, 58)).isCloseTo(.58, within(1e-12));
    assertThat(hazards.between(TURN, 10, 10, 61)).isCloseTo(.48 + .3, within(1e-12));
    assertThat(hazards.between(TURN + 1, 34, 34, 37)).as("the other").isCloseTo(.3, within(1e-12));
    hazards.clear();
    assertThat(hazards.between(TURN, 0, 0, 58)).isCloseTo(.85, within(1e-12));
  }

  /** Known before: of an age by the clock, or the same at all times; else not. */
  @Test
  void onlyWhatIsKnownBeforeIsTabled() {
    BareTimes times = new BareTimes(false, 10, 20);
    assertThat(hazards.first(0, times).all(50)).isCloseTo(.25, within(1e-12));
    assertThat(hazards.first(FIRE, times).all(50)).isCloseTo(.1, within(1e-12));
    assertThat(hazards.first(FIRE, times).bare(1, .03)).isCloseTo(.01, within(1e-12));
    assertThat(hazards.first(TURN, times)).isNull();
    Hazards aged =
        new Hazards(
            plan(DriveModel.builder("m", 1e12).fails(new Weibull(2, 100, 0)).age(new Fixed(30))));
    assertThat(aged.first(0, times).all(50)).isCloseTo(.64 - .09, within(1e-12));
    Hazards unknown =
        new Hazards(
            plan(
                DriveModel.builder("m", 1e12)
                    .fails(new Weibull(2, 100, 0))
                    .age(new Exponential(30))));
    assertThat(unknown.first(0, times)).isNull();
    Hazards certain = new Hazards(plan(new Fixed(500)));
    assertThat(certain.first(0, times)).as("an infinite hazard").isNull();
    Hazards constant =
        new Hazards(
            plan(
                DriveModel.builder("m", 1e12)
                    .fails(new Exponential(100))
                    .age(new Exponential(30))));
    assertThat(constant.first(0, times).all(50))
        .as("age does not matter")
        .isCloseTo(.5, within(1e-12));
  }
}
