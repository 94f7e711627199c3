package lastcopy.interval;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Confidence levels and the quantiles that belong to them. */
final class Quantiles {

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Quantiles() {}

  /** The error rate 1 − confidence of a confidence in (0, 1); anything else is refused. */
  static double errorRate(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must be in (0, 1): " + confidence);
    }
    return 1 - confidence;
  }

  /** The two-sided quantile z of the normal distribution. */
  static double normal(double errorRate) {
    return NORMAL.inverseSurvivalProbability(errorRate / 2);
  }

  /** The two-sided quantile of Student's distribution. */
  static double student(double errorRate, double degreesOfFreedom) {
    return TDistribution.of(degreesOfFreedom).inverseSurvivalProbability(errorRate / 2);
  }
}
