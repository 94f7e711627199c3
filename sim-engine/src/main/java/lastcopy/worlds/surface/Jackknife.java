package lastcopy.worlds.surface;

import java.util.Arrays;
import lastcopy.interval.Estimate;
import lastcopy.interval.Means;

/**
 * How far a figure is known that is made of all replicates together: from what it is when each is
 * left out in turn (Tukey's pseudo-values; Miller, Biometrika 61 (1974) 1-15), with Student's
 * quantile.
 */
public final class Jackknife {

  private Jackknife() {}

  /**
   * A figure with its interval.
   *
   * @param whole of all replicates
   * @param without of all but each one
   * @param confidence in (0, 1)
   */
  public static Estimate of(double whole, double[] without, double confidence) {
    double n = without.length;
    double[] pseudo = Arrays.stream(without).map(part -> n * whole - (n - 1) * part).toArray();
    double sum = Arrays.stream(pseudo).sum();
    double squares = Arrays.stream(pseudo).map(p -> p * p).sum();
    Estimate mean = Means.of(without.length, sum, squares, confidence);
    double half = mean.high() - mean.value();
    return new Estimate(whole, whole - half, whole + half, true);
  }
}
