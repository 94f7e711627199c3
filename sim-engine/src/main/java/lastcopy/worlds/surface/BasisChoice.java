package lastcopy.worlds.surface;

import java.util.ArrayList;
import java.util.List;

/**
 * The order of a surface by cross-validation (Stone, JRSS B 36 (1974) 111-147): that which best
 * tells worlds that it was not fitted to.
 */
final class BasisChoice {

  private static final int FOLDS = 4;
  private static final int MOST_ORDER = 3;

  /** A term more for each so many effective losses, and for each so many worlds. */
  private static final double LOSSES_A_TERM = 20;

  private static final double WORLDS_A_TERM = 6;
  private static final double MOST_TERMS = 60;

  private BasisChoice() {}

  /** The basis for what was seen. */
  static Basis of(Observations seen, Link link) {
    List<Basis> all = candidates(seen);
    Basis best = all.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Basis basis : all) {
      double off = all.size() == 1 ? 0 : deviance(seen, basis, link);
      if (off < least) {
        least = off;
        best = basis;
      }
    }
    return best;
  }

  private static List<Basis> candidates(Observations seen) {
    int deviates = seen.points()[0].length;
    double most =
        Math.min(
            MOST_TERMS, Math.min(seen.effective() / LOSSES_A_TERM, seen.size() / WORLDS_A_TERM));
    List<Basis> all = new ArrayList<>();
    for (int order = 1; order <= MOST_ORDER; order++) {
      if (order > 1 && deviates > 1 && 1 + order * deviates <= most) {
        all.add(Basis.ofEach(deviates, order));
      }
      if (Basis.terms(deviates, order) <= most) {
        all.add(Basis.ofOrder(deviates, order));
      }
    }
    if (all.isEmpty()) {
      all.add(Basis.ofOrder(deviates, 1));
    }
    return all;
  }

  private static double deviance(Observations seen, Basis basis, Link link) {
    SurfaceFit fit = new SurfaceFit(seen, basis.at(seen.points()), link);
    double sum = 0;
    double[] start = fit.coefficients(r -> true);
    for (int fold = 0; fold < FOLDS; fold++) {
      int left = fold;
      double[] of = fit.coefficients(start, r -> r % FOLDS != left);
      sum += fit.deviance(of, r -> r % FOLDS == left);
    }
    return sum;
  }
}
