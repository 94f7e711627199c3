package lastcopy.simulate;

import static lastcopy.simulate.Agreement.FEWER;
import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import lastcopy.exact.SharedFrailty;
import lastcopy.exact.UnlikeSet;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drives of several models in one set, each with its own law, age and room; {@link Agreement}
 * states N and alarm rate.
 *
 * <p>Seen red: the model of the first drive taken for all; the age of the first for all; positions
 * of a shelf by the size of its first drive; the drives of one kind only in the screen.
 */
class UnlikeDrivesTest {

  private static final double WEEK = Units.HOURS_PER_WEEK;

  /** Sets of unlike exponential lives against the chain of all that may be down. */
  @ParameterizedTest
  @CsvSource({
    "MIRROR,'500,4000',60,4000,1",
    "MIRROR,'300,900,5000',80,6000,1",
    "MIRROR,'400,3000',50,2000,5",
    "PARITY,'1500,1500,6000,20000',60,4000,1",
    "DOUBLE_PARITY,'400,800,800,3000,9000',90,2500,2",
    "STRIPE,'3000,30000',1,2000,1"
  })
  void setsOfUnlikeLives(
      Arrangement arrangement, String lives, double repair, double hours, double strain) {
    double[] mean = numbers(lives);
    List<Double> rates = DoubleStream.of(mean).mapToObj(life -> 1 / life).toList();
    int n = mean.length;
    double exact =
        new UnlikeSet(rates, 1 / repair, n, arrangement.survives(n), strain).lossBy(hours);
    assertThat(exact).isBetween(0.05, 0.7);
    CopyMaker set =
        CopyMaker.set("main", arrangement, n)
            .lives(mean)
            .rebuild(new Exponential(repair))
            .strain(strain);
    agrees(simulate(Studios.archive(hours, set)).anyLoss(), exact);
  }

  static double[] numbers(String list) {
    return Arrays.stream(list.split(",")).mapToDouble(Double::parseDouble).toArray();
  }

  /**
   * A new drive mirrored by a used one of another make, never replaced: both fail, each by its own
   * law from its own age, F₁(T)·(1 − S₂(A + T)/S₂(A)).
   */
  @Test
  void eachHasItsOwnAge() {
    Law fresh = new Weibull(1.3, 15_000, 0);
    Law worn = new Weibull(2.5, 20_000, 0);
    double age = 15_000;
    double hours = 8_000;
    double second = -Math.expm1(worn.cumulativeHazard(age) - worn.cumulativeHazard(age + hours));
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .each(made -> made.fails(fresh))
            .each(made -> made.fails(worn).age(new Fixed(age)))
            .neverReplaced();
    agrees(
        simulate(Studios.archive(hours, mirror)).anyLoss(), (1 - fresh.survival(hours)) * second);
  }

  /**
   * One batch of unlike drives: the frailty that they share is conditioned on what both have lived
   * through (Hougaard 2000, ch. 7), and stands before each one's own hazard.
   */
  @Test
  void oneBatchOfUnlikeDrives() {
    Law fresh = new Exponential(12_000);
    Law worn = new Weibull(2, 20_000, 0);
    double age = 15_000;
    double hours = 6_000;
    double first = fresh.cumulativeHazard(hours);
    double second = worn.cumulativeHazard(age + hours) - worn.cumulativeHazard(age);
    double exact = new SharedFrailty(0.8, worn.cumulativeHazard(age)).bothFail(first, second);
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .each(made -> made.fails(fresh))
            .each(made -> made.fails(worn).age(new Fixed(age)))
            .batch("spring", 0.8)
            .neverReplaced();
    agrees(simulate(Studios.archive(hours, mirror)).anyLoss(), exact);
  }

  /**
   * A replacement is of the model that it replaces, at the age at which that is bought: a stripe of
   * a drive that dies at 1,000 h and comes at 400, beside one that never fails, loses at 1,000 h,
   * 1,600, 2,200 ... hours.
   */
  @Test
  void eachIsReplacedByItsOwnKind() {
    CopyMaker stripe =
        CopyMaker.set("main", Arrangement.STRIPE, 2)
            .each(made -> made.fails(new Fixed(1e12)))
            .each(made -> made.fails(new Fixed(1_000)).boughtAt(400));
    LayoutResult result = simulate(weekly(4_000, stripe), 10);
    assertThat(result.lossEvents().value()).isEqualTo(6);
  }

  /**
   * A shelf by arithmetic: 5 TB on hand and 1 TB every 8 weeks on drives of 2, 4 and then 3 TB each
   * (the last goes on): drives 0 and 1 are there at the start, drive 2 enters when more than 6 TB
   * are there, at week 16, drive 3 beyond 9 TB, at week 40, drive 4 beyond 12 TB, at week 64.
   */
  @Test
  void shelfOfUnlikeDrives() {
    double hours = 2 * 8_736;
    Law old = new Weibull(1.6, 60_000, 0);
    Law middling = new Exponential(90_000);
    Law good = new Weibull(1.2, 200_000, 0);
    double hazard =
        old.cumulativeHazard(20_000 + hours)
            - old.cumulativeHazard(20_000)
            + middling.cumulativeHazard(hours)
            + good.cumulativeHazard(hours - 16 * WEEK)
            + good.cumulativeHazard(hours - 40 * WEEK)
            + good.cumulativeHazard(hours - 64 * WEEK)
            + good.cumulativeHazard(hours - 88 * WEEK);
    CopyMaker shelf =
        CopyMaker.set("main", Arrangement.SHELF, 3)
            .each(made -> made.size(2e12).fails(old).age(new Fixed(20_000)))
            .each(made -> made.size(4e12).fails(middling))
            .each(made -> made.size(3e12).fails(good));
    Studio studio =
        Studios.of(
            hours, Studios.shooting(5e12, 8 * WEEK, 1e12, 0), Studios.layout("shelf", shelf));
    agrees(simulate(studio, FEWER).anyLoss(), -Math.expm1(-hazard));
  }

  /** An archive of 6 TB on unlike drives: each byte is lost with the drive that it is on. */
  @Test
  void bytesOfAShelfOfUnlikeDrives() {
    double hours = 10_000;
    CopyMaker shelf =
        CopyMaker.set("main", Arrangement.SHELF, 2)
            .each(made -> made.size(2e12).fails(new Exponential(10_000)))
            .each(made -> made.size(4e12).fails(new Exponential(50_000)));
    LayoutResult result =
        simulate(Studios.of(hours, Studios.onHand(6e12), Studios.layout("shelf", shelf)), FEWER);
    agrees(result.bytesLost(), 2e12 * -Math.expm1(-1) + 4e12 * -Math.expm1(-0.2));
  }

  /** Two names for one and the same drive change nothing, to the last digit. */
  @ParameterizedTest
  @CsvSource({"MIRROR,2", "MIRROR,3", "PARITY,4", "PAIRS,4", "STRIPE,2", "SHELF,3"})
  void likeDrivesOfTwoNamesAreLikeDrives(Arrangement arrangement, int drives) {
    for (Function<CopyMaker, CopyMaker> trick : tricks()) {
      CopyMaker one = trick.apply(wearing(arrangement, drives));
      CopyMaker other = trick.apply(wearing(arrangement, drives));
      for (int i = 0; i < drives; i++) {
        other.each(made -> {});
      }
      sameLosses(weekly(8_760, one), weekly(8_760, other));
    }
  }

  private static List<Function<CopyMaker, CopyMaker>> tricks() {
    return List.of(
        set -> set,
        set -> set.strain(3).batch("spring", 0.5),
        set -> set.readErrors(1e-14).latentDefects(new Exponential(2_000)));
  }

  private static CopyMaker wearing(Arrangement arrangement, int drives) {
    return CopyMaker.set("main", arrangement, drives)
        .life(new Weibull(1.5, 3_000, 0))
        .aged(new Fixed(500))
        .boughtAt(200)
        .driveBytes(4e12)
        .arrival(new Fixed(100))
        .rebuild(new Exponential(200));
  }

  private static Studio weekly(double hours, CopyMaker copy) {
    return Studios.shootingWeekly(hours, copy);
  }
}
