package lastcopy.simulate;

import static lastcopy.simulate.Agreement.FEWER;
import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.neverLoses;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lastcopy.exact.DriveSlot;
import lastcopy.exact.PlannedReplacement;
import lastcopy.exact.VisitingDrive;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.ByAge;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planned replacement, drives bought used, and drives that are off; see {@link Agreement}. */
class DriveAgeTest {

  private static final double HOURS = 4 * 8_760;
  private static final Law LIFE = new Weibull(3, 20_000, 200);

  /**
   * Swapped at an age, again and again. Red if it is swapped once only, if the swapped drive keeps
   * its age, or if age or age when bought are left out of the first and the later turns.
   */
  @ParameterizedTest
  @CsvSource({"8760,0,0", "13000,5000,0", "13000,5000,4000", "9000,12000,0"})
  void plannedReplacement(double at, double age, double bought) {
    double exact = 1 - new PlannedReplacement(LIFE, at, age, bought).survival(HOURS);
    assertThat(exact).isBetween(0.1, 0.8);
    CopyMaker drive =
        CopyMaker.single("main", LIFE).aged(new Fixed(age)).boughtAt(bought).replacedAt(at);
    agrees(simulate(Studios.archive(HOURS, drive), FEWER).anyLoss(), exact);
  }

  /** Each failure is followed by a new drive with a plan of its own. Red if the plan runs on. */
  @Test
  void plannedReplacementAfterFailures() {
    PlannedReplacement swapped = new PlannedReplacement(LIFE, 15_000);
    double exact =
        new DriveSlot(swapped::survival, swapped::survival, t -> 0, HOURS, 3_504)
            .expectedFailures();
    CopyMaker drive = CopyMaker.single("main", LIFE).replacedAt(15_000);
    agrees(simulate(Studios.shootingWeekly(HOURS, drive), FEWER).lossEvents(), exact);
  }

  @Test
  void plannedReplacementAtItsLimits() {
    sameLosses(
        Studios.archive(HOURS, CopyMaker.single("main", LIFE)),
        Studios.archive(HOURS, CopyMaker.single("main", LIFE).replacedAt(2 * HOURS)));
    neverLoses(
        Studios.archive(HOURS, CopyMaker.single("main", new Fixed(5_000)).replacedAt(4_999)));
  }

  /**
   * Used drives replace used ones, by a table of ages that spares the first year. Red if a
   * replacement is new, or as old as the first was.
   */
  @Test
  void boughtUsed() {
    Law life = new ByAge(List.of(0.0, 0.4, 0.7, 0.2));
    double age = 1.5 * 8_760;
    double bought = 0.9 * 8_760;
    double exact =
        new DriveSlot(
                t -> life.survival(age + t) / life.survival(age),
                t -> life.survival(bought + t) / life.survival(bought),
                t -> 0,
                HOURS,
                3_504)
            .expectedFailures();
    CopyMaker drive = CopyMaker.single("main", life).aged(new Fixed(age)).boughtAt(bought);
    agrees(simulate(Studios.shootingWeekly(HOURS, drive), FEWER).lossEvents(), exact);
  }

  /**
   * Two drives take turns each week and visit for some hours; the working copy ends with the
   * horizon, so that everything is lost if both of them have failed. Red if a drive at rest does
   * not age, or ages as if it ran.
   */
  @Test
  void offBetweenVisits() {
    visiting(new Exponential(1_500), new Exponential(16_000), 24);
    visiting(new Weibull(2, 3_000, 0), new Weibull(0.7, 20_000, 0), 100);
  }

  private static void visiting(Law on, Law off, double visit) {
    double hours = 8_760;
    double week = Units.HOURS_PER_WEEK;
    double exact =
        (1 - new VisitingDrive(on, off, 2, 2 * week, visit).survival(hours))
            * (1 - new VisitingDrive(on, off, 2 + week, 2 * week, visit).survival(hours));
    LayoutResult result =
        simulate(
            Studios.of(
                hours,
                Studios.shooting(Units.TB, week, Units.GB, 0),
                Studios.layout(
                    "turns",
                    CopyMaker.single("main", new Fixed(hours)),
                    CopyMaker.single("turn", on)
                        .failsOff(off)
                        .neverReplaced()
                        .rotates("main", 2, new Feed.Every(week, 2), visit))),
            FEWER);
    agrees(result.everythingLost(), exact);
  }

  /** The same law on and off is no law of its own. */
  @Test
  void offAsOn() {
    Law life = new Exponential(3_000);
    CopyMaker main = CopyMaker.single("main", new Exponential(5_000));
    sameLosses(
        Studios.archive(8_760, main, turning(life)),
        Studios.archive(8_760, main, turning(life).failsOff(life)));
  }

  private static CopyMaker turning(Law life) {
    return CopyMaker.single("turn", life)
        .arrival(new Fixed(800))
        .rotates("main", 2, new Feed.Every(Units.HOURS_PER_WEEK, 2), 24);
  }
}
