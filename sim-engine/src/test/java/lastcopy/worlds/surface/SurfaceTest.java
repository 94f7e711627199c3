package lastcopy.worlds.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

/**
 * Surfaces fitted to counts that were drawn from a known one. Alarm rate 1e-6 each, by the
 * intervals' own confidence.
 */
class SurfaceTest {

  private static final int REPLICATES = 16;
  private static final double SURE = 1 - 1e-6;

  private static double[][] normal(int n, int deviates, long seed) {
    Random random = new Random(seed);
    double[][] points = new double[n][deviates];
    for (double[] point : points) {
      for (int i = 0; i < deviates; i++) {
        point[i] = random.nextGaussian();
      }
    }
    return points;
  }

  private static Observations counts(
      double[][] points, double histories, ToDoubleFunction<double[]> chance) {
    var random = RandomSource.SPLIT_MIX_64.create(11);
    int n = points.length;
    int[] replicates = new int[n];
    double[] many = new double[n];
    double[] sums = new double[n];
    for (int w = 0; w < n; w++) {
      replicates[w] = w % REPLICATES;
      many[w] = histories;
      double mean = histories * chance.applyAsDouble(points[w]);
      sums[w] = mean > 0 ? PoissonDistribution.of(mean).createSampler(random).sample() : 0;
    }
    return new Observations(points, replicates, many, sums, sums);
  }

  private static Surface surface(Observations seen, int deviates) {
    Grid grid = new Grid(normal(8_192, deviates + 1, 3));
    return Surface.of(seen, Link.CHANCE, grid, REPLICATES).orElseThrow();
  }

  /**
   * Of p = exp(a + Σ sᵢ·zᵢ) the shares are sᵢ² over their sum (by the definition of first-order
   * indices), whatever the noise: here most worlds have fewer than two losses, and the variance of
   * the logarithms of raw frequencies would be far off. Red where a share takes coefficients and
   * not their squares.
   */
  @Test
  void sharesOfAProduct() {
    double[] s = {0.8, 0.4, 0};
    Observations seen =
        counts(
            normal(1_024, 3, 5),
            2_000,
            z -> 5e-4 * Math.exp(s[0] * z[0] + s[1] * z[1] + s[2] * z[2]));
    var shares = surface(seen, 3).shares(SURE);
    assertThat(0.8).isBetween(shares[0].low(), shares[0].high());
    assertThat(0.2).isBetween(shares[1].low(), shares[1].high());
    assertThat(shares[0].value()).isCloseTo(0.8, within(0.1));
    assertThat(shares[2].high()).isLessThan(0.1);
  }

  /** Where worlds differ by what no surface says, that is found, and widens the percentiles. */
  @Test
  void whatIsNotInASurfaceIsFound() {
    double[][] points = normal(1_024, 2, 6);
    Observations smooth = counts(points, 4_000, z -> 0.01 * Math.exp(0.5 * z[0]));
    assertThat(surface(smooth, 2).roughPart()).isLessThan(0.02);
    Random random = new Random(8);
    Observations rough =
        counts(points, 4_000, z -> 0.01 * Math.exp(0.5 * z[0] + 0.5 * random.nextGaussian()));
    Surface surface = surface(rough, 2);
    assertThat(surface.roughPart()).isCloseTo(0.5, within(0.1));
    double width =
        Math.log(surface.percentile(0.95, 0.95).value())
            - Math.log(surface.percentile(0.05, 0.95).value());
    assertThat(width).isCloseTo(2 * 1.645 * Math.sqrt(0.5), within(0.2));
  }

  /** The mean over all worlds from a few of them: E exp(s·z) = exp(s²/2). */
  @Test
  void whereWorldsFellIsMadeUpFor() {
    double[][] points = normal(256, 1, 9);
    for (double[] point : points) {
      point[0] += 0.3; // as if the worlds had fallen badly
    }
    Observations seen = counts(points, 200_000, z -> 1e-3 * Math.exp(z[0]));
    double sum = 0;
    for (double mean : surface(seen, 1).calibrated()) {
      sum += mean / REPLICATES;
    }
    double exact = 1e-3 * Math.exp(0.5);
    assertThat(seen.mean()).isGreaterThan(1.2 * exact);
    assertThat(sum).isCloseTo(exact, within(0.05 * exact)); // the grid here is random itself
  }

  @Test
  void tooLittleSaysNothing() {
    Observations seen = counts(normal(256, 1, 2), 10, z -> 1e-3);
    assertThat(Surface.of(seen, Link.CHANCE, new Grid(normal(64, 2, 1)), REPLICATES)).isEmpty();
  }

  /** He₂ = x² − 1 and He₃ = x³ − 3x, over the roots of 2 and 6 (Abramowitz, Stegun, 22). */
  @Test
  void hermitePolynomials() {
    assertThat(Basis.hermite(2, 1.7)).isCloseTo((1.7 * 1.7 - 1) / Math.sqrt(2), within(1e-14));
    assertThat(Basis.hermite(3, 1.7))
        .isCloseTo((1.7 * 1.7 * 1.7 - 3 * 1.7) / Math.sqrt(6), within(1e-14));
    assertThat(Basis.ofOrder(3, 2).size()).isEqualTo(10);
    // The direction of (3, 4) at (1, 2) is (3 + 8) / 5.
    Basis along = new Basis(List.of(new int[] {0, 0, 2}), new double[] {3, 4});
    assertThat(along.at(new double[] {1, 2})[0]).isCloseTo(Basis.hermite(2, 2.2), within(1e-14));
  }

  /** As much is lost in every world, so nothing makes a difference. Red where 0 is over 0. */
  @Test
  void whereAllWorldsAreAlikeNoUnknownCounts() {
    double[][] points = normal(64, 2, 5);
    double[] many = new double[64];
    Arrays.fill(many, 1_000);
    int[] replicates = new int[64];
    Arrays.setAll(replicates, w -> w % REPLICATES);
    Observations seen = new Observations(points, replicates, many, many, many);
    Grid grid = new Grid(normal(8_192, 3, 3));
    Surface surface = Surface.of(seen, Link.AMOUNT, grid, REPLICATES).orElseThrow();
    for (var share : surface.shares(SURE)) {
      assertThat(share.value()).isBetween(0.0, 1.0);
      assertThat(share.high()).isLessThanOrEqualTo(1);
    }
  }

  /**
   * Of 256 histories 253 lose: three that do not tell nothing of what makes a difference. Red where
   * losses alone are counted: all worlds then lose with a chance of 1 and an error of 0.
   */
  @Test
  void whereNearlyAllLoseThoseTellThatDoNot() {
    int n = 256;
    double[] one = new double[n];
    Arrays.fill(one, 1);
    double[] losses = one.clone();
    losses[7] = losses[90] = losses[201] = 0;
    int[] replicates = new int[n];
    Arrays.setAll(replicates, w -> w % REPLICATES);
    Observations seen = new Observations(normal(n, 2, 5), replicates, one, losses, losses);
    Grid grid = new Grid(normal(64, 3, 1));
    assertThat(Surface.of(seen, Link.CHANCE, grid, REPLICATES)).isEmpty();
    assertThat(Surface.of(seen, Link.AMOUNT, grid, REPLICATES)).isPresent();
  }
}
