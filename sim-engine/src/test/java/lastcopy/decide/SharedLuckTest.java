package lastcopy.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.decide.rule.ErrorBudget;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.history.History;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.simulate.rare.LossWeights;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/**
 * What pairs of histories tell, held against closed forms: of lone drives of one luck the more
 * failing one loses whenever the other does, so that it loses alone with the difference of the two
 * chances.
 *
 * <p>Null hypothesis: a limit is too low at most as often as its error rate says; alarm rate 1e-6.
 * Seen red: a rate 40 times as high; one and other exchanged, of either kind of histories.
 */
class SharedLuckTest {

  /**
   * Nearly all of it, so that errors are to be seen: 0.005 of each comparison at its first look.
   */
  private static final ErrorBudget BUDGET = new ErrorBudget(0.8, 2);

  private static final int SEEDS = 400;

  private static List<Contender> contenders(ExactFamily family) {
    List<Contender> all = new ArrayList<>();
    for (Layout layout : family.question(0.1, 1).candidates()) {
      all.add(new Contender(all.size(), layout, false, BUDGET));
    }
    return all;
  }

  private static SharedLuck plain(ExactFamily family, long seed) {
    Studio studio = family.question(0.1, 1).studio();
    List<Contender> all = contenders(family);
    for (Contender each : all) {
      each.plain.count(new History(studio, each.layout, seed), 0, 1_024, false);
      each.lookedAtPlain();
    }
    return new SharedLuck(all, BUDGET);
  }

  /** Of independent luck 1,024 histories are far from enough: two chances to 1 in 100 each. */
  @Test
  void twinsAreToldAlikeAtTheFirstLookBySharedLuckOnly() {
    ExactFamily shared = new ExactFamily(true).single(0.1, 100).single(0.1, 110);
    ExactFamily apart = new ExactFamily(false).single(0.1, 100).single(0.1, 110);
    assertThat(plain(shared, 1).losesAtMost(0, 0.02, 1)).isTrue();
    assertThat(plain(apart, 1).losesAtMost(0, 0.02, 1)).isFalse();
  }

  @Test
  void theLimitIsSeldomTooLow() {
    ExactFamily family = new ExactFamily(true).single(0.12, 100).single(0.1, 110);
    double difference = family.exact.get(0).chance() - family.exact.get(1).chance();
    int errs = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      errs += plain(family, seed).losesAtMost(0, 0.99 * difference, 1) ? 1 : 0;
    }
    assertThat(errs).isLessThanOrEqualTo(most(BUDGET.ofPlainPair(0)));
  }

  private static int most(double errorRate) {
    return BinomialDistribution.of(SEEDS, errorRate).inverseSurvivalProbability(1e-6);
  }

  /** Biased to the same end: of mirrors the one that is repaired more slowly loses more often. */
  private static SharedLuck biased(ExactFamily family, long seed) {
    Studio studio = family.question(0.1, 1).studio();
    List<Contender> all = contenders(family);
    Settings settings = new Settings(seed, 0.95, 1, OptionalLong.empty(), Optional.empty(), 1);
    Biases biases = new Biases(studio, seed, 4_096);
    try (Rounds rounds = new Rounds(settings, Progress.SILENT)) {
      biases.tune(all, rounds);
    }
    for (Contender each : all) {
      each.plain.count(new History(studio, each.layout, seed), 0, 100, false);
      each.lookedAtPlain();
      each.weights()
          .merge(LossWeights.of(biases.histories(each.layout), each.mixture(), 0, 4_096, 4_096));
      each.lookedAtBiased();
    }
    return new SharedLuck(all, BUDGET);
  }

  @Test
  void rareLosersOfOneLuckAreToldAlike() {
    ExactFamily family = new ExactFamily(true).mirror(0.05, 20.5, 100).mirror(0.05, 20, 110);
    double other = family.exact.get(1).chance();
    assertThat(biased(family, 1).losesAtMost(0, 0.2 * other, 1)).isTrue();
  }

  @Test
  void theLimitOfRareLosersIsSeldomTooLow() {
    ExactFamily family = new ExactFamily(true).mirror(0.05, 24, 100).mirror(0.05, 20, 110);
    double difference = family.exact.get(0).chance() - family.exact.get(1).chance();
    int errs = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      errs += biased(family, seed).losesAtMost(0, 0.99 * difference, 1) ? 1 : 0;
    }
    assertThat(errs).isLessThanOrEqualTo(most(BUDGET.ofBiasedPair(0)));
  }
}
