package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import lastcopy.exact.RepairablePair;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.LayoutResult;
import lastcopy.experiment.Progress;
import lastcopy.interval.Estimate;
import lastcopy.law.Exponential;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Footage;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the engine's 95 % intervals hold the exact answer, over many seeds.
 *
 * <p>Null hypothesis: each covers with at least 95 %. Of 100 seeds at least 83 must cover (a true
 * 95 % falls below with 6e-6), of 1,000 at least 914 (1e-6): intervals that cover 75 % or 88 % turn
 * it red. Exact answers: the two-state chain of a repairable pair, and for a single drive of mean
 * life L that is replaced at once, that each failure loses all that was shot since the one before:
 * expected bytes are a sum over shoots of the chance of a failure between offload and horizon.
 */
class EngineCoverageTest {

  private static final double LIFE = 4_000;
  private static final double REPAIR = 200;
  private static final double HOURS = 8_760;
  private static final double EVERY = 168;
  private static final double SIZE = Units.TB;

  private final Footage footage = Studios.shooting(SIZE, EVERY, SIZE, 0);
  private final Studio studio =
      Studios.of(
          HOURS,
          footage,
          Studios.layout("one", CopyMaker.single("main", new Exponential(LIFE))),
          Studios.layout("pair", CopyMaker.markov("main", Arrangement.MIRROR, 2, LIFE, REPAIR)));

  @Test
  void hundredSeeds() {
    covers(100, 83);
  }

  @Test
  @Tag("slow")
  void thousandSeeds() {
    covers(1_000, 914);
  }

  private void covers(int seeds, int least) {
    double pair = new RepairablePair(1 / LIFE, 1 / REPAIR).lossBy(HOURS);
    double halfYear = new RepairablePair(1 / LIFE, 1 / REPAIR).lossBy(HOURS / 2);
    double one = singleLoses();
    int[] covered = new int[5];
    for (int seed = 0; seed < seeds; seed++) {
      Comparison result =
          Simulation.run(studio, Agreement.settings(seed, .95, 2_000, 2), Progress.SILENT);
      LayoutResult single = result.layouts().get(0);
      LayoutResult mirror = result.layouts().get(1);
      Comparison.Pair both = result.pairs().get(0);
      covered[0] += holds(single.anyLoss(), one);
      covered[1] += holds(single.bytesLost(), expectedBytes());
      covered[2] += holds(mirror.anyLoss(), pair);
      covered[3] += holds(mirror.curve().get(1).chance(), halfYear);
      double ratio = one / pair;
      boolean held =
          both.ratioLow().getAsDouble() <= ratio && ratio <= both.ratioHigh().getAsDouble();
      covered[4] += held ? 1 : 0;
    }
    for (int count : covered) {
      assertThat(count).as("seeds that cover").isBetween(least, seeds);
    }
  }

  private static int holds(Estimate estimate, double exact) {
    return estimate.low() <= exact && exact <= estimate.high() ? 1 : 0;
  }

  /** Any failure loses at least what was on hand. */
  private static double singleLoses() {
    return 1 - Math.exp(-HOURS / LIFE);
  }

  /**
   * What is on hand, and each shoot, is lost if the drive fails between its offload and the
   * horizon.
   */
  private static double expectedBytes() {
    double sum = SIZE * singleLoses();
    for (double t = EVERY; t <= HOURS; t += EVERY) {
      sum += SIZE * (1 - Math.exp(-(HOURS - t) / LIFE));
    }
    return sum;
  }
}
