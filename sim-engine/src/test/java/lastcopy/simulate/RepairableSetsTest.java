package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.neverLoses;
import static lastcopy.simulate.Agreement.sameLosses;
import static lastcopy.simulate.Agreement.simulate;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lastcopy.exact.KOutOfN;
import lastcopy.exact.ParityGroup;
import lastcopy.exact.ProofTestedPair;
import lastcopy.exact.RepairablePair;
import lastcopy.exact.SharedShock;
import lastcopy.experiment.LayoutResult;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.law.Weibull;
import lastcopy.scenario.Arrangement;
import lastcopy.simulate.rare.LookedAtChain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets of drives against chains and closed forms; {@link Agreement} states N and alarm rate. */
class RepairableSetsTest {

  /**
   * Textbook pairs. Red if a repair starts again with a second failure, if a drive can fail while
   * it is rebuilt, if either drive's failures are left out (halves p) or the repair is forgotten.
   */
  @ParameterizedTest
  @CsvSource({
    "150,5,100,.037896737790581",
    "150,5,1000,.331647905184811",
    "100,10,50,.063569372166151",
    "100,10,100,.133691493526125",
    "50000,500,87600,.03327115"
  })
  void repairablePair(double meanLife, double meanRepair, double hours, double published) {
    double exact = new RepairablePair(1 / meanLife, 1 / meanRepair).lossBy(hours);
    assertThat(exact).isCloseTo(published, within(5e-9));
    CopyMaker pair = CopyMaker.markov("main", Arrangement.MIRROR, 2, meanLife, meanRepair);
    LayoutResult result = simulate(Studios.archive(hours, pair));
    agrees(result.anyLoss(), exact);
    assertThat(result.everythingLost()).isEqualTo(result.anyLoss());
  }

  /**
   * Red if m is off by one, if m + 1 failures wait for one repairman (serial repair), if strain is
   * left out, or if it stays on a drive after the others are whole again.
   */
  @ParameterizedTest
  @CsvSource({
    "MIRROR,3,400,60,2000,1",
    "PARITY,4,3000,40,5000,1",
    "PARITY,8,10000,60,8760,1",
    "DOUBLE_PARITY,6,2000,150,4000,1",
    "DOUBLE_PARITY,4,300,50,1000,1",
    "STRIPE,3,9000,1,2000,1",
    "MIRROR,2,1000,50,2000,4",
    "MIRROR,2,300,50,2000,.25",
    "MIRROR,3,800,100,2000,3",
    "PARITY,5,5000,60,4000,2.5",
    "DOUBLE_PARITY,5,1500,100,4000,2"
  })
  void groups(
      Arrangement arrangement,
      int drives,
      double life,
      double repair,
      double hours,
      double strain) {
    int survives = arrangement.survives(drives);
    double exact = new ParityGroup(drives, survives, 1 / life, 1 / repair, strain, 0).lossBy(hours);
    assertThat(exact).isBetween(0.05, 0.6);
    CopyMaker set = CopyMaker.markov("main", arrangement, drives, life, repair).strain(strain);
    agrees(simulate(Studios.archive(hours, set)).anyLoss(), exact);
  }

  /** Red if the box takes one drive only, or draws once for each drive. */
  @ParameterizedTest
  @ValueSource(doubles = {2e-4, 1e-5})
  void mirrorInABox(double shocks) {
    double exact = new SharedShock(1e-3, shocks, 0.02).lossBy(1_500);
    CopyMaker mirror = CopyMaker.markov("main", Arrangement.MIRROR, 2, 1_000, 50).boxed(shocks);
    agrees(simulate(Studios.archive(1_500, mirror)).anyLoss(), exact);
  }

  /** Without repair; red if a replaced drive comes in although none arrives. */
  @ParameterizedTest
  @CsvSource({"MIRROR,2", "MIRROR,4", "PARITY,6", "DOUBLE_PARITY,7", "STRIPE,2"})
  void withoutRepair(Arrangement arrangement, int drives) {
    Weibull life = new Weibull(1.5, 20_000, 0);
    int survives = arrangement.survives(drives);
    double hours = arrangement == Arrangement.MIRROR ? 17_520 : 8_760;
    double exact = new KOutOfN(drives, survives, life, 2_000).lossBy(hours);
    assertThat(exact).isBetween(0.05, 0.75);
    CopyMaker set =
        CopyMaker.set("main", arrangement, drives)
            .life(life)
            .aged(new Fixed(2_000))
            .neverReplaced();
    agrees(simulate(Studios.archive(hours, set)).anyLoss(), exact);
  }

  /**
   * Looks by the clock, repair at the look; red if each failure waits a whole period of its own.
   */
  @ParameterizedTest
  @CsvSource({"3000,0,500,8", "10000,.1,2000,4"})
  void pairThatIsLookedAt(double life, double beta, double period, int periods) {
    double exact = new ProofTestedPair(1 / life, beta, period).lossWithin(periods);
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(new Exponential(life / (1 - beta)))
            .boxed(beta / life)
            .lookedAtEvery(period);
    agrees(simulate(Studios.archive(periods * period, mirror)).anyLoss(), exact);
  }

  /** A look, then an exponential rebuild from the look on: the chain period by period. */
  @Test
  void rebuildStartsAtTheLook() {
    double exact = LookedAtChain.loss(1.0 / 1_000, 1.0 / 100, 200, 8);
    CopyMaker mirror =
        CopyMaker.markov("main", Arrangement.MIRROR, 2, 1_000, 100).lookedAtEvery(200);
    agrees(simulate(Studios.archive(1_600, mirror)).anyLoss(), exact);
  }

  /**
   * A mirror that nobody repairs, hazard H in all and k times that once one is down: S(H) =
   * (2e^(−kH) − k·e^(−2H))/(2 − k), whatever the law (own integral over the first failure). Red if
   * the strained life is drawn afresh instead of going on from its age.
   */
  @ParameterizedTest
  @ValueSource(doubles = {5, 0.5})
  void strainWithoutRepair(double strain) {
    Weibull life = new Weibull(2.5, 20_000, 0);
    double hazard = life.cumulativeHazard(14_000) - life.cumulativeHazard(6_000);
    double survival =
        (2 * Math.exp(-strain * hazard) - strain * Math.exp(-2 * hazard)) / (2 - strain);
    CopyMaker mirror =
        CopyMaker.set("main", Arrangement.MIRROR, 2)
            .life(life)
            .aged(new Fixed(6_000))
            .strain(strain)
            .neverReplaced();
    agrees(simulate(Studios.archive(8_000, mirror)).anyLoss(), 1 - survival);
  }

  /** Without a second drive to strain, and where a second never fails while one is down. */
  @Test
  void strainAtItsLimits() {
    sameLosses(
        Studios.archive(2_000, CopyMaker.markov("main", Arrangement.STRIPE, 3, 9_000, 1)),
        Studios.archive(
            2_000, CopyMaker.markov("main", Arrangement.STRIPE, 3, 9_000, 1).strain(9)));
    neverLoses(
        Studios.archive(2_000, CopyMaker.markov("main", Arrangement.MIRROR, 2, 300, 50).strain(0)));
  }
}
