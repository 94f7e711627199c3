package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalLong;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.Shares;
import lastcopy.interval.WeightedTally;
import lastcopy.scenario.Units;
import lastcopy.simulate.count.Counted;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.PlainFigures;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Five biased histories by hand, of which three lose something: what is counted of them, each with
 * the weight Π b^−events · exp(Σ (b − 1)·hazard) of its path, b = 4 at the first level and 2 at the
 * second.
 */
class WeightedByHandTest {

  private static final Thresholds ROWS =
      new Thresholds(
          new double[] {1, 12, 100}, new double[] {1, 2}, new double[] {.25, .5, 1}, 1_000);
  private static final Cause DRIVE = new Cause("z:drive", "a drive");
  private static final Cause FIRE = new Cause("a:fire", "a fire");
  private static final double W0 = Math.exp(.3) / 4;
  private static final double W2 = Math.exp(.15 + .2) / 2;
  private static final Mixture MIXTURE = mixture(4, 2);

  private static Mixture mixture(double... factors) {
    return new Mixture(java.util.List.of(new Mixture.Part(1, new double[][] {factors})));
  }

  private static Loss loss(
      double years, double bytes, double shoots, int hit, boolean everything, Cause cause) {
    double hours = years * Units.HOURS_PER_YEAR;
    return new Loss(hours, bytes, shoots, hit, everything, cause, 1);
  }

  /** The fourth history ends a life at a fixed age: its hazard is infinite, its weight unknown. */
  private static final class Script implements Biasable {

    private double[] events = new double[2];
    private double[] hazard = new double[2];

    @Override
    public int groups() {
      return 1;
    }

    @Override
    public int levels() {
      return 2;
    }

    @Override
    public int depth(int level) {
      return level;
    }

    @Override
    public int channels() {
      return 1;
    }

    @Override
    public void simulate(long number, Bias bias, Ledger to) {
      events = new double[2];
      hazard = new double[] {.05, 0};
      if (number == 0) {
        events[0] = 1;
        hazard[0] = .1;
        to.risked(0, .9);
        to.lost(loss(.3, 5, .5, 1, false, DRIVE));
        to.lost(loss(.6, 7, 1, 2, true, FIRE));
      } else if (number == 2) {
        events[1] = 1;
        hazard[1] = .2;
        to.lost(loss(.25, 100, 2, 4, true, DRIVE));
      } else if (number == 3) {
        hazard[0] = Double.POSITIVE_INFINITY;
        to.lost(loss(.25, 500, 9, 9, false, FIRE));
      }
    }

    @Override
    public double events(int group, int level) {
      return events[level];
    }

    @Override
    public double hazard(int group, int level) {
      return hazard[level];
    }

    @Override
    public double logOfTheRest() {
      return 0;
    }
  }

  private static RareTally counted() {
    RareTally all = new RareTally(ROWS, 1);
    all.merge(RareTally.of(new Script(), MIXTURE, ROWS, 0, 3));
    all.merge(RareTally.of(new Script(), MIXTURE, ROWS, 3, 2));
    return all;
  }

  private static void sum(WeightedTally seen, double expected) {
    assertThat(seen.sum()).isCloseTo(expected, within(1e-12));
    assertThat(seen.histories()).isEqualTo(5);
  }

  @Test
  void sumsAreWeighted() {
    RareTally all = counted();
    sum(all.any, W0 + W2);
    sum(all.everything, W0 + W2);
    sum(all.events, 2 * W0 + W2);
    sum(all.bytes, 12 * W0 + 100 * W2);
    sum(all.shoots, 1.5 * W0 + 2 * W2);
    sum(all.hits, 3 * W0 + 4 * W2);
    sum(all.firstLossBy[0], W2);
    sum(all.firstLossBy[1], W0 + W2);
    sum(all.firstLossBy[2], W0 + W2);
    sum(all.bytesReached.from(12), W0 + W2);
    sum(all.bytesReached.from(50), W2);
    sum(all.shootsReached.from(1.7), W2);
    assertThat(all.everythingLater).as("not by its first loss").isEqualTo(new Counted(1, W0));
    assertThat(all.weightless).isEqualTo(1);
    assertThat(all.largest.bytes()).isEqualTo(100);
    assertThat(all.largest.shoots()).isEqualTo(2);
    assertThat(all.largest.hits()).isEqualTo(4);
    // What was risked weighs as the path up to it.
    assertThat(all.channels.missed()).isCloseTo(.9 * W0 / 5, within(1e-12));
  }

  private static LossTally plain(long histories, int losses) {
    LossTally tally = new LossTally(ROWS);
    for (int i = 0; i < histories; i++) {
      tally.begin(i);
      if (i < losses) {
        tally.lost(loss(.3, 5, .5, 1, false, DRIVE));
      }
      tally.end();
    }
    LossTally merged = new LossTally(ROWS);
    merged.merge(tally);
    return merged;
  }

  private static RareFigures figures(LossTally plain, boolean doubted) {
    return new RareFigures(counted(), new PlainFigures(plain, 60, .95, false), doubted, .95);
  }

  /** Two weights are too few: Markov's bound below, the plain limit above, and what is missed. */
  @Test
  void fewWeightsHaveMarkovsBoundAndThePlainLimit() {
    RareFigures figures = figures(plain(10, 0), false);
    double limit = Proportions.upperOfNone(10, .05);
    double missed = .9 * W0 / 5;
    Estimate any = figures.anyLoss();
    assertThat(any.value()).isCloseTo((W0 + W2) / 5, within(1e-12));
    assertThat(any.low()).isCloseTo(.025 * (W0 + W2) / 5, within(1e-12));
    assertThat(any.high()).isCloseTo(limit + missed, within(1e-12));
    assertThat(figures.everythingLost().high()).isCloseTo(limit + missed, within(1e-12));
    assertThat(figures.firstLossBy(0).value()).isCloseTo(W2 / 5, within(1e-12));
    assertThat(figures.firstLossBy(0).high()).isCloseTo(limit + missed, within(1e-12));
    assertThat(figures.bytesLost().value()).isCloseTo((12 * W0 + 100 * W2) / 5, within(1e-12));
    assertThat(figures.bytesLost().high()).isCloseTo(limit * 1_000 + missed * 1_000, within(1e-9));
    assertThat(figures.shootsLost().high()).isCloseTo(limit * 60 + missed * 60, within(1e-9));
    assertThat(figures.shootsHit().high()).isCloseTo(limit * 61 + missed * 61, within(1e-9));
    double events = (2 * W0 + W2) / 5; // more than the plain limit of one each
    assertThat(figures.lossEvents().high()).isCloseTo(events + missed, within(1e-12));
  }

  /**
   * What is told holds losses larger than the 100 bytes, 2 shoots and 4 hits seen: the chance of a
   * loss times the limit of one effective loss, 1 − 0.05, times how much more there can be.
   */
  @Test
  void largerLossesMayNotHaveBeenSeen() {
    LossTally none = plain(10, 0);
    RareFigures seen = figures(none, false);
    RareFigures told =
        new RareFigures(counted(), new PlainFigures(none, 60, .95, true), false, .95);
    double more = seen.anyLoss().high() * .95;
    assertThat(told.bytesLost().high() - seen.bytesLost().high())
        .isCloseTo(more * 900, within(1e-9));
    assertThat(told.shootsLost().high() - seen.shootsLost().high())
        .isCloseTo(more * 58, within(1e-9));
    assertThat(told.shootsHit().high() - seen.shootsHit().high())
        .isCloseTo(more * 57, within(1e-9));
    assertThat(told.bytesLost().value()).isEqualTo(seen.bytesLost().value());
  }

  /** What no weight has seen is what plain histories have. */
  @Test
  void whatNoWeightSawIsWhatPlainHistoriesSaw() {
    LossTally plain = plain(100, 3);
    RareTally none = RareTally.of(new Script(), MIXTURE, ROWS, 4, 1);
    RareFigures figures =
        new RareFigures(none, new PlainFigures(plain, 60, .95, false), false, .95);
    assertThat(figures.anyLoss()).isEqualTo(Proportions.of(3, 100, .95));
  }

  /** Doubted figures go at least from Markov's bound to the limit of the plain ones. */
  @Test
  void doubtWidens() {
    RareTally sure = new RareTally(ROWS, 1);
    for (int i = 0; i < 60; i++) {
      sure.merge(RareTally.of(new Script(), mixture(1, 1), ROWS, 2, 1));
      sure.merge(RareTally.of(new Script(), mixture(1, 1), ROWS, 4, 1));
    }
    PlainFigures plain = new PlainFigures(plain(2, 1), 60, .95, false);
    Estimate trusted = new RareFigures(sure, plain, false, .95).anyLoss();
    Estimate doubted = new RareFigures(sure, plain, true, .95).anyLoss();
    assertThat(trusted.value()).isEqualTo(.5);
    assertThat(trusted.low()).isGreaterThan(.4);
    assertThat(doubted.value()).isEqualTo(.5);
    assertThat(doubted.low()).isCloseTo(.025 * .5, within(1e-12));
    assertThat(doubted.high()).isEqualTo(plain.anyLoss().high());
  }

  @Test
  void causesHaveWeightedShares() {
    var causes = figures(plain(10, 0), false).causes();
    assertThat(causes).extracting(CauseShare::id).containsExactly("z:drive", "a:fire");
    assertThat(causes).extracting(CauseShare::sentence).containsExactly("a drive", "a fire");
    assertThat(causes.get(0).share().value()).isCloseTo((W0 + W2) / (2 * W0 + W2), within(1e-12));
    assertThat(causes.get(0).shareOfBytes())
        .isCloseTo((5 * W0 + 100 * W2) / (12 * W0 + 100 * W2), within(1e-12));
    assertThat(causes.get(1).shareOfBytes())
        .isCloseTo(7 * W0 / (12 * W0 + 100 * W2), within(1e-12));
  }

  /** So many histories of a hundred have this cause, of which so many only after another loss. */
  @ParameterizedTest
  @CsvSource({
    "40, 10, false, false",
    "40, 9, true, false",
    "20, 20, true, false",
    "80, 10, false, true"
  })
  void aShareOfFewMayBeMoreOrLess(int mine, int later, boolean more, boolean less) {
    RareCause cause = new RareCause("a cause");
    WeightedTally all = new WeightedTally();
    for (int i = 0; i < 100; i++) {
      all.add(1);
      if (i < mine) {
        cause.addNow(3, i >= later);
      }
      cause.endHistory(1, 1);
    }
    all.addHistories(1_000);
    Estimate share = cause.share(all, .95);
    Estimate plain = Shares.ofAmounts(100, mine, 100, mine, mine, 100, .95);
    double unseen = Proportions.upperOfNone(100, .05);
    assertThat(share.value()).isEqualTo(mine / 100.0);
    assertThat(share.high()).isCloseTo(plain.high() + (more ? unseen : 0), within(1e-9));
    assertThat(share.low()).isCloseTo(plain.low() - (less ? unseen : 0), within(1e-9));
    assertThat(cause.bytes()).isEqualTo(3.0 * mine);
  }

  @Test
  void evidenceIsWeightedByLevel() {
    Script script = new Script();
    Evidence first = new Evidence(1, 2);
    script.simulate(0, Bias.NONE, new RareTallySink());
    first.add(3, script);
    Evidence second = new Evidence(1, 2);
    script.simulate(2, Bias.NONE, new RareTallySink());
    second.add(5, script);
    first.merge(second);
    assertThat(first.bestFactor(0, 0)).isCloseTo(3 / (3 * .1 + 5 * .05), within(1e-12));
    assertThat(first.bestFactor(0, 1)).isCloseTo(5 / (5 * .2), within(1e-12));
    assertThat(first.visits(0)).isCloseTo(64 / 34.0, within(1e-12));
    assertThat(first.visits(1)).isEqualTo(1);
    assertThat(first.hazardOfVisit(0, 0)).isCloseTo((3 * .1 + 5 * .05) / 2, within(1e-12));
    assertThat(first.hazardOfVisit(0, 1)).isCloseTo(5 * .2, within(1e-12));
    assertThat(new Evidence(1, 2).bestFactor(0, 0)).isEqualTo(1);
    assertThat(new Evidence(1, 2).hazardOfVisit(0, 0)).isZero();
  }

  private static final class RareTallySink extends lastcopy.simulate.count.LossLedger {
    @Override
    public void lost(Loss loss) {
      assertThat(loss.bytes()).isPositive();
    }
  }

  @Test
  void aRoundOfTuningIsWeighted() {
    TuningRound round = new TuningRound(1, 2).simulate(new Script(), MIXTURE, 0, 3);
    round.merge(new TuningRound(1, 2).simulate(new Script(), MIXTURE, 3, 2));
    sum(round.any, W0 + W2);
    sum(round.bytes, 12 * W0 + 100 * W2);
    sum(round.everything, W0 + W2);
    assertThat(round.forAny.bestFactor(0, 0)).isCloseTo(W0 / (W0 * .1 + W2 * .05), within(1e-12));
    assertThat(round.forBytes.bestFactor(0, 0))
        .isCloseTo(12 * W0 / (12 * W0 * .1 + 100 * W2 * .05), within(1e-12));
    assertThat(round.forEverything.bestFactor(0, 1)).isCloseTo(5, within(1e-12));
    double squares = 144 * W0 + 1e4 * W2;
    double sum = 12 * W0 + 100 * W2;
    assertThat(round.plainBytesVariance()).isCloseTo(5 * squares / sum / sum - 1, within(1e-9));
  }

  private static Settings settings(Method method, double precision, OptionalLong histories) {
    return new Settings(1, .95, precision, histories, Optional.empty(), 1, method);
  }

  /** Rare: fewer than one in twenty; and two million plain ones, or all allowed, would not do. */
  @Test
  void biasIsTriedWhereLossesAreRareAndDear() {
    OptionalLong any = OptionalLong.empty();
    LossTally none = plain(1_000, 0);
    assertThat(new Pilot(settings(Method.PLAIN, .05, any), none).triesRare()).isFalse();
    assertThat(new Pilot(settings(Method.RARE, .05, any), plain(10, 9)).triesRare()).isTrue();
    assertThat(new Pilot(settings(Method.AUTO, .05, any), none).triesRare()).isTrue();
    // 2,000 · 4/p² of two million at a precision of p = 0.0632
    assertThat(new Pilot(settings(Method.AUTO, .0632, any), none).triesRare()).isTrue();
    assertThat(new Pilot(settings(Method.AUTO, .0633, any), none).triesRare()).isFalse();
    OptionalLong few = OptionalLong.of(1_000);
    assertThat(new Pilot(settings(Method.AUTO, .2, few), plain(1_000, 49)).triesRare()).isTrue();
    assertThat(new Pilot(settings(Method.AUTO, .2, few), plain(1_000, 50)).triesRare()).isFalse();
  }

  /**
   * Of 40 losses of a thousand one is of nearly all bytes: their relative variance is that of one
   * in a thousand, 999.6 and, 2.5 times as wide, 159.9; two million do at p = 0.01789.
   */
  @Test
  void unevenLossesAreDear() {
    LossTally chunk = new LossTally(ROWS);
    for (int i = 0; i < 1_000; i++) {
      chunk.begin(i);
      if (i < 40) {
        chunk.lost(loss(.3, i == 0 ? 1e6 : 5, .5, 1, false, DRIVE));
      }
      chunk.end();
    }
    LossTally uneven = new LossTally(ROWS);
    uneven.merge(chunk);
    OptionalLong any = OptionalLong.empty();
    assertThat(new Pilot(settings(Method.AUTO, .0178, any), uneven).triesRare()).isTrue();
    assertThat(new Pilot(settings(Method.AUTO, .0180, any), uneven).triesRare()).isFalse();
  }

  /** A biased history costs as much as a hundred plain ones, unless their number is capped. */
  @Test
  void biasIsTakenWhereItPays() {
    Tuning.Tuned tuned = new Tuning.Tuned(MIXTURE, 9, 9, 1_000, 1_000);
    OptionalLong any = OptionalLong.empty();
    LossTally none = plain(1_000, 0);
    Pilot auto = new Pilot(settings(Method.AUTO, .1, any), none);
    assertThat(auto.takesRare(tuned)).as("3,600 · 100 of 400,000").isTrue();
    Tuning.Tuned dearer = new Tuning.Tuned(MIXTURE, 11, 9, 1_000, 1_000);
    assertThat(auto.takesRare(dearer)).as("4,400 · 100 of 400,000").isFalse();
    assertThat(auto.pays(3_999, tuned)).isTrue();
    assertThat(auto.pays(4_001, tuned)).isFalse();
    Pilot rationed = new Pilot(settings(Method.AUTO, .1, OptionalLong.of(1_000)), none);
    assertThat(rationed.pays(399_000, tuned)).isTrue();
    assertThat(rationed.pays(401_000, tuned)).isFalse();
    assertThat(new Pilot(settings(Method.RARE, .1, any), none).pays(1e9, tuned)).isTrue();
  }
}
