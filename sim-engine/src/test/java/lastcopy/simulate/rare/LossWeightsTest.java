package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;
import lastcopy.interval.Estimate;
import lastcopy.interval.PairedDifferences;
import lastcopy.interval.Proportions;
import lastcopy.interval.WeightedTally;
import org.junit.jupiter.api.Test;

/** Losses of histories that all weigh the same, in each of so many; intervals are tested apart. */
class LossWeightsTest {

  private static final Mixture FLAT = mixture(1);

  private static Mixture mixture(double factor) {
    return new Mixture(List.of(new Mixture.Part(1, new double[][] {{factor}})));
  }

  /** In two chunks. */
  private static LossWeights losing(int oneIn, int histories, int remembered) {
    List<Long> told = new ArrayList<>();
    LossWeights all = new LossWeights(1, remembered);
    Biasable of = OnePath.losing(oneIn, told);
    int half = histories / 2;
    all.merge(LossWeights.of(of, FLAT, 0, half, remembered));
    all.merge(LossWeights.of(of, FLAT, half, histories - half, remembered));
    assertThat(told).hasSize(histories).doesNotHaveDuplicates();
    return all;
  }

  private static WeightedTally tally(int losses, int histories) {
    WeightedTally tally = new WeightedTally();
    for (int i = 0; i < losses; i++) {
      tally.add(1);
    }
    tally.addHistories(histories);
    return tally;
  }

  @Test
  void aFifthLoses() {
    LossWeights fifth = losing(5, 1_000, 0);
    assertThat(fifth.histories()).isEqualTo(1_000);
    assertThat(fifth.losses()).isEqualTo(200);
    assertThat(fifth.trusted()).isTrue();
    assertThat(fifth.chance(.95, 1)).contains(tally(200, 1_000).estimate(.95, 1));
  }

  /** 30 losses are the least that stand alone. */
  @Test
  void fewLossesAreNotTrusted() {
    assertThat(losing(5, 150, 0).trusted()).isTrue();
    assertThat(losing(5, 145, 0).trusted()).isFalse();
    assertThat(losing(5, 145, 0).chance(.95, 1)).isEmpty();
    assertThat(new LossWeights(1, 0).trusted()).isFalse();
    assertThat(losing(5, 145, 1_000).excessOver(losing(5, 1_000, 1_000), .05)).isInfinite();
    assertThat(losing(5, 1_000, 1_000).excessOver(losing(5, 145, 1_000), .05)).isInfinite();
  }

  /** Each fifth against each tenth of a thousand: a hundred differ, by 1 each. */
  @Test
  void theExcessIsThatOfHistoriesOfTheSameNumbers() {
    double excess = losing(5, 1_000, 1_000).excessOver(losing(10, 1_200, 2_000), .05);
    assertThat(excess).isCloseTo(differing(100, 1_000).high(), within(1e-15)).isBetween(.1, .15);
    double less = losing(10, 1_000, 1_000).excessOver(losing(5, 1_000, 1_000), .05);
    assertThat(less).isCloseTo(-differing(100, 1_000).low(), within(1e-15)).isNegative();
  }

  private static Estimate differing(int differing, int histories) {
    PairedDifferences differences = new PairedDifferences(1);
    for (int i = 0; i < differing; i++) {
      differences.add(0, 1);
    }
    differences.addHistories(0, histories);
    return differences.estimate(.05, 0);
  }

  /** Where 99 differ, none may have been seen of those that differ most. */
  @Test
  void whereFewDifferSomeMayBeUnseen() {
    LossWeights fifth = losing(5, 1_000, 990);
    double excess = fifth.excessOver(losing(10, 1_000, 1_000), .05);
    double unseen = .2 * Proportions.upperOfNone(200, .025);
    assertThat(excess).isCloseTo(differing(99, 990).high() + unseen, within(1e-12));
  }

  /** Told apart by 20 % against 5 of 100 as they fall; not by 20 of 100, nor where none is sure. */
  @Test
  void plainHistoriesMayContradict() {
    LossWeights fifth = losing(5, 1_000, 0);
    assertThat(fifth.contradicts(20, 100, .9999)).isFalse();
    assertThat(fifth.contradicts(2, 100, .9999)).isTrue();
    assertThat(fifth.contradicts(60, 100, .9999)).isTrue();
    assertThat(losing(5, 145, 0).contradicts(60, 100, .9999)).isFalse();
  }

  /** All weigh 1/2, by one event under a factor of 2; one of ten risks something and loses. */
  private static LossWeights risking(double badly, boolean comes, double hazard) {
    OnePath path =
        new OnePath(
            new double[][] {{1}},
            new double[][] {{hazard}},
            new double[] {1},
            number -> List.of(),
            new ArrayList<>());
    Biasable histories =
        new Decorated(path) {
          @Override
          public int channels() {
            return 1;
          }

          @Override
          public void simulate(long number, Bias bias, Ledger to) {
            if (number % 10 == 0) {
              to.risked(0, badly);
              if (comes) {
                to.cameOutBadly(0);
              }
              to.lost(OnePath.loss(1, false));
            }
          }
        };
    return LossWeights.of(histories, mixture(2), 0, 1_000, 0);
  }

  /** A tenth of the chance may be missed, of 0.05; and is in its upper end. */
  @Test
  void whatUnlikelyDrawsMayAddIsInTheUpperEnd() {
    LossWeights little = risking(.09, false, 0);
    Estimate seen = little.chance(.95, 1).orElseThrow();
    WeightedTally halves = new WeightedTally();
    for (int i = 0; i < 100; i++) {
      halves.add(.5);
    }
    halves.addHistories(1_000);
    Estimate plain = halves.estimate(.95, 1);
    assertThat(seen.value()).isCloseTo(.05, within(1e-15));
    assertThat(seen.high()).isCloseTo(plain.high() + .1 * .09 / 2, within(1e-12));
    LossWeights none = risking(0, false, 0);
    double excess = little.excessOver(none, .05);
    assertThat(excess).isCloseTo(none.excessOver(none, .05) + .1 * .09 / 2, within(1e-12));
    assertThat(risking(.11, false, 0).trusted()).isFalse();
    assertThat(risking(.11, true, 0).trusted()).as("a hundred came").isTrue();
    LossWeights both = new LossWeights(1, 0);
    both.merge(little);
    both.merge(new LossWeights(1, 0));
    both.merge(risking(.09, false, 0));
    assertThat(both.chance(.95, 1).orElseThrow().value()).isCloseTo(.05, within(1e-15));
    assertThat(both.trusted()).isTrue();
    both.merge(risking(.9, false, 0));
    assertThat(both.trusted()).as("what a later chunk risked").isFalse();
  }

  @Test
  void aLossWithoutAWeightIsNotTrusted() {
    LossWeights none = risking(0, false, Double.POSITIVE_INFINITY);
    assertThat(none.trusted()).isFalse();
    assertThat(none.losses()).isZero();
    LossWeights all = losing(5, 1_000, 0);
    all.merge(none);
    assertThat(all.trusted()).isFalse();
    assertThat(all.losses()).isEqualTo(200);
  }

  /** Numbers and weights by hand; those from the ninth on, or the fourth loss, are not held. */
  @Test
  void differencesAreOfTheSameNumbers() {
    RememberedLosses one = remembered(100, 1, 2, 3, 5, 8, 1);
    RememberedLosses two = remembered(100, 3, 4, 4, 1, 9, 7);
    is(one.less(two, 9), 9, 2, 1, -1, 1);
    is(two.less(one, 9), 9, -2, -1, 1, -1);
    is(one.less(two, 10), 10, 2, 1, -1, 1, -7);
    is(one.less(two, 3), 3, 2);
    is(remembered(4, 1, 2, 3, 5, 8, 1).less(remembered(100), 100), 100, 2, 5);
    RememberedLosses many = new RememberedLosses(100);
    for (int i = 0; i < 20; i++) {
      many.add(i, i + 1);
    }
    RememberedLosses more = remembered(100);
    more.append(many);
    PairedDifferences none = more.less(many, 100);
    assertThat(none.seen()).as("they are alike").isZero();
    assertThat(more.less(remembered(100), 100).estimate(.05, 0).value())
        .isCloseTo(210 / 100.0, within(1e-12));
  }

  private static RememberedLosses remembered(int most, double... numbersAndWeights) {
    RememberedLosses all = new RememberedLosses(most);
    for (int i = 0; i < numbersAndWeights.length; i += 2) {
      all.add((long) numbersAndWeights[i], numbersAndWeights[i + 1]);
    }
    return all;
  }

  private static void is(PairedDifferences seen, int histories, double... each) {
    PairedDifferences expected = new PairedDifferences(1);
    for (double one : each) {
      expected.add(0, one);
    }
    expected.addHistories(0, histories);
    assertThat(seen.seen()).isEqualTo(each.length);
    assertThat(seen.estimate(.05, 0)).isEqualTo(expected.estimate(.05, 0));
  }
}
