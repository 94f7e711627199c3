package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.WeightedTally;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Studios;
import lastcopy.simulate.count.Goal;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * How many histories a biased run counts and when it ends, where all weigh 1 and each fifth of its
 * first stage, each so many of its second, loses something.
 */
class RareStagesTest {

  private static final Thresholds ROWS =
      new Thresholds(new double[] {10}, new double[] {1}, new double[] {1}, 1_000);
  private static final Studio STUDIO = Studios.archive(8_760, CopyMaker.service("main", Rate.NONE));
  private static final OptionalLong NO_CAP = OptionalLong.empty();

  private final ExecutorService threads = Executors.newFixedThreadPool(1);
  private LossTally plain = plain(1);
  private final List<String> progress = new ArrayList<>();
  private long secondLosesOneIn = 5;

  /** Seeds in the order in which histories of them were first asked for. */
  private final List<Long> seeds = new ArrayList<>();

  private final List<Long> numbers = new ArrayList<>();

  /** So many histories as they fall, of which none lost anything. */
  private static LossTally plain(int histories) {
    LossTally chunk = new LossTally(ROWS);
    for (int i = 0; i < histories; i++) {
      chunk.begin(i);
      chunk.end();
    }
    LossTally all = new LossTally(ROWS);
    all.merge(chunk);
    return all;
  }

  @AfterEach
  void end() {
    threads.shutdown();
  }

  private static Tuning.Tuned tuned(double variance, double plainVariance) {
    Mixture flat = new Mixture(List.of(new Mixture.Part(1, new double[][] {{1}})));
    return new Tuning.Tuned(flat, variance, variance, plainVariance, plainVariance);
  }

  private Allowance allowed(BooleanSupplier over, BooleanSupplier givesWay) {
    Progress told = (layout, histories, precision, share) -> progress.add(layout + " " + histories);
    return new Allowance(told, over, givesWay);
  }

  private Optional<RareRun.Outcome> run(
      Method method, double precision, OptionalLong cap, Tuning.Tuned tuned, Allowance allowed) {
    Settings settings = new Settings(1, .95, precision, cap, Optional.empty(), 1, method);
    RareRun run =
        new RareRun(
            new Results(STUDIO, STUDIO.layouts().get(0), .95),
            settings,
            STUDIO.layouts().get(0),
            plain,
            new Pilot(settings, plain),
            this::histories);
    return run.count(tuned, threads, allowed);
  }

  private Biasable histories(long seed) {
    if (!seeds.contains(seed)) {
      seeds.add(seed);
    }
    return OnePath.losing(seeds.indexOf(seed) == 0 ? 5 : secondLosesOneIn, numbers);
  }

  private Optional<RareRun.Outcome> endless(double precision, Tuning.Tuned tuned) {
    return run(Method.RARE, precision, NO_CAP, tuned, allowed(() -> false, () -> false));
  }

  private static WeightedTally fifths(long histories) {
    WeightedTally tally = new WeightedTally();
    for (int i = 0; i < histories / 5; i++) {
      tally.add(1);
    }
    tally.addHistories(histories);
    return tally;
  }

  /** A cap is the number of histories, in one stage. */
  @Test
  void aCapIsKept() {
    Allowance all = allowed(() -> false, () -> false);
    RareRun.Outcome seen =
        run(Method.RARE, .2, OptionalLong.of(2_500), tuned(4, 4), all).orElseThrow();
    assertThat(seen.tally().any.histories()).isEqualTo(2_500);
    assertThat(seen.tally().any.sum()).isEqualTo(500);
    assertThat(seen.reached()).isTrue();
    assertThat(seen.doubt()).isEmpty();
    assertThat(seeds).hasSize(1);
    assertThat(progress).containsExactly("only 1000", "only 2000", "only 2500");
    RareRun.Outcome wide =
        run(Method.RARE, .01, OptionalLong.of(2_500), tuned(4, 4), all).orElseThrow();
    assertThat(wide.tally().any.histories()).isEqualTo(2_500);
    assertThat(wide.reached()).isFalse();
  }

  /** 4,000 tell how many it takes, and do not count; so many are counted, in whole thousands. */
  @Test
  void aFirstStageTellsHowManyCount() {
    RareRun.Outcome seen = endless(.05, tuned(4, 4)).orElseThrow();
    double planned = new Goal(.05, .95).planned(fifths(4_000), fifths(4_000), fifths(4_000));
    long counted = (long) Math.ceil(planned / 1_000) * 1_000;
    assertThat(planned).isBetween(6_000.0, 8_000.0);
    assertThat(seen.tally().any.histories()).isEqualTo(counted);
    assertThat(seen.reached()).isTrue();
    assertThat(seeds).as("two kinds of luck").hasSize(2);
    assertThat(progress.subList(0, 5))
        .containsExactly("only 1000", "only 2000", "only 3000", "only 4000", "only 1000");
  }

  /** The first stage has a quarter of what tuning said: of 4·4/0.05² = 6,400 times ten. */
  @Test
  void aFirstStageIsAQuarterOfWhatIsExpected() {
    endless(.05, tuned(40, 40));
    assertThat(progress.indexOf("only 1000")).isZero();
    assertThat(progress.lastIndexOf("only 1000")).isEqualTo(16);
  }

  /**
   * Where tuning was wrong by far the first stage grows to a quarter of what it says, at most twice
   * what it has: 4,000, 8,000, 16,000 of 23,000 or so.
   */
  @Test
  void aFirstStageGrowsUntilItIsAQuarter() {
    endless(.013, tuned(.1, .1));
    double planned = new Goal(.013, .95).planned(fifths(8_000), fifths(8_000), fifths(8_000));
    assertThat(planned / 4).isBetween(8_000.0, 32_000.0);
    int first = progress.lastIndexOf("only 1000");
    assertThat(first).isEqualTo(8 + (planned / 4 > 16_000 ? 8 : 0));
  }

  /** No fewer than 4,000 count, however easy it is. */
  @Test
  void atLeastFourThousandCount() {
    assertThat(endless(.5, tuned(4, 4)).orElseThrow().tally().any.histories()).isEqualTo(4_000);
  }

  /** With a loss in twenty the second stage falls short; it goes on by quarters of itself. */
  @Test
  void aSecondStageThatFallsShortGoesOn() {
    secondLosesOneIn = 20;
    RareRun.Outcome seen = endless(.05, tuned(4, 4)).orElseThrow();
    double planned = new Goal(.05, .95).planned(fifths(4_000), fifths(4_000), fifths(4_000));
    double counted = Math.ceil(planned / 1_000) * 1_000;
    while (twentieths(counted) > .05) {
      counted = Math.ceil(1.25 * counted / 1_000) * 1_000;
    }
    assertThat(seen.tally().any.histories()).isEqualTo((long) counted).isGreaterThan(20_000);
    assertThat(seen.reached()).isTrue();
  }

  /** Doubted, it goes on only while plain histories would take longer: 1.6 million, 100 each. */
  @Test
  void whatFallsShortAndIsDoubtedEnds() {
    secondLosesOneIn = 20;
    plain = plain(1_000);
    RareRun.Outcome seen =
        run(Method.AUTO, .05, NO_CAP, tuned(4, 1_000), allowed(() -> false, () -> false))
            .orElseThrow();
    double planned = new Goal(.05, .95).planned(fifths(4_000), fifths(4_000), fifths(4_000));
    double counted = Math.ceil(planned / 1_000) * 1_000;
    while (counted * 100 < 1.6e6) {
      counted = Math.ceil(1.25 * counted / 1_000) * 1_000;
    }
    assertThat(seen.tally().any.histories()).isEqualTo((long) counted).isLessThan(25_000);
    assertThat(seen.doubt()).isPresent();
    assertThat(seen.reached()).isFalse();
  }

  private static double twentieths(double histories) {
    WeightedTally tally = new WeightedTally();
    for (int i = 0; i < histories / 20; i++) {
      tally.add(1);
    }
    tally.addHistories((long) histories);
    return tally.estimate(.95, 1).relativeHalfWidth();
  }

  /** 6,400 or so times a hundred are dearer than 4·100/0.05² plain ones, and cheaper than ten. */
  @Test
  void whatDoesNotPayIsLeftToPlainHistories() {
    Allowance all = allowed(() -> false, () -> false);
    assertThat(run(Method.AUTO, .05, NO_CAP, tuned(4, 300), all)).isEmpty();
    assertThat(seeds).as("not counted at all").hasSize(1);
    assertThat(run(Method.AUTO, .05, NO_CAP, tuned(4, 3_000), all)).isPresent();
  }

  /** In the second stage after so many chunks: what both stages saw is all there is. */
  @Test
  void whatIsGivenUpHasBothStages() {
    Allowance soon = allowed(() -> progress.size() >= 6, () -> false);
    RareRun.Outcome seen = run(Method.RARE, .05, NO_CAP, tuned(4, 4), soon).orElseThrow();
    assertThat(seen.tally().any.histories()).isEqualTo(6_000);
    assertThat(seen.reached()).isFalse();
    assertThat(seeds).hasSize(2);
  }

  @Test
  void givenUpInTheFirstStageThatIsAllThereIs() {
    Allowance soon = allowed(() -> progress.size() >= 2, () -> false);
    RareRun.Outcome seen = run(Method.RARE, .05, NO_CAP, tuned(4, 4), soon).orElseThrow();
    assertThat(seen.tally().any.histories()).isEqualTo(2_000);
    assertThat(seen.tally().any.sum()).isEqualTo(400);
  }

  /** Losses of 20 % against none of 1,000 as they fall: one of the two is wrong. */
  @Test
  void whatPlainHistoriesContradictIsDoubted() {
    plain = plain(1_000);
    Allowance all = allowed(() -> false, () -> false);
    RareRun.Outcome seen =
        run(Method.RARE, .2, OptionalLong.of(2_500), tuned(4, 4), all).orElseThrow();
    assertThat(seen.doubt()).hasValueSatisfying(why -> assertThat(why).contains("contradict"));
    assertThat(seen.reached()).isFalse();
  }

  /** Plain ones need the rest of the time, and these are doubted: not one chunk more. */
  @Test
  void whatIsDoubtedGivesWay() {
    plain = plain(1_000);
    Allowance gives = allowed(() -> false, () -> true);
    RareRun.Outcome seen = run(Method.AUTO, .05, NO_CAP, tuned(4, 3_000), gives).orElseThrow();
    assertThat(seen.tally().any.histories()).isEqualTo(1_000);
    assertThat(seen.doubt()).isPresent();
    progress.clear();
    run(Method.RARE, .05, NO_CAP, tuned(4, 3_000), gives);
    assertThat(progress).as("unless nothing else was asked for").hasSizeGreaterThan(5);
  }

  /** Trusted, they do not give way. */
  @Test
  void whatIsTrustedGoesOn() {
    Allowance gives = allowed(() -> false, () -> true);
    RareRun.Outcome seen = run(Method.AUTO, .05, NO_CAP, tuned(4, 3_000), gives).orElseThrow();
    assertThat(seen.doubt()).isEmpty();
    assertThat(seen.reached()).isTrue();
  }

  /** Tuning has a luck of its own too, by layout; given up, it says nothing. */
  @Test
  void tuningHasALuckOfItsOwn() {
    Set<Long> all = new TreeSet<>();
    for (long seed = 1; seed <= 2; seed++) {
      Settings settings = new Settings(seed, .95, .05, NO_CAP, Optional.empty(), 1, Method.RARE);
      RareRun run =
          new RareRun(
              new Results(STUDIO, STUDIO.layouts().get(0), .95),
              settings,
              STUDIO.layouts().get(0),
              plain,
              new Pilot(settings, plain),
              this::histories);
      assertThat(run.tune(threads, allowed(() -> false, () -> false))).isPresent();
      run.count(tuned(4, 4), threads, allowed(() -> false, () -> false));
      assertThat(run.tune(threads, allowed(() -> true, () -> false))).isEmpty();
      assertThat(run.tune(threads, allowed(() -> false, () -> true))).isEmpty();
      all.addAll(seeds);
    }
    assertThat(all).hasSize(6);
  }
}
