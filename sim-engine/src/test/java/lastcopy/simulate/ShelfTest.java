package lastcopy.simulate;

import static lastcopy.simulate.Agreement.FEWER;
import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;

import java.util.List;
import java.util.OptionalDouble;
import lastcopy.exact.RepairablePair;
import lastcopy.exact.Shelf;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Test;

/** Drives filled one after another; {@link Agreement} states N and alarm rate. */
class ShelfTest {

  private static final double WEEK = Units.HOURS_PER_WEEK;
  private static final double HOURS = 2 * 8_736;
  private static final Law LIFE = new Weibull(1.6, 90_000, 0);

  /**
   * 2.5 drives on hand, and half a drive every eighth week: drives enter at weeks 16, 32, 48 ...
   */
  private static final Footage FILLING = Studios.shooting(5e12, 8 * WEEK, 1e12, 0);

  /**
   * 1 − ∏ S(time in service). With 5 TB on hand and 1 TB every 8 weeks on drives of 2 TB, drives 0
   * to 2 are in service at the start, and drive j enters when more than 2j TB are there: 7 TB at
   * week 16, 9 TB at week 32 and so on to week 96. Red if all drives are in service from the start,
   * or if those bought later come at the age of the first.
   */
  @Test
  void anyLoss() {
    double bought = 10_000;
    Shelf exact =
        new Shelf(
            LIFE,
            20_000,
            bought,
            List.of(
                0.0, 0.0, 0.0, 16 * WEEK, 32 * WEEK, 48 * WEEK, 64 * WEEK, 80 * WEEK, 96 * WEEK));
    CopyMaker shelf = shelf("main", 12).life(LIFE).aged(new Fixed(20_000)).boughtAt(bought);
    agrees(simulate(filling(shelf), FEWER).anyLoss(), exact.lossBy(HOURS));
  }

  /** A failed drive loses what it holds and no more: each byte of the archive by its own drive. */
  @Test
  void bytesOfAnArchive() {
    Law life = new Weibull(1.6, 25_000, 0);
    double fails = 1 - life.survival(HOURS);
    LayoutResult result =
        simulate(
            Studios.of(
                HOURS, Studios.onHand(5e12), Studios.layout("shelf", shelf("main", 4).life(life))),
            FEWER);
    agrees(result.bytesLost(), 5e12 * fails);
    agrees(result.lossEvents(), 3 * fails);
    agrees(result.everythingLost(), Math.pow(fails, 3));
  }

  /**
   * With a constant hazard a byte is lost if its slot fails after its offload, whatever came
   * before. Red if shoots go to a failed drive, or if a replacement brings anything back.
   */
  @Test
  void bytesOfAGrowingShelf() {
    double life = 15_000;
    double exact = 5e12 * -Math.expm1(-HOURS / life);
    for (double t = 8 * WEEK; t <= HOURS; t += 8 * WEEK) {
      exact += 1e12 * -Math.expm1(-(HOURS - t) / life);
    }
    agrees(
        simulate(filling(shelf("main", 12).life(new Exponential(life))), FEWER).bytesLost(), exact);
  }

  /**
   * Two full drives, and a Poisson process of shoots that fill one each: with hazard λ and rate ρ
   * nothing is lost with chance exp(−2λT − ρ∫(1 − e^(−λ(T − t))) dt), a functional of the Poisson
   * process (Campbell's theorem). The shelf outgrows its two drives and buys more. Red if it does
   * not, or if drives enter as they would with even shoots.
   */
  @Test
  void randomShoots() {
    double fails = 1.0 / 40_000;
    double shoots = 1 / (8 * WEEK);
    double later = shoots * (HOURS + Math.expm1(-fails * HOURS) / fails);
    Footage random =
        new Footage(
            4e12,
            new Shoots(8 * WEEK, 2e12, Shoots.Spacing.RANDOM),
            0,
            OptionalDouble.empty(),
            Footage.DEFAULT_CLIP_BYTES,
            OptionalDouble.empty());
    CopyMaker shelf = shelf("main", 2).life(new Exponential(1 / fails));
    LayoutResult result =
        simulate(Studios.of(HOURS, random, Studios.layout("shelf", shelf)), FEWER);
    agrees(result.anyLoss(), -Math.expm1(-2 * fails * HOURS - later));
    agrees(result.bytesLost(), 2e12 * (-2 * Math.expm1(-fails * HOURS) + later));
  }

  /**
   * Two shelves, twin by twin: each of the two pairs is lost if both its drives are down at once.
   * Red if a failed drive takes its shelf with it, or is filled again before it is back.
   */
  @Test
  void twins() {
    double pair = new RepairablePair(1.0 / 2_000, 1.0 / 100).lossBy(5_000);
    Law away = new Exponential(100);
    CopyMaker main = shelf("main", 2).life(new Exponential(2_000)).arrival(away);
    CopyMaker twin =
        shelf("twin", 2)
            .life(new Exponential(2_000))
            .arrival(away)
            .fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
    agrees(
        simulate(
                Studios.of(5_000, Studios.onHand(4e12), Studios.layout("twins", main, twin)), FEWER)
            .anyLoss(),
        1 - (1 - pair) * (1 - pair));
  }

  /** A shelf of one drive that holds all is a single drive, shoots on cards included. */
  @Test
  void oneHugeDriveIsASingle() {
    sameLosses(filling(one(Arrangement.SINGLE)), filling(one(Arrangement.SHELF)));
  }

  private static CopyMaker one(Arrangement arrangement) {
    return CopyMaker.set("main", arrangement, 1).life(LIFE).arrival(new Fixed(500));
  }

  private static CopyMaker shelf(String id, int drives) {
    return CopyMaker.set(id, Arrangement.SHELF, drives).driveBytes(2e12);
  }

  private static Studio filling(CopyMaker copy) {
    return Studios.of(HOURS, FILLING, Studios.layout("shelf", copy));
  }
}
