package lastcopy.worlds.surface;

import java.util.function.IntPredicate;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;

/**
 * The coefficients of a surface by quasi-likelihood, which needs only how a variance goes with its
 * mean: iteratively reweighted least squares (McCullagh, Nelder, Generalized Linear Models, 2nd ed.
 * 1989, 2.5 and 9.2).
 */
final class SurfaceFit {

  private static final int STEPS = 40;
  private static final double CLOSE = 1e-9;

  /** A touch of ridge, so that worlds that lie badly leave a matrix that can be solved. */
  private static final double RIDGE = 1e-9;

  private final Observations seen;
  private final double[][] terms;
  private final Link link;

  SurfaceFit(Observations seen, double[][] terms, Link link) {
    this.seen = seen;
    this.terms = terms;
    this.link = link;
  }

  /** The coefficients from a flat start. */
  double[] coefficients(IntPredicate replicates) {
    double[] start = new double[terms[0].length];
    start[0] = link.eta(seen.mean());
    return coefficients(start, replicates);
  }

  /** The coefficients, from a start, of the worlds of some replicates. */
  double[] coefficients(double[] start, IntPredicate replicates) {
    double[] now = start.clone();
    for (int step = 0; step < STEPS; step++) {
      double[] next = step(now, replicates);
      double moved = 0;
      for (int i = 0; i < next.length; i++) {
        double by = Math.max(-2, Math.min(2, next[i] - now[i])); // a wild step is cut
        moved = Math.max(moved, Math.abs(by));
        now[i] += by;
      }
      if (moved < CLOSE) {
        break;
      }
    }
    return now;
  }

  private double[] step(double[] now, IntPredicate replicates) {
    int k = now.length;
    double[][] matrix = new double[k][k];
    double[] right = new double[k];
    for (int w = 0; w < terms.length; w++) {
      if (replicates.test(seen.replicates()[w])) {
        add(matrix, right, w, link.bounded(dot(terms[w], now)));
      }
    }
    for (int i = 0; i < k; i++) {
      matrix[i][i] *= 1 + RIDGE;
      for (int j = 0; j < i; j++) {
        matrix[j][i] = matrix[i][j];
      }
    }
    return solved(matrix, right, now);
  }

  private static double[] solved(double[][] matrix, double[] right, double[] now) {
    try {
      return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-6, 0)
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    } catch (NonPositiveDefiniteMatrixException e) {
      return now; // as far as it goes
    }
  }

  private void add(double[][] matrix, double[] right, int world, double eta) {
    double mean = link.mean(eta);
    double slope = link.slope(eta);
    double weight = seen.histories()[world] * slope * slope / link.variance(mean);
    double target = eta + (seen.sums()[world] / seen.histories()[world] - mean) / slope;
    double[] row = terms[world];
    for (int i = 0; i < row.length; i++) {
      right[i] += weight * row[i] * target;
      for (int j = 0; j <= i; j++) {
        matrix[i][j] += weight * row[i] * row[j];
      }
    }
  }

  /** The Poisson deviance of the worlds of some replicates, a proper score of any means. */
  double deviance(double[] coefficients, IntPredicate replicates) {
    double sum = 0;
    for (int w = 0; w < terms.length; w++) {
      if (replicates.test(seen.replicates()[w])) {
        double expected =
            seen.histories()[w] * link.mean(link.bounded(dot(terms[w], coefficients)));
        double y = seen.sums()[w];
        sum += 2 * ((y > 0 ? y * StrictMath.log(y / expected) : 0) - (y - expected));
      }
    }
    return sum;
  }

  /**
   * How much of the surface's roughness is not in it: the variance of η between worlds beyond both
   * the surface and the noise of histories, by moments, of the worlds of some replicates.
   */
  double roughness(double[] coefficients, IntPredicate replicates) {
    double excess = 0;
    double slopes = 0;
    for (int w = 0; w < terms.length; w++) {
      if (replicates.test(seen.replicates()[w])) {
        double eta = link.bounded(dot(terms[w], coefficients));
        double off = seen.sums()[w] / seen.histories()[w] - link.mean(eta);
        excess += off * off - seen.noise(w);
        slopes += link.slope(eta) * link.slope(eta);
      }
    }
    return excess / slopes;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
