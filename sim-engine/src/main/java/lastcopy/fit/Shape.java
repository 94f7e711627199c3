package lastcopy.fit;

import lastcopy.number.Elementary;
import org.apache.commons.numbers.gamma.Erfcx;

/**
 * The standard distribution of z = (ln age − location) / scale: the shape of a law on the logarithm
 * of age. Everything is in logarithms, so that no tail is lost.
 */
enum Shape {

  /** Smallest extreme value: S(z) = exp(−exp z), so that the age is Weibull's. */
  WEIBULL {
    @Override
    double logDensity(double z) {
      return z - Elementary.exp(z);
    }

    @Override
    double logDensitySlope(double z) {
      return 1 - Elementary.exp(z);
    }

    @Override
    double logDensityBend(double z) {
      return -Elementary.exp(z);
    }

    @Override
    double logSurvival(double z) {
      return -Elementary.exp(z);
    }

    @Override
    double hazard(double z) {
      return Elementary.exp(z);
    }

    @Override
    double hazardSlope(double z, double hazard) {
      return hazard;
    }
  },

  /** Normal, so that the age is lognormal. */
  LOGNORMAL {
    @Override
    double logDensity(double z) {
      return -0.5 * z * z - HALF_LOG_TWO_PI;
    }

    @Override
    double logDensitySlope(double z) {
      return -z;
    }

    @Override
    double logDensityBend(double z) {
      return -1;
    }

    @Override
    double logSurvival(double z) {
      return z > -1
          ? Elementary.log(Erfcx.value(z / ROOT_TWO) / 2) - 0.5 * z * z
          : StrictMath.log1p(-Erfcx.value(-z / ROOT_TWO) / 2 * Elementary.exp(-0.5 * z * z));
    }

    /** The inverse of Mills' ratio. */
    @Override
    double hazard(double z) {
      return z > -1
          ? ROOT_TWO_OVER_PI / Erfcx.value(z / ROOT_TWO)
          : Elementary.exp(logDensity(z) - logSurvival(z));
    }

    @Override
    double hazardSlope(double z, double hazard) {
      return hazard * (hazard - z);
    }
  };

  private static final double ROOT_TWO = StrictMath.sqrt(2);
  private static final double ROOT_TWO_OVER_PI = StrictMath.sqrt(2 / Math.PI);
  private static final double HALF_LOG_TWO_PI = StrictMath.log(2 * Math.PI) / 2;

  /** ln f(z). */
  abstract double logDensity(double z);

  /** Its first derivative. */
  abstract double logDensitySlope(double z);

  /** Its second derivative. */
  abstract double logDensityBend(double z);

  /** ln S(z). */
  abstract double logSurvival(double z);

  /** f(z) / S(z): minus the derivative of ln S. */
  abstract double hazard(double z);

  /** The derivative of the hazard, where the hazard is known. */
  abstract double hazardSlope(double z, double hazard);
}
