package lastcopy.law;

import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Competing risks: whichever law comes first. Cumulative hazards add up, which gives the bathtub
 * curve from a falling and a rising hazard.
 *
 * <p>One deviate gives one life, as for every law: the sum is inverted, not each law, so that a
 * factor on the hazard is a factor on all of it. A table of the sum, made once, leads to within
 * 1e-7 of the inverse, and a step of Newton's method to its last digits; where that is not so (at
 * an atom, a jump of the hazard, a flat stretch, beyond the table) the inverse is searched.
 */
public final class Competing implements Law {

  private static final int NEWTON_STEPS = 20;
  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  /** Beyond it less than 1e-17 of the mass is left. */
  private static final double LAST_HAZARD = 40;

  private static final int HALVINGS = 60;
  private static final int STRETCHES = 8;

  /** Newton's method squares an error that is small: 1e-7 becomes some 1e-14. */
  private static final double CLOSE = 1e-7;

  private static final int FEW_STEPS = 4;

  private final List<Law> laws;
  private final Law[] law;
  private final HazardTable table;

  /**
   * The sum of laws.
   *
   * @param laws at least one
   */
  public Competing(List<Law> laws) {
    if (laws.isEmpty()) {
      throw new IllegalArgumentException("a sum of laws needs at least one law");
    }
    this.laws = List.copyOf(laws);
    law = laws.toArray(new Law[0]);
    table = new HazardTable(this);
  }

  /** The laws as given. */
  public List<Law> laws() {
    return laws;
  }

  @Override
  public double cumulativeHazard(double age) {
    double sum = 0;
    for (Law each : law) {
      sum += each.cumulativeHazard(age);
    }
    return sum;
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    int cell = table.cell(hazard);
    if (cell < 0) {
      return search(hazard);
    }
    double low = table.age(cell);
    double high = table.age(cell + 1);
    double guess = table.guess(cell, hazard);
    for (int i = 0; i < FEW_STEPS && guess >= low && guess <= high; i++) {
      double reached = 0;
      double slope = 0;
      for (Law each : law) {
        double part = each.cumulativeHazard(guess);
        reached += part;
        slope += each.hazard(guess, part);
      }
      double step = (hazard - reached) / slope;
      guess += step;
      if (Math.abs(step) <= CLOSE * guess) {
        return guess;
      }
    }
    return search(hazard);
  }

  /**
   * By Newton's method kept inside a bracket, then bisection to the last digit. The time is at most
   * the least of the laws' own inverses.
   */
  private double search(double hazard) {
    if (hazard <= 0) {
      return 0;
    }
    double high = Double.POSITIVE_INFINITY;
    for (Law each : law) {
      high = Math.min(high, each.inverseCumulativeHazard(hazard));
    }
    if (Double.isInfinite(high)) {
      high = largestFiniteBracket(hazard);
    }
    return Double.isInfinite(high) ? high : solve(hazard, high);
  }

  private double solve(double hazard, double upper) {
    double low = 0;
    double high = upper;
    double guess = upper;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      double excess = cumulativeHazard(guess) - hazard;
      if (excess >= 0) {
        high = Math.min(high, guess);
      } else {
        low = Math.max(low, guess);
      }
      double next = guess - excess / hazard(guess);
      if (Math.abs(next - guess) <= 4 * Math.ulp(guess)) {
        break;
      }
      // Outside the bracket or no number (an atom, a flat stretch): halve instead.
      guess = next > low && next < high ? next : low + (high - low) / 2;
    }
    double margin = 16 * Math.ulp(guess);
    if (guess - margin > low && cumulativeHazard(guess - margin) < hazard) {
      low = guess - margin;
    }
    if (guess + margin < high && cumulativeHazard(guess + margin) >= hazard) {
      high = guess + margin;
    }
    return bisect(hazard, low, high);
  }

  private double bisect(double hazard, double from, double to) {
    double low = from;
    double high = to;
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
    for (Law each : law) {
      sum += each.hazard(age);
    }
    return sum;
  }

  /**
   * The integral of the survival function, by Gauss-Legendre quadrature in stretches that halve
   * towards 0, where a falling hazard is steep.
   */
  @Override
  public double mean() {
    double end = inverseCumulativeHazard(LAST_HAZARD);
    if (Double.isInfinite(end)) {
      return end;
    }
    double sum = 0;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double width = end / 2 / STRETCHES;
      for (int i = 0; i < STRETCHES; i++) {
        double from = end / 2 + i * width;
        sum += GAUSS.legendre(16, from, from + width).integrate(this::survival);
      }
      end /= 2;
    }
    return sum + end; // what is left is too short for anything to happen in it
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Competing sum && laws.equals(sum.laws);
  }

  @Override
  public int hashCode() {
    return laws.hashCode();
  }

  @Override
  public String toString() {
    return "Competing" + laws;
  }
}
