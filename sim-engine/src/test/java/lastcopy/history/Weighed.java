package lastcopy.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;
import lastcopy.scenario.Studio;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** Histories under a bias, and what is known of what they weigh. */
final class Weighed {

  private Weighed() {}

  /** Writes down the risks that a biased history tells of, and what came out badly. */
  static final class Risks implements Ledger {
    final List<String> told = new ArrayList<>();

    @Override
    public void lost(Loss loss) {}

    @Override
    public void passed(
        double hours, double bare, double fragile, double down, double refill, double most) {}

    @Override
    public void recovered(Cause cause, double workHours, double wholeHours) {}

    @Override
    public void risked(int channel, double chance) {
      told.add(channel + " " + Math.round(chance * 1e9) / 1e9);
    }

    @Override
    public void cameOutBadly(int channel) {
      told.add(channel + " badly");
    }

    @Override
    public boolean wantsTime() {
      return false;
    }
  }

  /** Histories whose hazards no factor changes, though they count as biased. */
  static History unraised(Studio studio) {
    return raised(studio, -1, level -> 1);
  }

  /** Histories in which the hazard of one group has a factor by level; others are as they are. */
  static History raised(Studio studio, int group, IntUnaryOperator tenths) {
    History plain = new History(studio, studio.layouts().get(0), 1);
    double[][] factors = new double[plain.groups()][plain.levels()];
    Arrays.stream(factors).forEach(row -> Arrays.fill(row, 1));
    if (group >= 0) {
      Arrays.setAll(factors[group], level -> tenths.applyAsInt(level) / 10.0);
    }
    return new History(studio, studio.layouts().get(0), 1, Bias.of(factors));
  }

  /** Red beyond six standard errors, at a rate below 1e-8. */
  static void isMean(double expected, SummaryStatistics of) {
    double error = of.getStandardDeviation() / Math.sqrt((double) of.getN());
    assertThat(of.getMean()).isBetween(expected - 6 * error, expected + 6 * error);
  }
}
