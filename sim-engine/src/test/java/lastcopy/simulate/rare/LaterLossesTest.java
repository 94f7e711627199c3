package lastcopy.simulate.rare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;
import lastcopy.interval.WeightedTally;
import lastcopy.simulate.count.Counted;
import lastcopy.simulate.count.LossTally;
import lastcopy.simulate.count.PlainFigures;
import lastcopy.simulate.count.Thresholds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What takes more than the first loss of a history, which no bias makes commoner, and whom a tally
 * tells of a loss; by hand, of histories that all weigh 1.
 */
class LaterLossesTest {

  private static final Thresholds ROWS =
      new Thresholds(new double[] {10}, new double[] {1}, new double[] {1}, 1_000);
  private static final Mixture FLAT =
      new Mixture(List.of(new Mixture.Part(1, new double[][] {{1}})));
  private static final int HISTORIES = 600;

  private static OnePath path(LongFunction<List<Loss>> losses) {
    return new OnePath(
        new double[1][1], new double[1][1], new double[] {1}, losses, new ArrayList<>());
  }

  private static RareTally tally(LongFunction<List<Loss>> losses) {
    OnePath path = path(losses);
    RareTally all = new RareTally(ROWS, 1);
    all.merge(RareTally.of(path, FLAT, ROWS, 0, HISTORIES / 2));
    all.merge(RareTally.of(path, FLAT, ROWS, HISTORIES / 2, HISTORIES / 2));
    return all;
  }

  private static PlainFigures plain() {
    LossTally chunk = new LossTally(ROWS);
    chunk.begin(0);
    chunk.end();
    LossTally all = new LossTally(ROWS);
    all.merge(chunk);
    return new PlainFigures(all, 60, .95, false);
  }

  /**
   * Of 60 histories with a loss 20 lose everything, so many of them by their second. Where those
   * are fewer than ten, as many more as counting allows may do so among all with a loss.
   */
  @ParameterizedTest
  @CsvSource({"0, true", "4, true", "9, true", "10, false", "20, false"})
  void whatFewReachByLaterLossesMayBeMore(int later, boolean more) {
    RareTally tally =
        tally(
            number ->
                number % 10 != 0
                    ? List.of()
                    : number < 10L * later
                        ? List.of(OnePath.loss(5, false), OnePath.loss(5, true))
                        : List.of(OnePath.loss(10, number < 200)));
    RareFigures figures = new RareFigures(tally, plain(), false, .95);
    WeightedTally twenty = new WeightedTally();
    for (int i = 0; i < 20; i++) {
      twenty.add(1);
    }
    twenty.addHistories(HISTORIES);
    Estimate share = Proportions.of(later, 60, .95);
    double added = figures.anyLoss().high() * (share.high() - share.value());
    double high = twenty.estimate(.95, 1).high() + (more ? added : 0);
    assertThat(tally.everythingLater).isEqualTo(new Counted(later, later));
    assertThat(figures.everythingLost().high()).isCloseTo(Math.min(1, high), within(1e-12));
    assertThat(figures.everythingLost().value()).isCloseTo(20.0 / HISTORIES, within(1e-12));
  }

  /**
   * Of 60 histories with a loss 30 lose everything, and 10 bytes, by their second. Where those
   * weigh a thousandth, they stand for none of the 30 or so that count, of which as many more as
   * counting allows may do so. Red where they count by their number.
   */
  @ParameterizedTest
  @CsvSource({"0.001, true", "1, false"})
  void manyLaterLossesThatWeighLittleAreFew(double weight, boolean more) {
    double[] weighs = {1};
    Biasable histories =
        new Decorated(
            path(
                number ->
                    number % 10 != 0
                        ? List.of()
                        : number % 20 == 0
                            ? List.of(OnePath.loss(5, false), OnePath.loss(5, true))
                            : List.of(OnePath.loss(5, false)))) {
          @Override
          public void simulate(long number, Bias bias, Ledger to) {
            weighs[0] = number % 20 == 0 ? weight : 1;
            super.simulate(number, bias, to);
          }

          @Override
          public double logOfTheRest() {
            return Math.log(weighs[0]);
          }
        };
    RareTally tally = new RareTally(ROWS, 1);
    tally.merge(RareTally.of(histories, FLAT, ROWS, 0, HISTORIES));
    RareFigures figures = new RareFigures(tally, plain(), false, .95);
    WeightedTally thirty = new WeightedTally();
    for (int i = 0; i < 30; i++) {
      thirty.add(weight);
    }
    thirty.addHistories(HISTORIES);
    double least = more ? figures.anyLoss().high() * Proportions.of(0, 30, .95).high() : 0;
    double high = Math.min(figures.anyLoss().high(), thirty.estimate(.95, 1).high() + least);
    assertThat(figures.everythingLost().high()).isCloseTo(high, within(1e-12));
    assertThat(figures.bytesReached().get(0).chance().high()).isCloseTo(high, within(1e-12));
  }

  /** All of five with a loss: none is left that might. */
  @Test
  void whereAllDoSoNoMoreCan() {
    RareTally tally =
        tally(
            number ->
                number % 120 == 0
                    ? List.of(OnePath.loss(5, false), OnePath.loss(5, true))
                    : List.of());
    RareFigures figures = new RareFigures(tally, plain(), false, .95);
    assertThat(tally.everythingLater).isEqualTo(new Counted(5, 5));
    assertThat(figures.everythingLost().high()).isEqualTo(figures.anyLoss().high());
  }

  @Test
  void aWatcherIsToldOfEachLoss() {
    List<Long> simulated = new ArrayList<>();
    List<String> told = new ArrayList<>();
    Mixture halves =
        new Mixture(
            List.of(
                new Mixture.Part(.5, new double[][] {{1}}),
                new Mixture.Part(.5, new double[][] {{1}})));
    RareTally tally =
        RareTally.of(
            OnePath.losing(5, simulated),
            halves,
            ROWS,
            43,
            10,
            (number, part, weight, lost) -> {
              assertThat(part).isEqualTo(halves.partOf(number));
              told.add(number + ": " + weight + " of " + lost.bytes());
            });
    assertThat(simulated).containsExactly(43L, 44L, 45L, 46L, 47L, 48L, 49L, 50L, 51L, 52L);
    assertThat(told).containsExactly("45: 1.0 of 10.0", "50: 1.0 of 10.0");
    assertThat(tally.any().sum()).isEqualTo(2);
    assertThat(tally.any().histories()).isEqualTo(10);
    assertThat(tally.bytes().sum()).isEqualTo(20);
    assertThat(tally.lossesBy(0).sum()).isEqualTo(2);
  }

  /** Risked 0.3 and come in one of ten: after ten have come nothing is missed. */
  @Test
  void whatCameOutBadlyIsCounted() {
    Biasable histories =
        new Decorated(OnePath.losing(10, new ArrayList<>())) {
          @Override
          public int channels() {
            return 1;
          }

          @Override
          public void simulate(long number, Bias bias, Ledger to) {
            if (number % 10 == 0) {
              to.risked(0, .3);
              to.cameOutBadly(0);
            }
          }
        };
    RareTally ten = RareTally.of(histories, FLAT, ROWS, 0, 100);
    assertThat(ten.channels.missed()).isZero();
    RareTally never = new RareTally(ROWS, 1);
    never.merge(ten);
    never.merge(new RareTally(ROWS, 1));
    assertThat(never.channels.missed()).isZero();
  }

  /** Weights, events of it and of all, whether first, in two parts and in one. */
  @Test
  void causesOfChunksAddUp() {
    RareCause whole = new RareCause("a cause");
    RareCause first = new RareCause("a cause");
    RareCause second = new RareCause("a cause");
    WeightedTally all = new WeightedTally();
    for (int i = 0; i < 100; i++) {
      double weight = 1 + i % 3;
      RareCause half = i < 40 ? first : second;
      for (RareCause each : List.of(whole, half)) {
        for (int events = 0; events < i % 4; events++) {
          each.addNow(2 + i % 5, i % 7 == 0);
        }
        each.endHistory(weight, 4);
      }
      all.add(4 * weight);
    }
    all.addHistories(1_000);
    first.merge(second);
    Estimate seen = whole.share(all, .95);
    Estimate merged = first.share(all, .95);
    assertThat(merged.value()).isCloseTo(seen.value(), within(1e-12));
    assertThat(merged.low()).isCloseTo(seen.low(), within(1e-12));
    assertThat(merged.high()).isCloseTo(seen.high(), within(1e-12));
    assertThat(first.bytes()).isCloseTo(whole.bytes(), within(1e-9));
    double events = 0;
    double ofAll = 0;
    for (int i = 0; i < 100; i++) {
      events += (1 + i % 3) * (i % 4);
      ofAll += (1 + i % 3) * 4;
    }
    assertThat(seen.value()).isCloseTo(events / ofAll, within(1e-12));
  }

  /**
   * Six later ones in each of two chunks are twelve, as many as say how many more there may be; a
   * half in each history leaves nothing else to luck.
   */
  @Test
  void laterOnesOfChunksAddUp() {
    RareCause first = new RareCause("a cause");
    RareCause second = new RareCause("a cause");
    WeightedTally all = new WeightedTally();
    for (int i = 0; i < 100; i++) {
      RareCause half = i < 50 ? first : second;
      boolean later = i % 50 < 6;
      half.addNow(1, !later);
      half.endHistory(later ? 3 : 1, 2);
      all.add(later ? 6 : 2);
    }
    all.addHistories(1_000);
    first.merge(second);
    assertThat(first.share(all, .95).value()).isCloseTo(.5, within(1e-12));
    assertThat(first.share(all, .95).high()).isCloseTo(.5, within(1e-9));
  }

  /**
   * Of 1,000 losses that weigh 1 none is by a cause that 700 have which weigh a thousandth. That of
   * 1,000 as heavy none was seen allows 0.3 % more. Red where many that weigh little say by their
   * number, or by how even they are, that nothing heavier was missed.
   */
  @ParameterizedTest
  @CsvSource({"0.001, true", "0.1, false"})
  void manyThatWeighLittleAreFew(double weight, boolean few) {
    RareCause rare = new RareCause("a cause");
    RareCause common = new RareCause("another");
    WeightedTally all = new WeightedTally();
    for (int i = 0; i < 1_000; i++) {
      common.addNow(1, true);
      common.endHistory(1, 1);
      all.add(1);
    }
    for (int i = 0; i < 700; i++) {
      rare.addNow(1, i % 2 == 0);
      rare.endHistory(weight, 1);
      all.add(weight);
    }
    all.addHistories(5_000);
    double share = 700 * weight / all.sum();
    // Of those with the cause alone the deviation of the share is by hand as good as share/√700.
    double luck = 3 * share / Math.sqrt(700);
    double unseen = Proportions.upperOfNone((long) all.sum(), .05);
    Estimate of = rare.share(all, .95);
    assertThat(of.value()).isCloseTo(share, within(1e-12));
    assertThat(of.low()).isGreaterThan(share - luck);
    assertThat(of.high()).isGreaterThan(share + (few ? unseen : 0));
    assertThat(of.high()).isLessThan(share + luck + (few ? unseen : 0));
    Estimate others = common.share(all, .95);
    assertThat(others.value()).isCloseTo(1 - share, within(1e-12));
    assertThat(others.low()).isLessThan(1 - share - (few ? unseen : 0));
    assertThat(others.low()).isGreaterThan(1 - share - luck - (few ? unseen : 0));
  }

  /**
   * Half of the losses are by a cause, 50 of them, that weigh little, after another loss: each way
   * its share in a history is a half, so that luck adds nothing, and what it may add after another
   * loss is as if none of it had been seen.
   */
  @ParameterizedTest
  @CsvSource({"0.001, true", "1, false"})
  void laterOnesThatWeighLittleAreFew(double weight, boolean few) {
    RareCause cause = new RareCause("a cause");
    WeightedTally all = new WeightedTally();
    for (int i = 0; i < 150; i++) {
      boolean later = i % 3 == 0;
      cause.addNow(1, !later);
      cause.endHistory(later ? weight : 1, 2);
      all.add(2 * (later ? weight : 1));
    }
    all.addHistories(1_000);
    double unseen = Proportions.upperOfNone((long) (1 / all.largestShare()), .05);
    Estimate share = cause.share(all, .95);
    assertThat(share.high()).isCloseTo(.5 + (few ? unseen : 0), within(1e-9));
  }
}
