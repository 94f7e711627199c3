package lastcopy.worlds.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Products of Hermite polynomials of standard normal deviates, each with mean square 1 and
 * orthogonal to the others, the constant first.
 */
public final class Basis {

  private final int[][] degrees;

  private Basis(List<int[]> degrees) {
    this.degrees = degrees.toArray(new int[0][]);
  }

  /** All products up to a total degree. */
  public static Basis ofOrder(int deviates, int order) {
    List<int[]> all = new ArrayList<>();
    for (int total = 0; total <= order; total++) {
      addAll(all, new int[deviates], 0, total);
    }
    return new Basis(all);
  }

  private static void addAll(List<int[]> to, int[] degrees, int from, int left) {
    if (left == 0) {
      to.add(degrees.clone());
      return;
    }
    for (int i = from; i < degrees.length; i++) {
      degrees[i]++;
      addAll(to, degrees, i, left - 1);
      degrees[i]--;
    }
  }

  /** Each deviate by itself, without products of several. */
  public static Basis ofEach(int deviates, int order) {
    List<int[]> all = new ArrayList<>();
    all.add(new int[deviates]);
    for (int degree = 1; degree <= order; degree++) {
      for (int i = 0; i < deviates; i++) {
        int[] one = new int[deviates];
        one[i] = degree;
        all.add(one);
      }
    }
    return new Basis(all);
  }

  /** The terms of all of several bases. */
  static Basis of(List<Basis> bases) {
    List<int[]> all = new ArrayList<>();
    for (Basis one : bases) {
      for (int[] term : one.degrees) {
        if (all.stream().noneMatch(known -> Arrays.equals(known, term))) {
          all.add(term);
        }
      }
    }
    return new Basis(all);
  }

  /**
   * Where the terms of another basis are in this one.
   *
   * @param other all of whose terms are in this one
   */
  int[] places(Basis other) {
    return Arrays.stream(other.degrees).mapToInt(this::place).toArray();
  }

  private int place(int[] term) {
    return IntStream.range(0, degrees.length)
        .filter(t -> Arrays.equals(degrees[t], term))
        .findFirst()
        .orElseThrow();
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
    double[] terms = new double[degrees.length];
    Arrays.fill(terms, 1);
    for (int t = 0; t < terms.length; t++) {
      for (int i = 0; i < point.length; i++) {
        terms[t] *= hermite(degrees[t][i], point[i]);
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
