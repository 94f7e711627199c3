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
    void tail(double z, Tail tail) {
      tail.hazard = Elementary.exp(z);
      tail.logSurvival = -tail.hazard;
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

    /** The hazard is the inverse of Mills' ratio. */
    @Override
    void tail(double z, Tail tail) {
      if (z > -1) {
        tail.hazard = ROOT_TWO_OVER_PI / Erfcx.value(z / ROOT_TWO);
        tail.logSurvival = logDensity(z) - Elementary.log(tail.hazard);
      } else {
        double bell = Elementary.exp(-0.5 * z * z);
        double failed = Erfcx.value(-z / ROOT_TWO) / 2 * bell;
        tail.hazard = bell * ROOT_TWO_OVER_PI / 2 / (1 - failed);
        tail.logSurvival = StrictMath.log1p(-failed);
      }
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

  /** ln S(z) and the hazard f(z) / S(z), which is minus its derivative. */
  abstract void tail(double z, Tail tail);

  /** ln S(z). */
  final double logSurvival(double z) {
    Tail tail = new Tail();
    tail(z, tail);
    return tail.logSurvival;
  }

  /** The derivative of the hazard, where the hazard is known. */
  abstract double hazardSlope(double z, double hazard);

  /** Two results at once, since one costs as much as both. */
  static final class Tail {
    private double logSurvival;
    private double hazard;

    double logSurvival() {
      return logSurvival;
    }

    double hazard() {
      return hazard;
    }
  }
}
