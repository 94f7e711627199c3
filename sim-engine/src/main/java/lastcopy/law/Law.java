package lastcopy.law;

import lastcopy.number.Elementary;

/**
 * A law of a non-negative time: the life of a drive over its age, or a delay of a repair.
 *
 * <p>A law is deterministic: it knows no generator. Every draw in the engine is one inversion of
 * the cumulative hazard, T = H⁻¹(H(a) + E) − a with E a unit exponential, so that one uniform gives
 * one life whatever the law. Times and ages are in hours; hazards are per hour.
 *
 * <p>All laws are immutable. Transcendental functions are {@link Elementary}'s or StrictMath's, so
 * that a value is the same to the last digit on any machine.
 */
public sealed interface Law
    permits Exponential, Weibull, Fixed, Uniform, ByAge, Competing, Stretched, HazardWindow, Never {

  /**
   * The cumulative hazard H(t), the integral of the hazard from 0 to t.
   *
   * @param age a time in hours, at least 0
   * @return H(age), at least 0, non-decreasing; positive infinity once the time cannot be longer
   */
  double cumulativeHazard(double age);

  /**
   * The inverse of the cumulative hazard: the least t with H(t) at least {@code hazard}.
   *
   * @param hazard at least 0
   * @return a time in hours, or positive infinity if H never gets there
   */
  double inverseCumulativeHazard(double hazard);

  /** The hazard h(t) per hour at an age in hours; infinite at an atom. */
  double hazard(double age);

  /**
   * The hazard at an age of which the cumulative hazard is known, which may save reckoning.
   *
   * @param age in hours, at least 0
   * @param cumulative H(age)
   */
  default double hazard(double age, double cumulative) {
    return hazard(age);
  }

  /** The mean in hours, or positive infinity. */
  double mean();

  /** The survival function S(t) = exp(−H(t)). */
  default double survival(double age) {
    return Elementary.exp(-cumulativeHazard(age));
  }

  /**
   * The remaining life at an age for one unit-exponential deviate: H⁻¹(H(age) + deviate) − age.
   *
   * @param age hours already survived, at least 0
   * @param deviate a unit-exponential deviate, at least 0
   * @return hours from that age on, at least 0, or positive infinity
   */
  default double remaining(double age, double deviate) {
    return Math.max(0, inverseCumulativeHazard(cumulativeHazard(age) + deviate) - age);
  }
}
