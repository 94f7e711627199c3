package lastcopy.fit;

import lastcopy.number.Elementary;

/**
 * The log-likelihood of records under a law whose logarithm of age has a location and a scale, by
 * location and ln scale.
 *
 * <p>A failure at age t gives ln f(t), one between a and b ln(S(a) − S(b)), a drive that still runs
 * ln S(t); each less ln S(entry), since only what ran then has a record. Densities are by age, as
 * in printed tables, not by its logarithm.
 */
final class LawLikelihood {

  private final Shape shape;
  private final double[] count;
  private final double[] logEntry;
  private final double[] logSeen;
  private final double[] logExit;
  private final boolean[] failed;

  LawLikelihood(Shape shape, Records lives) {
    this.shape = shape;
    int n = lives.distinct().size();
    count = new double[n];
    logEntry = new double[n];
    logSeen = new double[n];
    logExit = new double[n];
    failed = new boolean[n];
    for (int i = 0; i < n; i++) {
      LifeRecord life = lives.distinct().get(i).life();
      count[i] = lives.distinct().get(i).count();
      logEntry[i] = Elementary.log(life.entry());
      logSeen[i] = life.between() ? Elementary.log(life.lastSeen()) : Double.NaN;
      logExit[i] = Elementary.log(life.exit());
      failed[i] = life.failed();
    }
  }

  /** The value alone. */
  double value(double location, double logScale) {
    return at(location, logScale).value();
  }

  /** Value and derivatives. */
  Slopes at(double location, double logScale) {
    Sum sum = new Sum(1 / Elementary.exp(logScale));
    for (int i = 0; i < count.length; i++) {
      double exit = sum.z(logExit[i], location);
      if (!failed[i]) {
        survival(sum, exit, count[i]);
      } else if (Double.isNaN(logSeen[i])) {
        sum.constant(-(logScale + logExit[i]) * count[i], count[i]);
        sum.add(
            exit,
            count[i] * shape.logDensity(exit),
            count[i] * shape.logDensitySlope(exit),
            count[i] * shape.logDensityBend(exit));
      } else {
        between(sum, sum.z(logSeen[i], location), exit, count[i]);
      }
      if (logEntry[i] > Double.NEGATIVE_INFINITY) {
        survival(sum, sum.z(logEntry[i], location), -count[i]);
      }
    }
    return sum.slopes();
  }

  private void survival(Sum sum, double z, double count) {
    shape.tail(z, sum.tail);
    double hazard = sum.tail.hazard();
    double bend = shape.hazardSlope(z, hazard);
    sum.add(z, count * sum.tail.logSurvival(), -count * hazard, -count * bend);
  }

  /** ln(S(a) − S(b)); where the lower age is 0, S(a) is 1 and stays so. */
  private void between(Sum sum, double a, double b, double count) {
    boolean fromNew = a == Double.NEGATIVE_INFINITY;
    double survivalA = fromNew ? 0 : shape.logSurvival(a);
    double log = survivalA + logOneMinusExp(shape.logSurvival(b) - survivalA);
    double atB = Elementary.exp(shape.logDensity(b) - log);
    double atA = fromNew ? 0 : Elementary.exp(shape.logDensity(a) - log);
    sum.add(b, count * log, count * atB, count * atB * (shape.logDensitySlope(b) - atB));
    if (!fromNew) {
      sum.add(a, 0, -count * atA, -count * atA * (shape.logDensitySlope(a) + atA));
      sum.mixed(a, b, count * atA * atB);
    }
  }

  private static double logOneMinusExp(double x) {
    return x > -0.7 ? Elementary.log(-StrictMath.expm1(x)) : StrictMath.log1p(-Elementary.exp(x));
  }

  /** Adds up terms in z by the chain rule: dz/dlocation = −1/scale, dz/dlnscale = −z. */
  private static final class Sum {

    private final double inverse;
    private final Shape.Tail tail = new Shape.Tail();
    private double value;
    private double byLocation;
    private double byScale;
    private double locationTwice;
    private double both;
    private double scaleTwice;

    Sum(double inverse) {
      this.inverse = inverse;
    }

    double z(double log, double location) {
      return (log - location) * inverse;
    }

    /** A term that does not hang on z, of which the ln scale is minus the weight. */
    void constant(double term, double weight) {
      value += term;
      byScale -= weight;
    }

    void add(double z, double term, double first, double second) {
      value += term;
      byLocation -= first * inverse;
      byScale -= first * z;
      locationTwice += second * inverse * inverse;
      both += (second * z + first) * inverse;
      scaleTwice += (second * z + first) * z;
    }

    /** The second derivative by two different z. */
    void mixed(double a, double b, double second) {
      locationTwice += 2 * second * inverse * inverse;
      both += second * (a + b) * inverse;
      scaleTwice += 2 * second * a * b;
    }

    Slopes slopes() {
      return new Slopes(
          value,
          new double[] {byLocation, byScale},
          new double[] {locationTwice, both, scaleTwice});
    }
  }
}
