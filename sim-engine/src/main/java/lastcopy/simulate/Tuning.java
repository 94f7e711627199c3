package lastcopy.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.history.Bias;

/**
 * Finds the factors by which hazards are best multiplied, by the cross-entropy method (de Boer,
 * Kroese, Mannor, Rubinstein, Annals of Operations Research 134 (2005) 19-67; for repairable
 * systems: Ridder, Annals of Operations Research 134 (2005) 119-136).
 *
 * <p>It starts from a balanced bias: depth by depth, about one event falls at each depth that a
 * history comes to, half of it by the groups' own hazards and half shared evenly among them, so
 * that a rare shock common to all copies is not starved (balanced failure biasing: Shahabuddin,
 * Management Science 40 (1994) 333-352). Then, over histories with a loss, each weighted with what
 * it adds to a figure, the best factor of a group at a depth is the weighted number of its events
 * over their weighted hazard. One bias is tuned to the chance of any loss, one to bytes, one to the
 * loss of everything: where they come from different causes, one alone would starve the others. The
 * balanced bias keeps a share, so that what tuning has not seen keeps a bounded weight (defensive
 * mixture: Hesterberg, Technometrics 37 (1995) 185-194).
 */
final class Tuning {

  private static final int BALANCING = 256;
  private static final int BATCH = 1_000;
  private static final int MOST_BATCHES = 10;
  private static final int ROUNDS = 4;

  /** Effective losses after which a round ends. */
  private static final double ENOUGH = 150;

  private static final double SMOOTHING = 0.8;

  /** Visits of a depth that outweigh half of what was known before. */
  private static final double DOUBT = 10;

  private static final double LARGEST_FACTOR = 1e30;

  /** Shares of the histories: balanced, tuned to any loss, to bytes, to everything. */
  private static final double[] SHARES = {0.2, 0.4, 0.2, 0.2};

  /**
   * The least divergence that cross entropy finds is not the least variance: where a visit of a
   * depth ends after exponential time of rate μ, it gives a hazard of μ, at which the variance is
   * infinite; the best is μ/2. So factors beyond depth 0 are lowered, to either side of that.
   */
  private static final double[] LOWERED = {0.35, 0.75};

  /**
   * The part tuned to any loss and lowered least: its losses are most like those without a bias.
   */
  static final int LIKE_A_LOSS = LOWERED.length;

  /** No factor falls below this part of the balanced one. */
  private static final double FLOOR = 0.02;

  private final Biasable histories;
  private final int groups;
  private final int depths;
  private long next;

  private Tuning(Biasable histories) {
    this.histories = histories;
    groups = histories.groups();
    depths = histories.depths();
  }

  /**
   * What tuning found.
   *
   * @param mixture under which to count
   * @param anyVariance relative variance of one history for the chance of any loss
   * @param bytesVariance the same for bytes
   */
  record Tuned(Mixture mixture, double anyVariance, double bytesVariance) {}

  /**
   * Tunes.
   *
   * @param histories under a seed of its own, apart from those that count
   * @return empty if no biased history lost anything
   */
  static Optional<Tuned> of(Biasable histories) {
    return new Tuning(histories).tune();
  }

  private Optional<Tuned> tune() {
    double[][] balanced = balanced();
    double[][] forAny = balanced;
    double[][] forBytes = balanced;
    double[][] forEverything = balanced;
    for (int round = 0; round < ROUNDS; round++) {
      TuningRound seen = round(mixture(balanced, forAny, forBytes, forEverything));
      if (seen.any.nonZero() == 0) {
        return Optional.empty();
      }
      forAny = improved(forAny, balanced, seen.forAny);
      forBytes = improved(forBytes, balanced, seen.forBytes);
      forEverything = improved(forEverything, balanced, seen.forEverything);
    }
    Mixture mixture = mixture(balanced, forAny, forBytes, forEverything);
    TuningRound last = round(mixture);
    return last.any.nonZero() == 0
        ? Optional.empty()
        : Optional.of(
            new Tuned(mixture, last.any.relativeVariance(), last.bytes.relativeVariance()));
  }

  private TuningRound round(Mixture mixture) {
    TuningRound round = new TuningRound(groups, depths);
    for (int batch = 0; batch < MOST_BATCHES && !enough(round, batch); batch++) {
      round.simulate(histories, mixture, next, BATCH);
      next += BATCH;
    }
    return round;
  }

  private static boolean enough(TuningRound round, int batches) {
    boolean everything = round.everything.effective() >= ENOUGH / 3 || batches >= MOST_BATCHES / 3;
    return round.any.effective() >= ENOUGH && everything;
  }

  /** By share of the histories: balanced, and tuned to any loss, to bytes, to everything. */
  private static Mixture mixture(double[][]... factors) {
    List<Mixture.Part> parts = new ArrayList<>();
    parts.add(new Mixture.Part(SHARES[0], factors[0]));
    for (int i = 1; i < SHARES.length; i++) {
      for (double by : LOWERED) {
        parts.add(new Mixture.Part(SHARES[i] / LOWERED.length, lowered(factors[i], by)));
      }
    }
    return new Mixture(parts);
  }

  private static double[][] lowered(double[][] factors, double by) {
    double[][] lower = new double[factors.length][];
    for (int g = 0; g < lower.length; g++) {
      lower[g] = factors[g].clone();
      for (int d = 1; d < lower[g].length; d++) {
        lower[g][d] = Math.max(1, by * lower[g][d]);
      }
    }
    return lower;
  }

  /** About one event at each depth; the deeper is measured once the shallower is biased. */
  private double[][] balanced() {
    double[][] factors = new double[groups][depths];
    for (double[] row : factors) {
      java.util.Arrays.fill(row, 1);
    }
    for (int depth = 0; depth < depths; depth++) {
      double[] hazard = hazardOfVisit(factors, depth);
      double sum = 0;
      int quiet = 0;
      for (double h : hazard) {
        sum += h < 1 ? h : 0;
        quiet += h > 0 && h < 1 ? 1 : 0;
      }
      for (int g = 0; g < groups; g++) {
        double factor = hazard[g] > 0 ? 0.5 / sum + 0.5 / (quiet * hazard[g]) : 1;
        boolean busy = hazard[g] >= 1;
        // A depth that no history came to is taken like the one before it.
        double otherwise = depth == 0 || sum > 0 ? 1 : factors[g][depth - 1];
        factors[g][depth] =
            sum > 0 && !busy ? Math.max(1, Math.min(LARGEST_FACTOR, factor)) : otherwise;
      }
    }
    return factors;
  }

  /** Mean hazard of each group over the time that a history which comes to a depth spends there. */
  private double[] hazardOfVisit(double[][] factors, int depth) {
    double[] hazard = new double[groups];
    int visits = 0;
    Bias bias = Bias.of(factors);
    LossLedger unheard = new TuningRound(groups, depths);
    for (int i = 0; i < BALANCING; i++) {
      histories.simulate(next++, bias, unheard);
      double all = 0;
      for (int g = 0; g < groups; g++) {
        hazard[g] += histories.hazard(g, depth);
        all += histories.hazard(g, depth);
      }
      visits += all > 0 ? 1 : 0;
    }
    for (int g = 0; g < groups; g++) {
      hazard[g] /= Math.max(1, visits);
    }
    return hazard;
  }

  private double[][] improved(
      double[][] factors, double[][] balanced, TuningRound.Evidence evidence) {
    double[][] better = new double[groups][depths];
    for (int d = 0; d < depths; d++) {
      double visits = evidence.visits[d].effective();
      double trust = SMOOTHING * visits / (visits + DOUBT);
      for (int g = 0; g < groups; g++) {
        double least = Math.max(1, FLOOR * balanced[g][d]);
        double best = evidence.hazard[g][d] > 0 ? evidence.events[g][d] / evidence.hazard[g][d] : 1;
        double log =
            (1 - trust) * StrictMath.log(factors[g][d])
                + trust * StrictMath.log(Math.max(least, Math.min(LARGEST_FACTOR, best)));
        better[g][d] = Math.max(least, StrictMath.exp(log));
      }
    }
    return better;
  }
}
