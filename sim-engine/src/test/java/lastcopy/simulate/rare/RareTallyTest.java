package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lastcopy.experiment.LayoutResult.CauseShare;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.WeightedTally;
import lastcopy.parallel.Workers;
import lastcopy.simulate.Agreement;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.PlainFigures;
import lastcopy.simulate.count.Thresholds;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tuning, mixture, weights and intervals together, on small repairable sets whose chain is solved
 * exactly, apart from the engine.
 */
class RareTallyTest {

  private static final Thresholds ROWS =
      new Thresholds(
          new double[] {StandIn.SMALL, StandIn.LARGE}, new double[] {1}, new double[] {5}, 1e6);
  private static final double YEAR = 8_760;

  static Stream<StandIn> sets() {
    return Stream.of(
        new StandIn(2, 1, 0.02 / YEAR, 1 / 72.0, 0, 5 * YEAR), // 3.3e-5
        new StandIn(3, 2, 0.02 / YEAR, 1 / 72.0, 1e-14, 5 * YEAR), // 8.5e-9, a shock among them
        new StandIn(8, 2, 0.0005 / YEAR, 1 / 24.0, 0, 5 * YEAR)); // 7.9e-13
  }

  /**
   * Null hypotheses, each over seeds 1 to 60 and with an alarm rate of 1e-6: a 95 % interval holds
   * the exact chance with at least 93 %; the mean of the estimates is the exact chance (six
   * standard errors, which the weights' own variance gives). Sabotage: the weight taken from one
   * part of the mixture only, or hazards left out of it.
   */
  @ParameterizedTest
  @MethodSource("sets")
  void theExactChanceIsHeld(StandIn set) {
    int seeds = 60;
    double exact = set.exact();
    int held = 0;
    double sum = 0;
    double variance = 0;
    for (int seed = 1; seed <= seeds; seed++) {
      Mixture mixture = tuned(set, seed);
      RareTally tally = RareTally.of(set.histories(-seed), mixture, ROWS, 0, 10_000);
      Estimate estimate = tally.any.estimate(0.95, 1);
      held += estimate.low() <= exact && exact <= estimate.high() ? 1 : 0;
      sum += estimate.value() / exact;
      variance += tally.any.relativeVariance() / tally.any.histories();
    }
    int least = BinomialDistribution.of(seeds, 0.93).inverseCumulativeProbability(1e-6);
    assertThat(held).isGreaterThanOrEqualTo(least);
    double error = Math.sqrt(variance) / seeds;
    assertThat(sum / seeds).isBetween(1 - 6 * error, 1 + 6 * error);
    assertThat(error).isLessThan(0.02);
  }

  /** Rare shocks that take all, among common small losses: what a single bias would starve. */
  @ParameterizedTest
  @MethodSource("sets")
  void bytesAndEverythingAreSeenToo(StandIn given) {
    StandIn set =
        new StandIn(
            given.drives(),
            given.survives(),
            given.fails(),
            given.repairs(),
            given.exact() / given.horizon() / 100,
            given.horizon());
    Mixture mixture = tuned(set, 1);
    RareTally tally = RareTally.of(set.histories(2), mixture, ROWS, 0, 40_000);
    double shock = -Math.expm1(-set.shock() * set.horizon());
    Agreement.agrees(tally.everything.estimate(1 - Agreement.ALARM, 1), shock);
    Agreement.agrees(
        tally.bytesReached.from(StandIn.LARGE).estimate(1 - Agreement.ALARM, 1), shock);
    assertThat(tally.bytes.trusted()).isTrue();
    assertThat(tally.everything.trusted()).isTrue();
    assertThat(tally.causes.get("shock").share(tally.events, 0.95).value()).isBetween(.005, .02);
  }

  /**
   * Shares of bytes are not those of events: losses of 1 by drives, of 1,000 by a shock a hundred
   * times rarer, whose share of the bytes is about 10/11. Red if events are divided by bytes.
   */
  @Test
  void sharesOfBytesAreThoseOfBytes() {
    StandIn given = sets().findFirst().orElseThrow();
    double perHour = given.exact() / given.horizon() / 100;
    StandIn set =
        new StandIn(
            given.drives(),
            given.survives(),
            given.fails(),
            given.repairs(),
            perHour,
            given.horizon());
    RareTally tally = RareTally.of(set.histories(2), tuned(set, 1), ROWS, 0, 40_000);
    PlainFigures none = new PlainFigures(new LossTally(ROWS), 1, 0.95, false);
    List<CauseShare> causes = new RareFigures(tally, none, false, 0.95).causes();
    assertThat(causes).extracting(CauseShare::id).containsExactly("drives", "shock");
    double byShock = perHour * given.horizon() * StandIn.LARGE;
    double byDrives = given.exact() * StandIn.SMALL;
    assertThat(causes.get(1).shareOfBytes())
        .isCloseTo(byShock / (byShock + byDrives), within(0.02));
    assertThat(causes.get(0).shareOfBytes() + causes.get(1).shareOfBytes())
        .isCloseTo(1, within(1e-12));
  }

  /** A run that ends by its time has a first stage of no history; histories have one channel. */
  @Test
  void mergesATallyThatHasCountedNothing() {
    StandIn set = sets().findFirst().orElseThrow();
    Mixture mixture = tuned(set, 1);
    RareTally counted = RareTally.of(oneChannel(set.histories(2)), mixture, ROWS, 0, 1_000);
    double before = counted.any.mean();
    counted.merge(new RareTally(ROWS, mixture.parts()));
    RareTally anew = new RareTally(ROWS, mixture.parts());
    anew.merge(counted);
    assertThat(anew.any.mean()).isEqualTo(before);
    assertThat(anew.channels.count()).isEqualTo(1);
  }

  /**
   * One cause in all losses but three light ones: what weighs most of the others may not have been
   * seen yet, so that its share may be less by what none of 10,000 losses would allow.
   */
  @Test
  void aShareIsNotSureWhereTheOthersAreFew() {
    RareCause common = new RareCause("common");
    WeightedTally events = new WeightedTally();
    for (int i = 0; i < 10_000; i++) {
      common.addNow(1, true);
      common.endHistory(1, 1);
      events.add(1);
    }
    for (int i = 0; i < 3; i++) {
      common.endHistory(1e-3, 1);
      events.add(1e-3);
    }
    events.addHistories(20_000);
    Estimate share = common.share(events, 0.95);
    assertThat(share.value()).isCloseTo(1 - 3e-7, within(1e-9));
    assertThat(share.low()).isLessThan(1 - Proportions.upperOfNone(10_000, 0.05));
    assertThat(share.high()).isLessThanOrEqualTo(1);
  }

  private static Biasable oneChannel(Biasable of) {
    return new Decorated(of) {
      @Override
      public int channels() {
        return 1;
      }
    };
  }

  private static Mixture tuned(StandIn set, long seed) {
    return Tuning.of(Workers.<Biasable>alone(asked -> set.histories(seed), () -> false))
        .orElseThrow()
        .mixture();
  }
}
