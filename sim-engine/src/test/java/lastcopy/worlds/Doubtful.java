package lastcopy.worlds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import lastcopy.experiment.Comparison;
import lastcopy.experiment.Method;
import lastcopy.experiment.Progress;
import lastcopy.experiment.Settings;
import lastcopy.scenario.PossibleStudios;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Unknown;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Studios some rates of which are not known, and exact means over what is not known. */
final class Doubtful {

  static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** So sure that one wrong alarm in a million checks is to be expected. */
  static final double SURE = 1 - 1e-6;

  private Doubtful() {}

  static PossibleStudios studios(int unknowns, Function<double[], Studio> at) {
    List<Unknown> all = new ArrayList<>();
    for (int i = 0; i < unknowns; i++) {
      all.add(new Unknown("rate " + i, 1, 2, "per year"));
    }
    return new PossibleStudios(at.apply(new double[unknowns]), all, at);
  }

  static Settings settings(long seed, double confidence, double precision, int threads) {
    return new Settings(
        seed,
        confidence,
        precision,
        OptionalLong.empty(),
        Optional.empty(),
        threads,
        Method.AUTO,
        OptionalInt.empty());
  }

  static Comparison run(PossibleStudios studios, double precision) {
    return WorldSimulation.run(studios, settings(1, SURE, precision, 2), Progress.SILENT);
  }

  /** The mean over a standard normal deviate, by the trapezoidal rule. */
  static double mean(DoubleUnaryOperator of) {
    double step = 0.02;
    double sum = 0;
    for (int i = -450; i <= 450; i++) {
      sum += of.applyAsDouble(i * step) * NORMAL.density(i * step) * step;
    }
    return sum;
  }

  /** The mean over two. */
  static double mean(DoubleBinaryOperator of) {
    return mean((DoubleUnaryOperator) x -> mean((DoubleUnaryOperator) y -> of.applyAsDouble(x, y)));
  }

  /** A percentile over two deviates: the root of the chance to be below, rising in each. */
  static double percentile(DoubleBinaryOperator rising, double part) {
    double low = rising.applyAsDouble(-9, -9);
    double high = rising.applyAsDouble(9, 9);
    for (int i = 0; i < 60; i++) {
      double middle = Math.sqrt(low * high);
      double below =
          mean((DoubleUnaryOperator) x -> NORMAL.cumulativeProbability(root(rising, x, middle)));
      if (below < part) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double root(DoubleBinaryOperator rising, double x, double value) {
    double low = -9;
    double high = 9;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (rising.applyAsDouble(x, middle) < value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
