package lastcopy.simulate.rare;

import java.util.SplittableRandom;
import lastcopy.exact.MarkovChain;
import lastcopy.history.hazard.Bias;
import lastcopy.history.report.Cause;
import lastcopy.history.report.Ledger;
import lastcopy.history.report.Loss;

/**
 * A repairable set of drives with a shock that takes all, simulated by hand under a bias: small
 * enough that its chain is solved exactly, to prove the statistics apart from the engine.
 *
 * <p>A failure beyond {@code survives} loses {@code small} bytes and ends nothing; a shock loses
 * {@code large} bytes. The set is then as good as new.
 */
public record StandIn(
    int drives, int survives, double fails, double repairs, double shock, double horizon) {

  static final double SMALL = 1;
  static final double LARGE = 1_000;
  private static final int DEPTHS = 5;
  private static final Cause DRIVES = new Cause("drives", "drives failed");
  private static final Cause SHOCK = new Cause("shock", "a shock");

  /** The chance of any loss by the horizon, exactly. */
  public double exact() {
    int lost = survives + 1;
    double[][] rates = new double[lost + 1][lost + 1];
    for (int down = 0; down < lost; down++) {
      rates[down][down + 1] = (drives - down) * fails;
      rates[down][lost] += shock;
      if (down > 0) {
        rates[down][down - 1] = down * repairs;
      }
    }
    return new MarkovChain(rates).chance(0, lost, horizon);
  }

  public Biasable histories(long seed) {
    return new Histories(this, seed);
  }

  private static final class Histories implements Biasable {
    private final StandIn of;
    private final long seed;
    private final double[][] events = new double[2][DEPTHS];
    private final double[][] hazard = new double[2][DEPTHS];

    Histories(StandIn of, long seed) {
      this.of = of;
      this.seed = seed;
    }

    @Override
    public int groups() {
      return 2;
    }

    @Override
    public int levels() {
      return DEPTHS;
    }

    @Override
    public int depth(int level) {
      return level;
    }

    @Override
    public double events(int group, int level) {
      return events[group][level];
    }

    @Override
    public double hazard(int group, int level) {
      return hazard[group][level];
    }

    @Override
    public double logOfTheRest() {
      return 0;
    }

    @Override
    public void simulate(long number, Bias bias, Ledger to) {
      SplittableRandom random =
          new SplittableRandom(seed * 0x9E3779B97F4A7C15L + number * 0xD1342543DE82EF95L);
      for (int g = 0; g < 2; g++) {
        java.util.Arrays.fill(events[g], 0);
        java.util.Arrays.fill(hazard[g], 0);
      }
      boolean biased = true;
      double now = 0;
      int down = 0;
      while (true) {
        double drive = (of.drives - down) * of.fails;
        double byDrive = drive * (biased ? bias.factor(0, down) : 1);
        double byShock = of.shock * (biased ? bias.factor(1, down) : 1);
        double all = byDrive + byShock + down * of.repairs;
        double wait = -Math.log(1 - random.nextDouble()) / all;
        double passed = Math.min(wait, of.horizon - now);
        if (biased) {
          hazard[0][down] += drive * passed;
          hazard[1][down] += of.shock * passed;
        }
        now += passed;
        if (passed < wait) {
          return;
        }
        double which = random.nextDouble() * all;
        boolean shocked = which < byShock;
        boolean failed = !shocked && which < byShock + byDrive;
        if (biased && (shocked || failed)) {
          events[shocked ? 1 : 0][down]++;
        }
        if (shocked || (failed && down == of.survives)) {
          to.lost(
              new Loss(
                  now,
                  shocked ? LARGE : SMALL,
                  1,
                  1,
                  shocked,
                  shocked ? SHOCK : DRIVES,
                  Double.NaN));
          down = 0;
          biased = false;
        } else {
          down += failed ? 1 : -1;
        }
      }
    }
  }
}
