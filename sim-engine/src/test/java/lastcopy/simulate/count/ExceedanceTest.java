package lastcopy.simulate.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.LayoutResult.Point;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.interval.Estimate;
import lastcopy.interval.WeightedTally;
import lastcopy.law.Exponential;
import lastcopy.law.Fixed;
import lastcopy.scenario.Studio;
import lastcopy.simulate.CopyMaker;
import lastcopy.simulate.Simulation;
import lastcopy.simulate.Studios;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Rows of exceedance against counts by hand of the very same amounts; nothing is left to chance.
 */
class ExceedanceTest {

  private static final double[] ROWS = {1, 20, 50, 1_000};
  private static final double STEP = 1.0011; // amounts of one cell, and what sets its sides apart

  /** Even on a logarithmic scale, two shoots that many lose, and a few giants. */
  private static double[] amounts(int count) {
    UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(7);
    double[] all = new double[count];
    for (int i = 0; i < count; i++) {
      double u = random.nextDouble();
      all[i] = u < 0.3 ? 20 : u < 0.5 ? 37.5 * (1 + 1e-13) : Math.pow(1_000, random.nextDouble());
    }
    return all;
  }

  private static List<Point> points(double[] amounts, DoubleUnaryOperator weight, int chunks) {
    Exceedance all = new Exceedance(ROWS, 1);
    double any = 0;
    for (int c = 0; c < chunks; c++) {
      Exceedance chunk = new Exceedance(ROWS, 1);
      for (int i = c * amounts.length / chunks; i < (c + 1) * amounts.length / chunks; i++) {
        chunk.add(amounts[i], 0, weight.applyAsDouble(amounts[i]));
        any += weight.applyAsDouble(amounts[i]);
      }
      chunk.addHistories(0, 2L * amounts.length / chunks);
      all.merge(chunk);
    }
    return all.points(any, (at, reached, later) -> exact(reached));
  }

  private static Estimate exact(WeightedTally reached) {
    return Estimate.exact(reached.mean());
  }

  /** Red if a cell is counted on the wrong side of a row. */
  @ParameterizedTest
  @ValueSource(ints = {1, 7})
  void everyRowIsWhatACountByHandSays(int chunks) {
    double[] amounts = amounts(7_000);
    for (Point point : points(amounts, x -> 1, chunks)) {
      long reached = Arrays.stream(amounts).filter(x -> x * (1 + 1e-9) >= point.at()).count();
      assertThat(point.chance().value()).as("at %s", point.at()).isEqualTo(reached / 14_000.0);
    }
  }

  @Test
  void theGivenRowsAreThere() {
    assertThat(points(amounts(5_000), x -> 1, 1).stream().mapToDouble(Point::at).toArray())
        .contains(ROWS)
        .isSorted();
  }

  /** Red if no row is added, or the far side of a step is left out. */
  @Test
  void neighboursDifferByAFiftiethOrAreTheSidesOfAStep() {
    List<Point> plain = points(amounts(20_000), x -> 1, 4);
    neighbours(plain, 0.5);
    assertThat(plain).hasSizeBetween(29, 60); // half of the losses are spread, 25 times a fiftieth
    neighbours(points(amounts(20_000), x -> 1 / x, 4), weighted(amounts(20_000)));
  }

  /** A step with nothing lost below it since the last row. Red if its near side is left out. */
  @Test
  void aStepAfterAFlatHasBothSides() {
    double[] amounts = new double[100];
    Arrays.setAll(amounts, i -> i < 60 ? 8 : 30);
    List<Point> points = points(amounts, x -> 1, 1);
    assertThat(points)
        .anySatisfy(
            near -> {
              assertThat(near.at()).isEqualTo(8);
              assertThat(near.chance().value()).isEqualTo(0.5);
            })
        .anySatisfy(
            far -> {
              assertThat(far.at()).isBetween(8.0, 8 * STEP);
              assertThat(far.chance().value()).isEqualTo(0.2);
            });
  }

  /** What each history lost, and by its first loss alone; each weighs 2. */
  private static Exceedance of(double[]... lossAndFirst) {
    Exceedance all = new Exceedance(ROWS, 1);
    for (double[] each : lossAndFirst) {
      all.add(each[0], each[1], 0, 2);
    }
    all.addHistories(0, 10);
    return all;
  }

  /** By row, how many reached it, and how many of them not by their first loss alone. */
  private static List<String> counts(Exceedance of) {
    List<String> told = new ArrayList<>();
    of.points(
        10,
        (at, reached, later) -> {
          told.add(Math.round(at) + ": " + reached.nonZero() + ", " + later.histories());
          assertThat(later.weight()).isEqualTo(2. * (double) later.histories());
          return exact(reached);
        });
    return told;
  }

  private static final double[][] OF_FIVE = {{30, 30}, {60, 10}, {60, 60}, {7, 2}, {40, 25}};

  /** From the largest on; a row on either side of each amount, which are steps of a fifth. */
  private static final String[] FIVE_BY_HAND = {
    "1000: 0, 0",
    "60: 0, 0",
    "60: 2, 1",
    "50: 2, 1",
    "40: 2, 1",
    "40: 3, 2",
    "30: 3, 2",
    "30: 4, 2",
    "20: 4, 1",
    "7: 4, 0",
    "7: 5, 1",
    "1: 5, 0"
  };

  @Test
  void whatWasReachedOnlyByLaterLossesIsCounted() {
    assertThat(counts(of(OF_FIVE))).containsExactly(FIVE_BY_HAND);
  }

  /** What is there before chunks come, and of chunks that were merged before, counts alike. */
  @Test
  void chunksOfChunksAreTheWhole() {
    Exceedance once = of(OF_FIVE[0], OF_FIVE[1]);
    once.merge(of(OF_FIVE[2]));
    Exceedance all = of(OF_FIVE[4]);
    all.merge(once);
    all.merge(of(OF_FIVE[3]));
    assertThat(counts(all)).containsExactly(FIVE_BY_HAND);
    assertThat(all.from(0).histories()).isEqualTo(40);
  }

  /** Ten digits of 37.5, at which a cell begins. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1 - 1e-13, 1 + 1e-13, 1 - 1e-10, 1 + 3e-10})
  void amountsThatAgreeToTenDigitsAreTheSame(double nearly) {
    Exceedance all = of(new double[] {37.5, 0}, new double[] {37.5 * (1 - 1e-13), 0});
    assertThat(all.from(37.5 * nearly).nonZero()).isEqualTo(2);
    assertThat(all.from(37.6).nonZero()).isZero();
  }

  private static double weighted(double[] amounts) {
    return Arrays.stream(amounts).map(x -> 1 / x).sum() / (2.0 * amounts.length);
  }

  private static void neighbours(List<Point> points, double any) {
    for (int i = 1; i < points.size(); i++) {
      double fall = points.get(i - 1).chance().value() - points.get(i).chance().value();
      boolean step = points.get(i).at() <= points.get(i - 1).at() * STEP;
      assertThat(fall <= 0.02 * any || step).as("%s", points.subList(i - 1, i + 1)).isTrue();
    }
  }

  /** The same of a whole simulation, plain and biased, in bytes and in shoots. */
  @ParameterizedTest
  @ValueSource(strings = {"PLAIN", "RARE"})
  void neighboursOfASimulation(String method) {
    Studio studio =
        Studios.of(
            26_280,
            Studios.shooting(1e12, 168, 5e10, 0.2),
            Studios.layout(
                "two",
                CopyMaker.single("main", new Exponential(30_000)).arrival(new Fixed(72)),
                CopyMaker.single("far", new Exponential(30_000))
                    .arrival(new Fixed(400))
                    .nightly("main", 2, 2.5e6)));
    Settings settings =
        new Settings(
            1,
            0.95,
            0.01,
            java.util.OptionalLong.of(20_000),
            java.util.Optional.empty(),
            2,
            Method.valueOf(method));
    LayoutResult result = Simulation.run(studio, settings, Progress.SILENT).layouts().get(0);
    neighbours(result.exceedanceBytes(), result.anyLoss().value());
    neighbours(result.exceedanceShoots(), result.anyLoss().value());
    assertThat(result.exceedanceBytes().size()).isBetween(50, 200);
    assertThat(result.exceedanceShoots().size()).isBetween(20, 150);
  }
}
