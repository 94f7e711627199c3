package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongFunction;
import lastcopy.history.report.Loss;
import lastcopy.interval.WeightedTally;
import lastcopy.parallel.Workers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors that tuning finds where all histories run the same path, by hand. At first each level has
 * half an event shared as its hazards are, and half shared evenly; then a factor moves, in
 * logarithms and by four fifths of n/(n + 10) a round, towards events over hazard.
 */
class TuningTest {

  private static final int BALANCING = 256;
  private static final double[] SHARES = {.2, .2, .2, .1, .1, .1, .1};

  private final List<Long> told = new ArrayList<>();

  private Optional<Tuning.Tuned> tune(
      double[][] events, double[][] hazard, LongFunction<List<Loss>> losses, BooleanSupplier over) {
    OnePath path = new OnePath(events, hazard, new double[] {30, 1e9}, losses, told);
    return Tuning.of(Workers.alone(asked -> path, over));
  }

  private static double factor(Tuning.Tuned of, int part, int group, int level) {
    return of.mixture().part(part).factor(group, level);
  }

  /** Ten or thirty bytes in each history, and everything in a quarter of them. */
  private static List<Loss> all(long number) {
    return List.of(OnePath.loss(number % 2 == 0 ? 10 : 30, number % 4 == 0));
  }

  /** After four rounds that move a share of the way. */
  private static double moved(double from, double to, double histories) {
    double left = Math.pow(1 - .8 * histories / (histories + 10), 4);
    return Math.exp(left * Math.log(from) + (1 - left) * Math.log(to));
  }

  private static void is(double seen, double expected) {
    assertThat(seen).isCloseTo(expected, within(1e-9 * expected));
  }

  private static final double[][] EVENTS = {{1, 1}, {0, 0}};
  private static final double[][] HAZARD = {{.1, .02}, {.3, .004}};

  @Test
  void eachLevelIsBalanced() {
    Tuning.Tuned tuned = tune(EVENTS, HAZARD, TuningTest::all, () -> false).orElseThrow();
    is(factor(tuned, 0, 0, 0), .5 / .4 + .5 / (2 * .1));
    is(factor(tuned, 0, 1, 0), .5 / .4 + .5 / (2 * .3));
    assertThat(factor(tuned, 0, 0, 1)).as("33.3, of which 30 are worth it").isEqualTo(30);
    is(factor(tuned, 0, 1, 1), .5 / .024 + .5 / (2 * .004));
  }

  /**
   * Events over hazard are 10 and, at most, 30 of the first group; the second has none, so that it
   * falls to 1, or to a fiftieth of the 83.3 that balance it. Any loss and bytes are learnt from
   * all of a thousand histories, everything from 250; beyond depth 0 all are lowered.
   */
  @Test
  void factorsMoveToEventsOverHazard() {
    Tuning.Tuned tuned = tune(EVENTS, HAZARD, TuningTest::all, () -> false).orElseThrow();
    double balanced = .5 / .024 + .5 / .008;
    double bytes = 1_000 * 20.0 * 20 / 500; // effective of as many tens as thirties: 800
    double[] histories = {1_000, bytes, 250};
    for (int i = 0; i < 3; i++) {
      for (int lowered = 0; lowered < 2; lowered++) {
        int part = 1 + 2 * i + lowered;
        double by = lowered == 0 ? .35 : .75;
        is(factor(tuned, part, 0, 0), moved(3.75, 10, histories[i]));
        is(factor(tuned, part, 1, 0), moved(.5 / .4 + .5 / .6, 1, histories[i]));
        is(factor(tuned, part, 0, 1), by * 30);
        is(
            factor(tuned, part, 1, 1),
            Math.max(1, by * moved(balanced, balanced / 50, histories[i])));
      }
    }
    assertThat(tuned.mixture().parts()).isEqualTo(7);
    assertThat(Tuning.LIKE_A_LOSS).as("any loss, lowered least").isEqualTo(2);
  }

  @Test
  void partsHaveTheirShares() {
    Tuning.Tuned tuned = tune(EVENTS, HAZARD, TuningTest::all, () -> false).orElseThrow();
    int[] count = new int[7];
    for (int number = 0; number < 10_000; number++) {
      count[tuned.mixture().partOf(number)]++;
    }
    for (int part = 0; part < 7; part++) {
      assertThat(count[part] / 1e4).as("part %s", part).isCloseTo(SHARES[part], within(1e-3));
    }
  }

  /**
   * All weigh the same, by the densities of the parts; a tenth of them lose, so that it takes ten
   * batches, and of 10 or 30 bytes, which vary as much as 500/20² of their mean square.
   */
  @Test
  void variancesAreThoseOfTheLastRound() {
    Tuning.Tuned tuned =
        tune(EVENTS, HAZARD, n -> n % 10 < 1 ? all(n / 10) : List.of(), () -> false).orElseThrow();
    double density = 0;
    for (int part = 0; part < 7; part++) {
      double log = 0;
      for (int g = 0; g < 2; g++) {
        for (int v = 0; v < 2; v++) {
          double b = factor(tuned, part, g, v);
          log += EVENTS[g][v] * Math.log(b) - (b - 1) * HAZARD[g][v];
        }
      }
      density += SHARES[part] * Math.exp(log);
    }
    double weight = 1 / density;
    WeightedTally any = new WeightedTally();
    WeightedTally bytes = new WeightedTally();
    int rounds = (told.size() - 2 * BALANCING) / 5;
    for (int i = 0; i < rounds / 10; i++) {
      any.add(weight);
      bytes.add(weight * (i % 2 == 0 ? 10 : 30));
    }
    any.addHistories(rounds);
    bytes.addHistories(rounds);
    is(tuned.anyVariance(), any.relativeVariance());
    assertThat(tuned.bytesVariance()).isCloseTo(bytes.relativeVariance(), within(.02));
    is(tuned.plainAnyVariance(), 10 / weight - 1);
    assertThat(tuned.plainBytesVariance())
        .isCloseTo(10 / weight * 500 / 400 - 1, within(.01 * 10 / weight));
  }

  /**
   * Rounds end after a batch of a thousand where all is seen often, after three where only
   * everything is not, and after ten where 150 losses were not seen; no number is simulated twice.
   */
  @ParameterizedTest
  @CsvSource({"1, 1, 1", "1, 1000000, 3", "10, 1, 2", "100, 1, 10"})
  void roundsEndWhenEnoughIsSeen(int losses, int everything, int batches) {
    Optional<Tuning.Tuned> tuned =
        tune(
            EVENTS,
            HAZARD,
            n -> n % losses == 0 ? List.of(OnePath.loss(10, n % everything == 0)) : List.of(),
            () -> false);
    assertThat(tuned).isPresent();
    assertThat(told).doesNotHaveDuplicates().isSorted();
    assertThat(told).hasSize(2 * BALANCING + 5 * 1_000 * batches);
  }

  /** One that is surely met needs no factor, and what is balanced leaves it out. */
  @ParameterizedTest
  @CsvSource({"1", "1.5"})
  void whatHappensAnywayIsNotRaised(double hazard) {
    double[][] hazards = {{hazard, .02}, {.25, .004}};
    Tuning.Tuned tuned = tune(EVENTS, hazards, TuningTest::all, () -> false).orElseThrow();
    assertThat(factor(tuned, 0, 0, 0)).isEqualTo(1);
    is(factor(tuned, 0, 1, 0), .5 / .25 + .5 / .25);
  }

  @Test
  void aLevelThatNothingCameToIsTakenLikeTheOneBefore() {
    double[][] events = {{1, 0}, {0, 0}};
    double[][] hazards = {{.1, 0}, {.3, 0}};
    Tuning.Tuned tuned = tune(events, hazards, TuningTest::all, () -> false).orElseThrow();
    is(factor(tuned, 0, 0, 1), 3.75);
    is(factor(tuned, 0, 1, 1), .5 / .4 + .5 / .6);
  }

  @Test
  void withoutALossThereIsNothingToLearn() {
    assertThat(tune(EVENTS, HAZARD, number -> List.of(), () -> false)).isEmpty();
    assertThat(told).as("one round, not five").hasSize(2 * BALANCING + 10_000);
  }

  /** Losses up to the last round, and none in it. */
  @Test
  void theLastRoundMustHaveLosses() {
    long last = 2 * BALANCING + 4_000;
    assertThat(tune(EVENTS, HAZARD, number -> number < last ? all(number) : List.of(), () -> false))
        .isEmpty();
  }

  /** Asked before each batch; a round that was given up counts as one without a loss. */
  @Test
  void itCanBeGivenUp() {
    assertThat(tune(EVENTS, HAZARD, TuningTest::all, () -> true)).isEmpty();
    assertThat(told).isEmpty();
    assertThat(tune(EVENTS, HAZARD, TuningTest::all, () -> told.size() > 2_600)).isEmpty();
    assertThat(told).hasSizeLessThan(2 * BALANCING + 4_000);
  }
}
