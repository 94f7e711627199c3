package lastcopy.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The survival curve without a law, where ages at failure are known (Kaplan, Meier, JASA 53, 1958).
 * Drives whose records begin late count from then on (e.g. Klein, Moeschberger, Survival Analysis,
 * 2003, section 4.6).
 *
 * <p>Intervals are those of ln(−ln S) (Kalbfleisch, Prentice, The Statistical Analysis of Failure
 * Time Data, 1980): they stay between 0 and 1. There is none before anything failed and none once
 * the curve is at 0.
 */
final class KaplanMeier {

  private final double[] entries;
  private final List<Records.Alike> byExit;
  private final double quantile;
  private final List<Step> steps = new ArrayList<>();
  private double survival = 1;
  private double greenwood;
  private double hazard;
  private double hazardVariance;

  private KaplanMeier(Records lives, double confidence) {
    quantile = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
    byExit = lives.distinct();
    entries = entries(lives);
  }

  /** The steps, by age. */
  static List<Step> of(Records lives, double confidence) {
    KaplanMeier curve = new KaplanMeier(lives, confidence);
    curve.walk(lives.records());
    return List.copyOf(curve.steps);
  }

  private static double[] entries(Records lives) {
    double[] entries = new double[Math.toIntExact(lives.records())];
    int n = 0;
    for (Records.Alike alike : lives.distinct()) {
      Arrays.fill(entries, n, n + (int) alike.count(), alike.life().entry());
      n += (int) alike.count();
    }
    Arrays.sort(entries);
    return entries;
  }

  /** Over exits in their order; a drive that leaves at an age is still at risk there. */
  private void walk(long records) {
    long left = 0;
    int entered = 0;
    int i = 0;
    while (i < byExit.size()) {
      double age = byExit.get(i).life().exit();
      long failed = 0;
      long leaving = 0;
      for (; i < byExit.size() && byExit.get(i).life().exit() == age; i++) {
        Records.Alike alike = byExit.get(i);
        leaving += alike.count();
        failed += alike.life().failed() ? alike.count() : 0;
      }
      while (entered < records && entries[entered] < age) {
        entered++;
      }
      if (failed > 0) {
        step(age, (double) (entered - left), (double) failed);
      }
      left += leaving;
    }
  }

  private void step(double age, double atRisk, double failed) {
    survival *= (atRisk - failed) / atRisk;
    greenwood += failed / (atRisk * (atRisk - failed));
    hazard += failed / atRisk;
    hazardVariance += failed / (atRisk * atRisk);
    double log = StrictMath.log(survival);
    double spread = quantile * StrictMath.sqrt(greenwood) / -log;
    boolean down = survival <= 0;
    steps.add(
        new Step(
            age,
            age,
            atRisk,
            failed,
            Math.max(0, survival),
            down ? Double.NaN : survival * StrictMath.sqrt(greenwood),
            down ? Double.NaN : StrictMath.exp(log * StrictMath.exp(spread)),
            down ? Double.NaN : StrictMath.exp(log * StrictMath.exp(-spread)),
            hazard,
            StrictMath.sqrt(hazardVariance)));
  }
}
