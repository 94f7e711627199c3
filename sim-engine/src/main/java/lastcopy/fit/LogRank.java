package lastcopy.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether groups die alike: the log-rank test (Mantel, Cancer Chemotherapy Reports 50, 1966; Peto,
 * Peto, JRSS A 135, 1972), with ties as hypergeometric draws. Ages at failure must be known.
 *
 * @param observed failures of each group, in the groups' order
 * @param expected those to be expected if all groups died alike
 * @param chiSquare the statistic
 * @param degreesOfFreedom groups that were ever at risk, less one
 * @param p the chance of so large a statistic if all groups die alike
 */
public record LogRank(
    List<Double> observed,
    List<Double> expected,
    double chiSquare,
    int degreesOfFreedom,
    double p) {

  /** Copies the lists. */
  public LogRank {
    observed = List.copyOf(observed);
    expected = List.copyOf(expected);
  }

  /** Compares at least two groups. */
  public static LogRank of(List<Records> groups) {
    Ages ages = new Ages(groups);
    return ages.test();
  }

  /** At each age at which anything leaves: of each group who enters, leaves, fails. */
  private static final class Ages {

    private final int groups;
    private final TreeMap<Double, long[][]> at = new TreeMap<>();
    private final double[] observed;
    private final double[] expected;
    private final double[][] variance;

    Ages(List<Records> lives) {
      groups = lives.size();
      observed = new double[groups];
      expected = new double[groups];
      variance = new double[groups][groups];
      for (int g = 0; g < groups; g++) {
        for (Records.Alike alike : lives.get(g).distinct()) {
          counts(alike.life().entry())[0][g] += alike.count();
          counts(alike.life().exit())[1][g] += alike.count();
          counts(alike.life().exit())[2][g] += alike.life().failed() ? alike.count() : 0;
        }
      }
    }

    private long[][] counts(double age) {
      return at.computeIfAbsent(age, a -> new long[3][groups]);
    }

    LogRank test() {
      double[] risk = new double[groups];
      for (long[][] counts : at.values()) {
        failures(risk, counts[2]);
        for (int g = 0; g < groups; g++) {
          risk[g] += counts[0][g] - counts[1][g]; // who enters at an age is at risk after it
        }
      }
      return result();
    }

    private void failures(double[] risk, long... failed) {
      double n = 0;
      double d = 0;
      for (int g = 0; g < groups; g++) {
        n += risk[g];
        d += failed[g];
      }
      if (d == 0) {
        return;
      }
      double spread = n > 1 ? d * (n - d) / (n * n * (n - 1)) : 0;
      for (int g = 0; g < groups; g++) {
        observed[g] += failed[g];
        expected[g] += d * risk[g] / n;
        for (int k = 0; k < groups; k++) {
          variance[g][k] += spread * risk[g] * ((g == k ? n : 0) - risk[k]);
        }
      }
    }

    private LogRank result() {
      RealVector difference = new ArrayRealVector(observed).subtract(new ArrayRealVector(expected));
      SingularValueDecomposition svd =
          new SingularValueDecomposition(new Array2DRowRealMatrix(variance));
      int freedom = Math.max(0, Math.min(groups - 1, svd.getRank()));
      double chiSquare =
          freedom == 0 ? 0 : difference.dotProduct(svd.getSolver().solve(difference));
      double p =
          freedom == 0 ? 1 : ChiSquaredDistribution.of(freedom).survivalProbability(chiSquare);
      return new LogRank(list(observed), list(expected), chiSquare, freedom, p);
    }

    private static List<Double> list(double... values) {
      List<Double> list = new ArrayList<>();
      for (double value : values) {
        list.add(value);
      }
      return list;
    }
  }
}
