package lastcopy.simulate.rare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Silent;
import lastcopy.parallel.OrderedChunks;
import lastcopy.parallel.Workers;

/**
 * Finds the factors by which hazards are best multiplied, by the cross-entropy method (de Boer,
 * Kroese, Mannor, Rubinstein, Annals of Operations Research 134 (2005) 19-67; for repairable
 * systems: Ridder, Annals of Operations Research 134 (2005) 119-136).
 *
 * <p>It starts from a balanced bias: depth by depth, about one event falls at each level that a
 * history comes to, half of it by the groups' own hazards and half shared evenly among them, so
 * that a rare shock common to all copies is not starved (balanced failure biasing: Shahabuddin,
 * Management Science 40 (1994) 333-352). Then, over histories with a loss, each weighted with what
 * it adds to a figure, the best factor of a group at a level is the weighted number of its events
 * over their weighted hazard. One bias is tuned to the chance of any loss, one to bytes, one to the
 * loss of everything: where they come from different causes, one alone would starve the others. The
 * balanced bias keeps a share, so that what tuning has not seen keeps a bounded weight (defensive
 * mixture: Hesterberg, Technometrics 37 (1995) 185-194).
 */
public final class Tuning {

  private static final int BALANCING = 32;
  private static final int BALANCINGS = 8;
  private static final int BATCH = 1_000;
  private static final int MOST_BATCHES = 10;
  private static final int ROUNDS = 4;

  /** Effective losses after which a round ends. */
  private static final double ENOUGH = 150;

  private static final double SMOOTHING = 0.8;

  /** Visits of a level that outweigh half of what was known before. */
  private static final double DOUBT = 10;

  /** Beyond it events would follow each other faster than hours in double precision tell apart. */
  private static final double LARGEST_FACTOR = 1e12;

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
  public static final int LIKE_A_LOSS = LOWERED.length;

  /** No factor falls below this part of the balanced one. */
  private static final double FLOOR = 0.02;

  private final Workers<Biasable> workers;
  private final Biasable shape;
  private final int groups;
  private final int levels;
  private long next;

  private Tuning(Workers<Biasable> workers) {
    this.workers = workers;
    shape = workers.one();
    groups = shape.groups();
    levels = shape.levels();
  }

  /**
   * What tuning found.
   *
   * @param mixture under which to count
   * @param anyVariance relative variance of one history for the chance of any loss
   * @param bytesVariance the same for bytes
   * @param plainAnyVariance that of a plain history, for the chance of any loss
   * @param plainBytesVariance the same for bytes
   */
  public record Tuned(
      Mixture mixture,
      double anyVariance,
      double bytesVariance,
      double plainAnyVariance,
      double plainBytesVariance) {}

  /**
   * Tunes.
   *
   * @param workers simulate histories under a seed of their own, apart from those that count
   * @return empty if no biased history lost anything, or if it was given up
   */
  public static Optional<Tuned> of(Workers<Biasable> workers) {
    return new Tuning(workers).tune();
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
            new Tuned(
                mixture,
                last.any.relativeVariance(),
                last.bytes.relativeVariance(),
                1 / last.any.mean() - 1,
                last.plainBytesVariance()));
  }

  private TuningRound round(Mixture mixture) {
    TuningRound round = new TuningRound(groups, levels);
    boolean finished =
        merge(
            BATCH,
            MOST_BATCHES,
            (histories, first, count) ->
                new TuningRound(groups, levels).simulate(histories, mixture, first, count),
            round::merge,
            batches -> enough(round, batches));
    return finished ? round : new TuningRound(groups, levels); // as if nothing had been lost
  }

  /**
   * Simulates batches and merges them in their order.
   *
   * @param enough told how many were merged
   * @return false if it was given up
   */
  private <T> boolean merge(
      int size, int most, Workers.Task<Biasable, T> task, Consumer<T> into, IntPredicate enough) {
    OrderedChunks<T> batches = workers.chunks(next, size, (long) most * size, task);
    for (int merged = 0; merged < most && !enough.test(merged); merged++) {
      Optional<T> seen = workers.giveUp() ? Optional.empty() : batches.next(workers::giveUp);
      if (seen.isEmpty()) {
        return false;
      }
      into.accept(seen.get());
    }
    batches.drop();
    next += batches.handedOut();
    return true;
  }

  private static boolean enough(TuningRound round, int batches) {
    boolean everything = round.everything.effective() >= ENOUGH / 3 || batches >= MOST_BATCHES / 3;
    return round.any.effective() >= ENOUGH && everything;
  }

  /** By share of the histories: balanced, and tuned to any loss, to bytes, to everything. */
  private Mixture mixture(double[][]... factors) {
    List<Mixture.Part> parts = new ArrayList<>();
    parts.add(new Mixture.Part(SHARES[0], factors[0]));
    for (int i = 1; i < SHARES.length; i++) {
      for (double by : LOWERED) {
        parts.add(new Mixture.Part(SHARES[i] / LOWERED.length, lowered(factors[i], by)));
      }
    }
    return new Mixture(parts);
  }

  private double[][] lowered(double[][] factors, double by) {
    double[][] lower = new double[groups][];
    for (int g = 0; g < groups; g++) {
      lower[g] = factors[g].clone();
      for (int v = 0; v < levels; v++) {
        lower[g][v] = shape.depth(v) == 0 ? lower[g][v] : Math.max(1, by * lower[g][v]);
      }
    }
    return lower;
  }

  /** About one event at each level; the deeper are measured once the shallower are biased. */
  private double[][] balanced() {
    double[][] factors = new double[groups][levels];
    for (double[] row : factors) {
      Arrays.fill(row, 1);
    }
    for (int depth = 0; depth <= shape.depth(levels - 1); depth++) {
      Evidence visits = visits(factors);
      for (int v = 0; v < levels; v++) {
        if (shape.depth(v) == depth) {
          balance(factors, visits, v);
        }
      }
    }
    return factors;
  }

  private void balance(double[][] factors, Evidence visits, int level) {
    double sum = 0;
    int quiet = 0;
    for (int g = 0; g < groups; g++) {
      double h = visits.hazardOfVisit(g, level);
      sum += h < 1 ? h : 0;
      quiet += h > 0 && h < 1 ? 1 : 0;
    }
    // A level that no history came to is taken like the one a depth before it.
    int before = shape.depth(level) == 0 || sum > 0 ? -1 : level - 1;
    for (int g = 0; g < groups; g++) {
      double h = visits.hazardOfVisit(g, level);
      double factor = h > 0 ? 0.5 / sum + 0.5 / (quiet * h) : 1;
      double otherwise = before < 0 ? 1 : factors[g][before];
      factors[g][level] = sum > 0 && h < 1 ? Math.max(1, Math.min(most(g), factor)) : otherwise;
    }
  }

  private double most(int group) {
    return Math.min(LARGEST_FACTOR, shape.mostFactor(group));
  }

  private Evidence visits(double[][] factors) {
    Evidence all = new Evidence(groups, levels);
    Bias bias = Bias.of(factors);
    merge(
        BALANCING,
        BALANCINGS,
        (histories, first, count) -> visits(histories, bias, first, count),
        all::merge,
        batches -> false);
    return all;
  }

  private Evidence visits(Biasable histories, Bias bias, long first, int count) {
    Evidence seen = new Evidence(groups, levels);
    for (long number = first; number < first + count; number++) {
      histories.simulate(number, bias, Silent.LEDGER);
      seen.add(1, histories);
    }
    return seen;
  }

  private double[][] improved(double[][] factors, double[][] balanced, Evidence evidence) {
    double[][] better = new double[groups][levels];
    for (int v = 0; v < levels; v++) {
      double visits = evidence.visits(v);
      double trust = SMOOTHING * visits / (visits + DOUBT);
      for (int g = 0; g < groups; g++) {
        double least = Math.max(1, FLOOR * balanced[g][v]);
        double best = evidence.bestFactor(g, v);
        double log =
            (1 - trust) * StrictMath.log(factors[g][v])
                + trust * StrictMath.log(Math.max(least, Math.min(most(g), best)));
        better[g][v] = Math.max(least, StrictMath.exp(log));
      }
    }
    return better;
  }
}
