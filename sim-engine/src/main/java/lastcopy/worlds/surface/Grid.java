package lastcopy.worlds.surface;

import java.util.Arrays;

/** Many points of the standard normal law, evenly spread, at which surfaces are looked at. */
public final class Grid {

  private final double[][] points;

  /** More deviates than a point has: one, for what no surface says. */
  private final double[] rough;

  /**
   * A grid.
   *
   * @param points each with as many standard normal deviates as there are unknowns, and one more
   */
  public Grid(double[][] points) {
    int deviates = points[0].length - 1;
    this.points =
        Arrays.stream(points).map(p -> Arrays.copyOf(p, deviates)).toArray(double[][]::new);
    rough = Arrays.stream(points).mapToDouble(p -> p[deviates]).toArray();
  }

  double[][] points() {
    return points;
  }

  /** What a surface is at each point; with its roughness as noise of its own. */
  double[] etas(double[][] terms, double[] coefficients, double roughness) {
    double deviation = Math.sqrt(roughness);
    double[] etas = new double[terms.length];
    for (int j = 0; j < etas.length; j++) {
      etas[j] = SurfaceFit.dot(terms[j], coefficients) + deviation * rough[j];
    }
    return etas;
  }

  /** The value below which a part of the values lies, between neighbours in proportion. */
  static double percentile(double[] sorted, double part) {
    double at = part * sorted.length - 0.5;
    int below = (int) Math.max(0, Math.min(sorted.length - 2.0, Math.floor(at)));
    double over = Math.max(0, Math.min(1, at - below));
    return sorted[below] + over * (sorted[below + 1] - sorted[below]);
  }

  /**
   * The part of the variance of some values that each deviate accounts for by itself: its
   * polynomials' squared coefficients (Sudret, Reliability Engineering and System Safety 93 (2008)
   * 964-979; first-order indices of Sobol, 1993).
   */
  double[] shares(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    double variance =
        Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
    double[] shares = new double[points[0].length];
    if (!(variance > 0)) {
      return shares; // all worlds are alike: nothing is there to be accounted for
    }
    for (int i = 0; i < shares.length; i++) {
      for (int degree = 1; degree <= 4; degree++) {
        double sum = 0;
        for (int j = 0; j < values.length; j++) {
          sum += (values[j] - mean) * Basis.hermite(degree, points[j][i]);
        }
        shares[i] += sum / values.length * (sum / values.length) / variance;
      }
    }
    return shares;
  }
}
