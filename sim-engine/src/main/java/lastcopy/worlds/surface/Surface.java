package lastcopy.worlds.surface;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lastcopy.interval.Estimate;

/**
 * How a figure depends on what is not known, and what it is at each point of a grid; also of all
 * replicates but each one, which tells how far anything taken from it is known.
 */
public final class Surface {

  /** Of fewer effective losses, or histories without one, nothing is said. */
  private static final double LEAST_EFFECTIVE = 40;

  /** Nor of fewer worlds than so many for each term of the simplest surface. */
  private static final double WORLDS_A_TERM = 2;

  /** Roughness counts where chance alone would hardly show it. */
  private static final double SURE = 0.999;

  private final Link link;
  private final Observations seen;
  private final double[][] terms;
  private final double[][] gridTerms;
  private final double[] coefficients;
  private final double roughness;

  /** Logarithms of the figure at the grid's points. */
  private final double[] logs;

  private final double[][] logsWithout;
  private final double[][] without;
  private final Grid grid;

  private Surface(Observations seen, Link link, Grid grid, int replicates) {
    this.seen = seen;
    this.link = link;
    this.grid = grid;
    Basis basis = BasisChoice.of(seen, link);
    terms = basis.at(seen.points());
    gridTerms = basis.at(grid.points());
    SurfaceFit fit = new SurfaceFit(seen, terms, link);
    coefficients = fit.coefficients(r -> true);
    without =
        IntStream.range(0, replicates)
            .mapToObj(left -> fit.coefficients(coefficients, r -> r != left))
            .toArray(double[][]::new);
    double[] roughWithout =
        IntStream.range(0, replicates)
            .mapToDouble(left -> fit.roughness(without[left], r -> r != left))
            .toArray();
    double rough = fit.roughness(coefficients, r -> true);
    roughness = Jackknife.of(rough, roughWithout, SURE).low() > 0 ? rough : 0;
    logs = logs(coefficients, roughness);
    logsWithout =
        IntStream.range(0, replicates)
            .mapToObj(left -> logs(without[left], roughness > 0 ? roughWithout[left] : 0))
            .toArray(double[][]::new);
  }

  /**
   * The surface of a figure.
   *
   * @param replicates how many independent sets of worlds there are
   * @return empty where too little was lost, or too little not, or in too few worlds, to say
   *     anything
   */
  public static Optional<Surface> of(Observations seen, Link link, Grid grid, int replicates) {
    boolean many = seen.size() >= WORLDS_A_TERM * (1 + grid.points()[0].length);
    return many && link.telling(seen) >= LEAST_EFFECTIVE
        ? Optional.of(new Surface(seen, link, grid, replicates))
        : Optional.empty();
  }

  private double[] logs(double[] of, double rough) {
    return Arrays.stream(grid.etas(gridTerms, of, Math.max(0, rough))).map(this::log).toArray();
  }

  /**
   * The mean over all worlds, from each replicate: what the surface of the other replicates has for
   * a mean, and what this one's worlds are off by. Unbiased whatever the surface, since it is a
   * control variate that is independent of what it controls (cross-fitted; Oates, Girolami, Chopin,
   * JRSS B 79 (2017) 695-718); the better it fits, the less it matters where worlds fell.
   */
  public double[] calibrated() {
    double[] means = new double[without.length];
    for (int r = 0; r < means.length; r++) {
      means[r] = meanOnGrid(without[r]) + residual(r);
    }
    return means;
  }

  private double meanOnGrid(double[] of) {
    return Arrays.stream(grid.etas(gridTerms, of, 0))
        .map(eta -> link.mean(link.bounded(eta)))
        .average()
        .orElseThrow();
  }

  private double residual(int replicate) {
    double off = 0;
    double histories = 0;
    for (int w = 0; w < terms.length; w++) {
      if (seen.replicates()[w] == replicate) {
        double eta = link.bounded(SurfaceFit.dot(terms[w], without[replicate]));
        off += seen.sums()[w] - seen.histories()[w] * link.mean(eta);
        histories += seen.histories()[w];
      }
    }
    return off / histories;
  }

  private double log(double eta) {
    return StrictMath.log(link.mean(link.bounded(eta)));
  }

  /** The value below which the figure lies in a part of all worlds. */
  public Estimate percentile(double part, double confidence) {
    return exp(each((of, r) -> sortedPercentile(of, part)), confidence);
  }

  /** The part of the variance of the figure's logarithm that each unknown accounts for alone. */
  public Estimate[] shares(double confidence) {
    double[] whole = grid.shares(logs);
    double[][] without = Arrays.stream(logsWithout).map(grid::shares).toArray(double[][]::new);
    Estimate[] shares = new Estimate[whole.length];
    for (int i = 0; i < shares.length; i++) {
      int unknown = i;
      double[] parts = Arrays.stream(without).mapToDouble(w -> w[unknown]).toArray();
      shares[i] = Jackknife.of(whole[i], parts, confidence).within(0, 1);
    }
    return shares;
  }

  /** The share of worlds in which this figure is less than another of the same worlds. */
  public Estimate lessThan(Surface other, double confidence) {
    double[] parts = new double[logsWithout.length];
    Arrays.setAll(parts, r -> below(logsWithout[r], other.logsWithout[r]));
    return Jackknife.of(below(logs, other.logs), parts, confidence).within(0, 1);
  }

  private static double below(double[] a, double[] b) {
    double count = 0;
    for (int j = 0; j < a.length; j++) {
      count += a[j] < b[j] ? 1 : a[j] == b[j] ? 0.5 : 0;
    }
    return count / a.length;
  }

  /** The value below which this figure over another lies in a part of all worlds. */
  public Estimate ratioPercentile(Surface other, double part, double confidence) {
    return exp(
        each(
            (of, r) ->
                sortedPercentile(minus(of, r < 0 ? other.logs : other.logsWithout[r]), part)),
        confidence);
  }

  private static double[] minus(double[] a, double[] b) {
    double[] difference = new double[a.length];
    Arrays.setAll(difference, j -> a[j] - b[j]);
    return difference;
  }

  /** The part of the variance of η over worlds that is not in the surface; 0 where it fits. */
  public double roughPart() {
    double[] smooth = grid.etas(gridTerms, coefficients, 0);
    double mean = Arrays.stream(smooth).average().orElseThrow();
    double variance =
        Arrays.stream(smooth).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
    return roughness > 0 ? roughness / (roughness + variance) : 0;
  }

  /**
   * The percentiles of a chance by an earlier time, of which fewer losses tell: it goes with this
   * one, by a factor and a power that are fitted.
   *
   * @param earlier the same worlds
   * @return all 0 where nothing was lost by then
   */
  public double[] earlier(Observations earlier, double... parts) {
    if (earlier.effective() == 0) {
      return new double[parts.length];
    }
    double middle = link.bounded(coefficients[0]);
    double[][] along = new double[terms.length][];
    Arrays.setAll(along, w -> new double[] {1, SurfaceFit.dot(terms[w], coefficients) - middle});
    double[] line = {link.eta(earlier.mean()) - link.eta(seen.mean()) + middle, 1};
    if (earlier.effective() >= LEAST_EFFECTIVE) {
      line = new SurfaceFit(earlier, along, link).coefficients(line, r -> true);
    }
    double[] at = line;
    double[] etas =
        Arrays.stream(grid.etas(gridTerms, coefficients, roughness))
            .map(eta -> at[0] + Math.max(0, at[1]) * (eta - middle))
            .sorted()
            .toArray();
    return Arrays.stream(parts)
        .map(part -> link.mean(link.bounded(Grid.percentile(etas, part))))
        .toArray();
  }

  /** Something taken from the logarithms of all replicates (numbered −1), or of all but one. */
  private interface Taken {
    double from(double[] logs, int without);
  }

  private double[] each(Taken taken) {
    IntToDoubleFunction of = r -> taken.from(r < 0 ? logs : logsWithout[r], r);
    return IntStream.range(-1, logsWithout.length).mapToDouble(of).toArray();
  }

  private static Estimate exp(double[] each, double confidence) {
    double[] without = Arrays.copyOfRange(each, 1, each.length);
    Estimate log = Jackknife.of(each[0], without, confidence);
    return new Estimate(
        StrictMath.exp(log.value()), StrictMath.exp(log.low()), StrictMath.exp(log.high()), true);
  }

  private static double sortedPercentile(double[] logs, double part) {
    double[] sorted = logs.clone();
    Arrays.sort(sorted);
    return Grid.percentile(sorted, part);
  }
}
