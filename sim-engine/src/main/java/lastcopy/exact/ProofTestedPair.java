package lastcopy.exact;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;

/**
 * A mirror of two that somebody looks at by the clock: a failure waits for the next look, at which
 * everything found is repaired at once (1oo2 of IEC 61508-6, with the β-factor).
 *
 * @param failsPerHour λ, above 0
 * @param beta share of failures that take both, in [0, 1)
 * @param periodHours T, the time between looks, above 0
 */
public record ProofTestedPair(double failsPerHour, double beta, double periodHours) {

  /** Checks the ranges. */
  public ProofTestedPair {
    Parameters.above(failsPerHour, "failure rate");
    Parameters.that(beta >= 0 && beta < 1, "beta must be in [0, 1)", beta);
    Parameters.above(periodHours, "period");
  }

  /**
   * The chance that both are down a time after a look.
   *
   * @param hours since the look, at least 0
   */
  public double bothDown(double hours) {
    double shocked = -Math.expm1(-beta * failsPerHour * hours);
    double alone = -Math.expm1(-(1 - beta) * failsPerHour * hours);
    return shocked + (1 - shocked) * alone * alone;
  }

  /** The share of time in which both are down, the mean of {@link #bothDown} over a period. */
  public double averageUnavailability() {
    return new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-300)
            .integrate(100_000, this::bothDown, 0, periodHours)
        / periodHours;
  }

  /** The simple form of the same, (λT)²/3 + βλT/2, for small λT and β. */
  public double simpleUnavailability() {
    double expected = failsPerHour * periodHours;
    return expected * expected / 3 + beta * expected / 2;
  }

  /**
   * The chance that both have been down at once within so many periods, 1 − (1 − q)^k with q the
   * chance within one.
   *
   * @param periods k, at least 0
   */
  public double lossWithin(int periods) {
    Parameters.atLeastZero(periods, "periods");
    return -Math.expm1(periods * Math.log1p(-bothDown(periodHours)));
  }
}
