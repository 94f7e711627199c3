package lastcopy.worlds.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The coefficients of a surface whose order is not known: surfaces of several orders, averaged by
 * Akaike's weights, exp(−AIC/2) (Buckland, Burnham, Augustin, Biometrics 53 (1997) 603-618). Were
 * the best one picked, leaving a replicate out would not tell how far the pick itself is chance; an
 * average moves with what was seen, so it does.
 */
final class AveragedFit {

  private static final int MOST_ORDER = 3;

  /** A term more for each so many effective losses, and for each so many worlds. */
  private static final double LOSSES_A_TERM = 20;

  private static final double WORLDS_A_TERM = 6;
  private static final double MOST_TERMS = 60;

  /** A surface of one order, and where its terms are among all. */
  private record Order(SurfaceFit fit, int[] places, double[] start) {}

  private final Basis basis;
  private final List<Order> orders = new ArrayList<>();

  /** How much more sums vary than counts of the same mean: their quasi-likelihood is over it. */
  private final double dispersion;

  AveragedFit(Observations seen, Link link) {
    List<Basis> all = candidates(seen);
    basis = Basis.of(all);
    dispersion = Arrays.stream(seen.squares()).sum() / Arrays.stream(seen.sums()).sum();
    for (Basis one : all) {
      SurfaceFit fit = new SurfaceFit(seen, one.at(seen.points()), link);
      orders.add(new Order(fit, basis.places(one), fit.coefficients(r -> true)));
    }
  }

  /** All terms of all orders. */
  Basis basis() {
    return basis;
  }

  /** The coefficients of the terms, of the worlds of some replicates. */
  double[] coefficients(IntPredicate replicates) {
    double[][] each = new double[orders.size()][];
    double[] merits = new double[orders.size()];
    for (int i = 0; i < each.length; i++) {
      SurfaceFit fit = orders.get(i).fit;
      each[i] = fit.coefficients(orders.get(i).start, replicates);
      merits[i] = fit.likelihood(each[i], replicates) / dispersion - each[i].length;
    }
    return averaged(each, merits);
  }

  private double[] averaged(double[][] each, double[] merits) {
    double best = Arrays.stream(merits).max().orElseThrow();
    double whole = Arrays.stream(merits).map(merit -> StrictMath.exp(merit - best)).sum();
    double[] sum = new double[basis.size()];
    for (int i = 0; i < each.length; i++) {
      double weight = StrictMath.exp(merits[i] - best) / whole;
      int[] places = orders.get(i).places;
      for (int t = 0; t < places.length; t++) {
        sum[places[t]] += weight * each[i][t];
      }
    }
    return sum;
  }

  private static List<Basis> candidates(Observations seen) {
    int deviates = seen.points()[0].length;
    double most =
        Math.min(
            MOST_TERMS, Math.min(seen.effective() / LOSSES_A_TERM, seen.size() / WORLDS_A_TERM));
    List<Basis> all = new ArrayList<>();
    all.add(Basis.ofOrder(deviates, 1));
    for (int order = 2; order <= MOST_ORDER; order++) {
      if (deviates > 1 && 1 + order * deviates <= most) {
        all.add(Basis.ofEach(deviates, order));
      }
      if (Basis.terms(deviates, order) <= most) {
        all.add(Basis.ofOrder(deviates, order));
      }
    }
    return all;
  }
}
