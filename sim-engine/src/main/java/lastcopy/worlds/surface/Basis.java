package lastcopy.worlds.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Products of Hermite polynomials of standard normal deviates, each with mean square 1, the
 * constant first. One more deviate, the direction, is a mean of the others.
 */
public final class Basis {

  private final int[][] degrees;
  private final double[] direction;

  /**
   * Some terms.
   *
   * @param degrees of each deviate and of the direction, a row a term
   * @param direction what each deviate counts for, of any length
   */
  Basis(List<int[]> degrees, double[] direction) {
    this.degrees = degrees.toArray(new int[0][]);
    double length = Math.sqrt(Arrays.stream(direction).map(d -> d * d).sum());
    this.direction = Arrays.stream(direction).map(d -> length > 0 ? d / length : 0).toArray();
  }

  /** All products up to a total degree, orthogonal to each other; nothing of a direction. */
  public static Basis ofOrder(int deviates, int order) {
    List<int[]> all = new ArrayList<>();
    for (int total = 0; total <= order; total++) {
      addAll(all, new int[deviates + 1], 0, total);
    }
    return new Basis(all, new double[deviates]);
  }

  private static void addAll(List<int[]> to, int[] degrees, int from, int left) {
    if (left == 0) {
      to.add(degrees.clone());
      return;
    }
    for (int i = from; i < degrees.length - 1; i++) {
      degrees[i]++;
      addAll(to, degrees, i, left - 1);
      degrees[i]--;
    }
  }

  /** How many terms an order has, so that too many need not be made. */
  static double terms(int deviates, int order) {
    double terms = 1;
    for (int i = 1; i <= order; i++) {
      terms *= (deviates + i) / (double) i;
    }
    return terms;
  }

  /** How many terms it has. */
  public int size() {
    return degrees.length;
  }

  /** The terms at a point. */
  double[] at(double[] point) {
    double[] all = Arrays.copyOf(point, point.length + 1);
    all[point.length] = SurfaceFit.dot(point, direction);
    double[] terms = new double[degrees.length];
    Arrays.fill(terms, 1);
    for (int t = 0; t < terms.length; t++) {
      for (int i = 0; i < all.length; i++) {
        terms[t] *= degrees[t][i] == 0 ? 1 : hermite(degrees[t][i], all[i]);
      }
    }
    return terms;
  }

  /** The terms at each of several points. */
  double[][] at(double[][] points) {
    return Arrays.stream(points).map(this::at).toArray(double[][]::new);
  }

  /** The probabilists' Hermite polynomial over the root of the factorial of its degree. */
  static double hermite(int degree, double x) {
    double before = 0;
    double now = 1;
    for (int k = 0; k < degree; k++) {
      double next = (x * now - Math.sqrt(k) * before) / Math.sqrt(k + 1.0);
      before = now;
      now = next;
    }
    return now;
  }
}
