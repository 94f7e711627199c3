package lastcopy.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The survival curve without a law, where failures were found at checks: the most likely curve of
 * any (Turnbull, JRSS B 38, 1976; with late entries as Frydman, JRSS B 56, 1994, corrects it). It
 * falls only between the ends of innermost intervals, and where within one the records do not say.
 *
 * <p>Found by self-consistency, an EM step, extrapolated (Varadhan, Roland, Scandinavian Journal of
 * Statistics 35, 2008) where that is better.
 */
final class Turnbull {

  private static final int MOST_ROUNDS = 5_000;

  /** By so much a round may still change any share. */
  private static final double SETTLED = 1e-10;

  /** Less than this is none of the mass. */
  private static final double NOTHING = 1e-9;

  /** Kinds of ends, in their order at one age. */
  private static final int CLOSED_LOWER = 0;

  private static final int UPPER = 1;
  private static final int OPEN_LOWER = 2;

  private final List<Records.Alike> lives;
  private final double records;

  /** Innermost intervals, by age; the last may have no upper end. */
  private final List<double[]> cells;

  /** Of each life the first and the last cell in which it may have ended, and its entry's first. */
  private final int[] first;

  private final int[] last;
  private final int[] entered;

  private Turnbull(Records lives) {
    this.lives = lives.distinct();
    this.records = lives.records();
    this.cells = cells(this.lives);
    int n = this.lives.size();
    first = new int[n];
    last = new int[n];
    entered = new int[n];
    for (int i = 0; i < n; i++) {
      LifeRecord life = this.lives.get(i).life();
      boolean exact = life.failed() && !life.between();
      first[i] = exact ? startingAt(life.exit(), true) : startingAt(life.lastSeen(), false);
      last[i] = life.failed() ? endingBy(life.exit()) : cells.size() - 1;
      entered[i] = startingAt(life.entry(), false);
    }
  }

  /** The steps, by age. */
  static List<Step> of(Records lives) {
    Turnbull curve = new Turnbull(lives);
    return curve.steps(curve.settled());
  }

  /**
   * Each greatest lower end with the least upper end after it: lower ends are where drives were
   * last seen running (a known age is both of its ends), upper ends where they were found failed or
   * where records begin. At one age, lower ends of open intervals come after upper ends.
   */
  private static List<double[]> cells(List<Records.Alike> lives) {
    Map<Double, boolean[]> ends = new TreeMap<>();
    for (Records.Alike alike : lives) {
      LifeRecord life = alike.life();
      boolean exact = life.failed() && !life.between();
      mark(ends, life.lastSeen(), exact ? CLOSED_LOWER : OPEN_LOWER);
      if (life.failed()) {
        mark(ends, life.exit(), UPPER);
      }
      mark(ends, life.entry(), UPPER);
    }
    mark(ends, Double.POSITIVE_INFINITY, UPPER);
    List<double[]> cells = new ArrayList<>();
    double lower = 0;
    boolean open = false;
    for (var end : ends.entrySet()) {
      double age = end.getKey();
      boolean[] kinds = end.getValue();
      if (kinds[CLOSED_LOWER]) {
        lower = age;
        open = true;
      }
      if (kinds[UPPER] && open) {
        cells.add(new double[] {lower, age});
        open = false;
      }
      if (kinds[OPEN_LOWER]) {
        lower = age;
        open = true;
      }
    }
    return cells;
  }

  private static void mark(Map<Double, boolean[]> ends, double age, int kind) {
    ends.computeIfAbsent(age, a -> new boolean[3])[kind] = true;
  }

  /** The first cell that begins at an age or later; a closed one may be a single age. */
  private int startingAt(double age, boolean exact) {
    int low = 0;
    int high = cells.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      double[] cell = cells.get(middle);
      boolean point = cell[0] == cell[1];
      boolean inside = cell[0] > age || (cell[0] == age && (exact || !point));
      if (inside) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The last cell that ends at an age or before. */
  private int endingBy(double age) {
    int low = -1;
    int high = cells.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (cells.get(middle)[1] <= age) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private double[] settled() {
    double[] p = new double[cells.size()];
    Arrays.fill(p, 1.0 / p.length);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] once = improved(p);
      double[] twice = improved(once);
      double[] jump = extrapolated(p, once, twice);
      double change = 0;
      for (int j = 0; j < p.length; j++) {
        change = Math.max(change, Math.abs(twice[j] - once[j]));
      }
      p = logLikelihood(jump) >= logLikelihood(twice) ? jump : twice;
      if (change < SETTLED) {
        return p;
      }
    }
    return p;
  }

  /** One step of self-consistency: where each life, and those that no record shows, ended. */
  private double[] improved(double... p) {
    double[] sums = cumulated(p);
    double[] weight = new double[p.length + 1];
    for (int i = 0; i < lives.size(); i++) {
      double count = lives.get(i).count();
      double inside = count / (sums[last[i] + 1] - sums[first[i]]);
      weight[first[i]] += inside;
      weight[last[i] + 1] -= inside;
      double unseen = count / (1 - sums[entered[i]]);
      weight[0] += unseen;
      weight[entered[i]] -= unseen;
    }
    double[] next = new double[p.length];
    double at = 0;
    double total = 0;
    for (int j = 0; j < p.length; j++) {
      at += weight[j];
      next[j] = p[j] * Math.max(0, at);
      total += next[j];
    }
    for (int j = 0; j < p.length; j++) {
      next[j] /= total;
    }
    return next;
  }

  private static double[] extrapolated(double[] p, double[] once, double[] twice) {
    double r = 0;
    double v = 0;
    for (int j = 0; j < p.length; j++) {
      double change = once[j] - p[j];
      double bend = twice[j] - once[j] - change;
      r += change * change;
      v += bend * bend;
    }
    double length = v == 0 ? 1 : Math.max(1, StrictMath.sqrt(r / v));
    double[] jump = new double[p.length];
    double total = 0;
    for (int j = 0; j < p.length; j++) {
      double change = once[j] - p[j];
      double bend = twice[j] - once[j] - change;
      jump[j] = Math.max(0, p[j] + 2 * length * change + length * length * bend);
      total += jump[j];
    }
    for (int j = 0; j < p.length; j++) {
      jump[j] /= total;
    }
    return jump;
  }

  private double logLikelihood(double... p) {
    double[] sums = cumulated(p);
    double log = 0;
    for (int i = 0; i < lives.size(); i++) {
      double inside = sums[last[i] + 1] - sums[first[i]];
      double seen = 1 - sums[entered[i]];
      log += lives.get(i).count() * (StrictMath.log(inside) - StrictMath.log(seen));
    }
    return Double.isNaN(log) ? Double.NEGATIVE_INFINITY : log;
  }

  private static double[] cumulated(double... p) {
    double[] sums = new double[p.length + 1];
    for (int j = 0; j < p.length; j++) {
      sums[j + 1] = sums[j] + p[j];
    }
    return sums;
  }

  private List<Step> steps(double... p) {
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    for (int j = 0; j < p.length; j++) {
      double[] cell = cells.get(j);
      if (p[j] > NOTHING && Double.isFinite(cell[1])) {
        survival -= p[j];
        steps.add(
            Step.between(
                cell[0],
                cell[1],
                atRisk(cell[1]),
                records * p[j],
                survival > NOTHING ? survival : 0));
      }
    }
    return steps;
  }

  /** Drives whose records had begun, and that were not yet known to have failed. */
  private double atRisk(double age) {
    double n = 0;
    for (Records.Alike alike : lives) {
      LifeRecord life = alike.life();
      n += life.entry() < age && life.exit() >= age ? alike.count() : 0;
    }
    return n;
  }
}
