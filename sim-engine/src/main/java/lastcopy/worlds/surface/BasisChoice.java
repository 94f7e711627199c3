package lastcopy.worlds.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The terms of a surface: as many as losses and worlds can tell, the likeliest to matter first.
 *
 * <p>How many depends on how much was lost and not on how it depends on what is not known. Were
 * those terms picked that fit best (by cross-validation or Akaike's criterion, both were tried),
 * leaving a replicate out would not tell how far the pick is chance: of intervals of 95 %, 93 %
 * held where a simple surface was right, and 86 % where a richer one was, since the pick leaves out
 * what is just too small to be seen by itself (Leeb, Poetscher, Econometric Theory 21 (2005)
 * 21-59).
 *
 * <p>Where not all products can be had, powers of what a surface of first order says stand in for
 * them (Tukey, Biometrics 5 (1949) 232-242): dangers that add up act together in that way.
 */
final class BasisChoice {

  private static final int SECOND = 2;
  private static final int THIRD = 3;

  /**
   * A term for each so many effective losses (or histories without, if fewer), and for each so many
   * worlds.
   */
  private static final double LOSSES_A_TERM = 20;

  private static final double WORLDS_A_TERM = 2.5;

  /** All of third order, most of which seldom matters, where there are so many worlds for each. */
  private static final double WORLDS_A_FINE_TERM = 6;

  private static final double MOST_TERMS = 110;

  private final Observations seen;
  private final Link link;
  private final int deviates;
  private final double[] slopes;
  private final List<int[]> terms = new ArrayList<>();

  private BasisChoice(Observations seen, Link link) {
    this.seen = seen;
    this.link = link;
    deviates = seen.points()[0].length;
    Basis first = Basis.ofOrder(deviates, 1);
    double[] of = new SurfaceFit(seen, first.at(seen.points()), link).coefficients(r -> true);
    slopes = new double[deviates];
    System.arraycopy(of, 1, slopes, 0, deviates);
  }

  /** The basis for what was seen. */
  static Basis of(Observations seen, Link link) {
    int deviates = seen.points()[0].length;
    return Basis.terms(deviates, THIRD) <= most(seen, link, WORLDS_A_FINE_TERM)
        ? Basis.ofOrder(deviates, THIRD)
        : new BasisChoice(seen, link).basis();
  }

  private static double most(Observations seen, Link link, double worldsATerm) {
    return Math.min(
        MOST_TERMS, Math.min(link.telling(seen) / LOSSES_A_TERM, seen.size() / worldsATerm));
  }

  private Basis basis() {
    int[] leading = leading();
    terms.add(new int[deviates + 1]);
    IntStream.range(0, deviates).forEach(i -> terms.add(power(i, 1)));
    boolean products = Basis.terms(deviates, SECOND) + 1 <= most(seen, link, WORLDS_A_TERM);
    if (!products) {
      add(power(deviates, SECOND));
    }
    add(power(deviates, THIRD));
    for (int i : leading) {
      add(power(i, SECOND));
    }
    for (int j = 1; j < deviates; j++) {
      for (int i = 0; i < j; i++) {
        add(product(leading[i], leading[j]));
      }
    }
    return new Basis(terms, slopes);
  }

  private void add(int[] term) {
    if (terms.size() + 1 <= most(seen, link, WORLDS_A_TERM)) {
      terms.add(term);
    }
  }

  /** The unknowns by how much a surface of first order says that they matter, the most first. */
  private int[] leading() {
    return IntStream.range(0, deviates)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -Math.abs(slopes[i])))
        .mapToInt(i -> i)
        .toArray();
  }

  private int[] power(int of, int degree) {
    int[] term = new int[deviates + 1];
    term[of] = degree;
    return term;
  }

  private int[] product(int a, int b) {
    int[] term = power(a, 1);
    term[b] = 1;
    return term;
  }
}
