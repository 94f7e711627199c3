package lastcopy.law;

import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;

/**
 * Competing risks: whichever law comes first. Cumulative hazards add up, which gives the bathtub
 * curve from a falling and a rising hazard.
 *
 * @param laws at least one
 */
public record Competing(List<Law> laws) implements Law {

  /** Copies the list. */
  public Competing {
    laws = List.copyOf(laws);
    if (laws.isEmpty()) {
      throw new IllegalArgumentException("a sum of laws needs at least one law");
    }
  }

  @Override
  public double cumulativeHazard(double age) {
    double sum = 0;
    for (Law law : laws) {
      sum += law.cumulativeHazard(age);
    }
    return sum;
  }

  /** By bisection to the last digit: below the least of the laws' own inverses. */
  @Override
  public double inverseCumulativeHazard(double hazard) {
    if (hazard <= 0) {
      return 0;
    }
    double high = Double.POSITIVE_INFINITY;
    for (Law law : laws) {
      high = Math.min(high, law.inverseCumulativeHazard(hazard));
    }
    if (Double.isInfinite(high)) {
      high = largestFiniteBracket(hazard);
    }
    double low = 0;
    while (true) {
      double middle = low + (high - low) / 2;
      if (middle <= low || middle >= high) {
        return high;
      }
      if (cumulativeHazard(middle) >= hazard) {
        high = middle;
      } else {
        low = middle;
      }
    }
  }

  /** A time at which the sum has reached the hazard, or infinity if it never does. */
  private double largestFiniteBracket(double hazard) {
    double high = 1;
    while (cumulativeHazard(high) < hazard) {
      high *= 2;
      if (Double.isInfinite(high)) {
        return high;
      }
    }
    return high;
  }

  @Override
  public double hazard(double age) {
    double sum = 0;
    for (Law law : laws) {
      sum += law.hazard(age);
    }
    return sum;
  }

  /** The integral of the survival function, by Gauss-Legendre quadrature over its quantiles. */
  @Override
  public double mean() {
    // E[T] = integral of H^-1(e) exp(-e) de; beyond e = 40 less than 1e-17 of the mass is left.
    return new IterativeLegendreGaussIntegrator(64, 1e-10, 1e-12)
        .integrate(1_000_000, e -> inverseCumulativeHazard(e) * StrictMath.exp(-e), 0, 40);
  }
}
