package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Shoots;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import lastcopy.simulate.count.Caveats;
import lastcopy.simulate.count.Figures;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;

/**
 * What is told of a layout, by hand: ten shoots of 50 bytes in a year beside 500 on hand, each
 * worth 200; histories in each of so many of which one loses 10 bytes and a shoot.
 */
class ResultsTest {

  private static final Layout LAYOUT =
      Studios.layout("l", CopyMaker.single("main", new Exponential(1e5)));
  private static final Thresholds ROWS =
      new Thresholds(new double[] {1, 500}, new double[] {1}, new double[] {.5, 1}, 1_000);

  private static Results results(boolean worth) {
    Footage footage =
        Footage.builder(new Shoots(876, 50, Shoots.Spacing.EVEN)).onHand(500).clip(2).build();
    if (worth) {
      footage =
          Footage.builder(new Shoots(876, 50, Shoots.Spacing.EVEN))
              .onHand(500)
              .clip(2)
              .worthPerShoot(200)
              .build();
    }
    Studio studio = Studio.builder("s", 1).footage(footage).layout(LAYOUT).build();
    return new Results(studio, LAYOUT, .95);
  }

  private static LossTally plain(int losses, int histories) {
    LossTally chunk = new LossTally(ROWS);
    for (int i = 0; i < histories; i++) {
      chunk.begin(i);
      if (i < losses) {
        chunk.lost(OnePath.loss(10, false));
      }
      chunk.end();
    }
    LossTally all = new LossTally(ROWS);
    all.merge(chunk);
    return all;
  }

  private static RareTally rare(int histories) {
    Mixture flat = new Mixture(List.of(new Mixture.Part(1, new double[][] {{1}})));
    Biasable fifth = OnePath.losing(5, new ArrayList<>());
    RareTally all = new RareTally(ROWS, 1);
    all.merge(RareTally.of(fifth, flat, ROWS, 0, histories));
    return all;
  }

  /** 1,000 bytes are 20 shoots, and ten more may be parts of them: what a mean is bounded by. */
  @Test
  void noMoreShootsAreLostThanThereAre() {
    assertThat(results(false).figures(plain(3, 100)).mostShoots()).isEqualTo(30);
  }

  @Test
  void plainHistoriesAreTold() {
    LayoutResult told = results(true).plain(plain(20, 100), true, Caveats.NONE.note("so"));
    assertThat(told.id()).isEqualTo("l");
    assertThat(told.method()).isEqualTo(Method.PLAIN);
    assertThat(told.histories()).isEqualTo(100);
    assertThat(told.precisionReached()).isTrue();
    assertThat(told.effectiveHistories()).isEqualTo(100);
    assertThat(told.largestWeightShare()).isEqualTo(.01);
    assertThat(told.notes()).containsExactly("so");
    assertThat(told.trusted()).isTrue();
    assertThat(told.anyLoss().value()).isEqualTo(.2);
    assertThat(told.lossEvents().value()).isCloseTo(.2, within(1e-12));
    assertThat(told.bytesLost().value()).isCloseTo(2, within(1e-12));
    assertThat(told.shootsLost().value()).isCloseTo(.2, within(1e-12));
    assertThat(told.everythingLost().value()).isZero();
    assertThat(told.curve()).extracting(Point::at).containsExactly(.5, 1.0);
    assertThat(told.curve()).allMatch(point -> point.chance().value() == .2);
    assertThat(told.causes()).hasSize(1);
    assertThat(told.exposure().histories()).isEqualTo(100);
    assertThat(told.cost()).isEmpty();
  }

  /** What was never seen is told in the upper ends of means, and decides no stop. */
  @Test
  void whatWasNeverSeenIsTold() {
    Results results = results(false);
    LossTally tally = plain(20, 100);
    Figures told = results.told(tally, Optional.empty(), false);
    Estimate decides = results.figures(tally).bytesLost();
    assertThat(told.bytesLost().high()).isGreaterThan(decides.high());
    assertThat(results.plain(tally, true, Caveats.NONE).bytesLost()).isEqualTo(told.bytesLost());
    RareTally rare = rare(1_000);
    Figures biased = results.told(tally, Optional.of(rare), false);
    assertThat(biased.bytesLost().high())
        .isGreaterThan(results.figures(tally, rare, false).bytesLost().high());
    assertThat(biased.anyLoss()).isEqualTo(results.figures(tally, rare, false).anyLoss());
    assertThat(results.rare(tally, rare, true, Caveats.NONE).bytesLost())
        .isEqualTo(biased.bytesLost());
  }

  @Test
  void aShootHasItsWorth() {
    LayoutResult told = results(true).plain(plain(20, 100), true, Caveats.NONE);
    Estimate shoots = told.shootsLost();
    assertThat(told.moneyLost())
        .contains(
            new Estimate(
                200 * shoots.value(), 200 * shoots.low(), 200 * shoots.high(), shoots.seen()));
    assertThat(told.exceedanceMoney()).hasSameSizeAs(told.exceedanceShoots()).isNotEmpty();
    for (int i = 0; i < told.exceedanceMoney().size(); i++) {
      Point of = told.exceedanceShoots().get(i);
      assertThat(told.exceedanceMoney().get(i)).isEqualTo(new Point(200 * of.at(), of.chance()));
    }
    LayoutResult none = results(false).plain(plain(20, 100), true, Caveats.NONE);
    assertThat(none.moneyLost()).isEmpty();
    assertThat(none.exceedanceMoney()).isEmpty();
  }

  @Test
  void biasedHistoriesAreTold() {
    LayoutResult told = results(false).rare(plain(20, 100), rare(1_000), false, Caveats.NONE);
    assertThat(told.method()).isEqualTo(Method.RARE);
    assertThat(told.histories()).isEqualTo(1_000);
    assertThat(told.precisionReached()).isFalse();
    assertThat(told.effectiveHistories()).isCloseTo(200, within(1e-9));
    assertThat(told.largestWeightShare()).isCloseTo(1 / 200.0, within(1e-12));
    assertThat(told.anyLoss().value()).isCloseTo(.2, within(1e-12));
    assertThat(told.exposure().histories()).as("of the plain ones").isEqualTo(100);
    assertThat(told.exceedanceBytes()).isNotEmpty();
    Point first = told.exceedanceBytes().get(0);
    assertThat(first.chance().value()).isCloseTo(.2, within(1e-12));
  }

  /** Doubted, they reach up to what the plain ones hold. */
  @Test
  void doubtsAreToldAndWiden() {
    Caveats doubted = Caveats.NONE.doubted(List.of("why"));
    LossTally plain = plain(50, 100);
    LayoutResult told = results(false).rare(plain, rare(1_000), false, doubted);
    LayoutResult sure = results(false).rare(plain, rare(1_000), false, Caveats.NONE);
    assertThat(told.doubts()).containsExactly("why");
    assertThat(told.anyLoss().high())
        .isEqualTo(results(false).figures(plain).anyLoss().high())
        .isGreaterThan(sure.anyLoss().high());
  }

  /** Few weights that are heavy may add to more than 1; no chance is told as more. */
  @Test
  void noChanceIsMoreThanOne() {
    RareTally heavy = new RareTally(ROWS, 1);
    Mixture rarer = new Mixture(List.of(new Mixture.Part(1, new double[][] {{.1}})));
    OnePath path =
        new OnePath(
            new double[][] {{1}},
            new double[][] {{0}},
            new double[] {1},
            number -> List.of(OnePath.loss(600, true)),
            new ArrayList<>());
    heavy.merge(RareTally.of(path, rarer, ROWS, 0, 100));
    LayoutResult told = results(false).rare(plain(90, 100), heavy, false, Caveats.NONE);
    Estimate one = new Estimate(1, 1, 1, true);
    assertThat(told.anyLoss()).isEqualTo(one);
    assertThat(told.everythingLost()).isEqualTo(one);
    assertThat(told.curve()).allMatch(point -> point.chance().equals(one));
    assertThat(told.exceedanceBytes().get(0).chance()).isEqualTo(one);
    assertThat(told.exceedanceShoots().get(0).chance()).isEqualTo(one);
    assertThat(told.lossEvents().value()).as("a mean may be").isCloseTo(10, within(1e-9));
  }
}
