package lastcopy.fit;

/**
 * One step of a survival curve: what is known at an age at which drives failed.
 *
 * @param from where the step begins: the same as {@code age} where ages at failure are known; else
 *     the curve falls somewhere between the two and the records do not say where
 * @param age where the step is down
 * @param atRisk how many drives ran just before, their records begun
 * @param failures how many failed at this age (of the whole estimate between {@code from} and
 *     {@code age}, where that is not known exactly: a mean, not a count)
 * @param survival the chance to be running after it
 * @param error its standard error (Greenwood, 1926), or NaN where there is none
 * @param low lower end of its interval, or NaN where there is none
 * @param high upper end, or NaN
 * @param cumulativeHazard the sum of failures over those at risk (Nelson, Aalen)
 * @param hazardError its standard error, the root of the sum of failures / atRisk², or NaN
 */
public record Step(
    double from,
    double age,
    double atRisk,
    double failures,
    double survival,
    double error,
    double low,
    double high,
    double cumulativeHazard,
    double hazardError) {

  /** The step of an age at failure that is known only to lie between two. */
  static Step between(double from, double age, double atRisk, double failures, double survival) {
    double none = Double.NaN;
    return new Step(from, age, atRisk, failures, survival, none, none, none, none, none);
  }
}
