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
  private static final double CLOSE = 1e-7;
  private static final double MOST_STEP = 2;

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

  /**
   * The coefficients, from a start, of the worlds of some replicates. A step that makes them less
   * likely is halved until it does not, since a full one may run away (as in R's glm2: Marschner,
   * The R Journal 3(2) (2011) 12-15).
   */
  double[] coefficients(double[] start, IntPredicate replicates) {
    double[] now = start.clone();
    double likely = likelihood(now, replicates);
    for (int step = 0; step < STEPS; step++) {
      double[] by = step(now, replicates);
      double moved = 0;
      for (int i = 0; i < by.length; i++) {
        by[i] -= now[i];
        moved = Math.max(moved, Math.abs(by[i]));
      }
      if (moved < CLOSE) {
        break;
      }
      double before = likely;
      for (double part = Math.min(1, MOST_STEP / moved); part * moved >= CLOSE; part /= 2) {
        double[] next = moved(now, by, part);
        double then = likelihood(next, replicates);
        if (then > likely) {
          now = next;
          likely = then;
          break;
        }
      }
      if (!(likely > before)) {
        break; // no step makes them likelier
      }
    }
    return now;
  }

  private static double[] moved(double[] from, double[] by, double part) {
    double[] to = from.clone();
    for (int i = 0; i < to.length; i++) {
      to[i] += part * by[i];
    }
    return to;
  }

  /** The logarithm of the quasi-likelihood, but for what does not depend on the coefficients. */
  private double likelihood(double[] coefficients, IntPredicate replicates) {
    double sum = 0;
    for (int w = 0; w < terms.length; w++) {
      if (replicates.test(seen.replicates()[w])) {
        double mean = link.mean(link.bounded(dot(terms[w], coefficients)));
        sum += link.likelihood(seen.histories()[w], seen.sums()[w], mean);
      }
    }
    return sum;
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
