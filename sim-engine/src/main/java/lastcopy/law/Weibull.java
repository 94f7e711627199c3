package lastcopy.law;

import lastcopy.number.Elementary;
import org.apache.commons.math3.special.Gamma;

/**
 * Weibull's law with a location: H(t) = ((t − location)/scale)^shape from the location on, 0
 * before.
 *
 * @param shape above 0; below 1 the hazard falls with age, above 1 it rises
 * @param scale in hours, above 0
 * @param location in hours, at least 0: nothing ends before it
 */
public record Weibull(double shape, double scale, double location) implements Law {

  /** Checks the ranges. */
  public Weibull {
    Domain.above(shape, 0, "shape");
    Domain.above(scale, 0, "scale");
    Domain.atLeast(location, 0, "location");
  }

  @Override
  public double cumulativeHazard(double age) {
    return age <= location ? 0 : Elementary.pow((age - location) / scale, shape);
  }

  @Override
  public double inverseCumulativeHazard(double hazard) {
    return location + scale * Elementary.pow(hazard, 1 / shape);
  }

  @Override
  public double hazard(double age) {
    return age < location ? 0 : shape / scale * Elementary.pow((age - location) / scale, shape - 1);
  }

  @Override
  public double hazard(double age, double cumulative) {
    return age > location ? shape * cumulative / (age - location) : hazard(age);
  }

  @Override
  public double mean() {
    return location + scale * Gamma.gamma(1 + 1 / shape);
  }
}
