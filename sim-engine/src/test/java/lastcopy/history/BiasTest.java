package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import lastcopy.history.hazard.Bias;
import lastcopy.scenario.Studio;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The mean of a likelihood ratio is 1, whatever the bias: for studios of the whole model drawn from
 * a fixed seed and factors drawn at random by group and level.
 *
 * <p>Null hypothesis: the mean is 1. Red beyond six standard errors, at a rate below 1e-6 all
 * together where means are normal. Sabotage: two sources that share their luck (turns of a rotation
 * that spoil at the same instant); a ratio that counts twice; an event at another level than its
 * hazard; the density of late notices without the share of those that are not.
 */
class BiasTest {

  private static final int STUDIOS = 20;
  private static final int HISTORIES = 1_500;

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void meanRatio(boolean unlikely) {
    RandomStudios studios = new RandomStudios(145, unlikely);
    SplittableRandom random = new SplittableRandom(46);
    for (int i = 0; i < STUDIOS; i++) {
      Studio studio = studios.next();
      History history = new History(studio, studio.layouts().get(0), 5);
      history.bias(Bias.of(factors(history, random)));
      SummaryStatistics ratio = new SummaryStatistics();
      for (int k = 0; k < HISTORIES; k++) {
        double[] last = new double[1];
        history.tell(k, (happening, snapshot) -> last[0] = snapshot.weight());
        ratio.addValue(last[0]);
      }
      double error = ratio.getStandardDeviation() / Math.sqrt(HISTORIES);
      assertThat(ratio.getMean()).as("studio %d", i).isBetween(1 - 6 * error, 1 + 6 * error);
    }
  }

  private static double[][] factors(History history, SplittableRandom random) {
    double[][] factors = new double[history.groups()][history.levels()];
    for (double[] row : factors) {
      for (int v = 0; v < row.length; v++) {
        row[v] = 0.5 + random.nextDouble();
      }
    }
    return factors;
  }
}
