package lastcopy.fit;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Intervals by profile likelihood: all values of a parameter at which, the other at its best, twice
 * the log-likelihood is below its peak by at most the quantile of chi-square with one degree of
 * freedom (Wilks, Annals of Mathematical Statistics 9, 1938; e.g. Meeker, Escobar, Statistical
 * Methods for Reliability Data, 1998, chapter 8).
 */
final class Profile {

  /** Further than this many standard errors, or this far in a logarithm, an end is open. */
  private static final double MOST_ERRORS = 1e3;

  private static final double FURTHEST = 40;
  private static final double WIDENING = 1.5;
  private static final int MOST_EVALUATIONS = 200;
  private static final int MOST_STEPS = 60;

  /** What a step may still gain where it is left out, as a share of the log-likelihood. */
  private static final double GAIN = 1e-13;

  private Profile() {}

  /** The ends of an interval; infinite where the records do not bound it. */
  record Ends(double low, double high) {}

  /** The interval of the location (0) or the ln scale (1). */
  static Ends of(LawLikelihood likelihood, Peak peak, int along, double confidence) {
    Ridge ridge = new Ridge(likelihood, peak, along);
    double best = along == 0 ? peak.location() : peak.logScale();
    double error = along == 0 ? peak.locationError() : peak.logScaleError();
    return of(ridge::best, best, peak.slopes().value(), error, confidence);
  }

  /** The interval of a parameter of which the profile is known. */
  static Ends of(
      DoubleUnaryOperator profile, double best, double most, double error, double confidence) {
    double quantile = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
    DoubleUnaryOperator excess =
        at -> StrictMath.sqrt(2 * Math.max(0, most - profile.applyAsDouble(at))) - quantile;
    return new Ends(
        end(excess, -quantile, best, -error * quantile),
        end(excess, -quantile, best, error * quantile));
  }

  private static double end(DoubleUnaryOperator excess, double atBest, double best, double step) {
    double inner = best;
    double atInner = atBest;
    double outer = best + step;
    double atOuter = excess.applyAsDouble(outer);
    while (!(atOuter > 0)) {
      inner = outer;
      atInner = atOuter;
      outer = best + WIDENING * (outer - best);
      if (Math.abs(outer - best) > Math.min(FURTHEST, MOST_ERRORS * Math.abs(step))) {
        return Math.signum(step) * Double.POSITIVE_INFINITY;
      }
      atOuter = excess.applyAsDouble(outer);
    }
    return root(excess, inner, atInner, outer, atOuter);
  }

  /** The root of deviance is nearly linear: false position begins next to the end. */
  private static double root(
      DoubleUnaryOperator excess, double inner, double atInner, double outer, double atOuter) {
    boolean finite = Double.isFinite(atOuter);
    double share = finite ? Math.max(1e-3, Math.min(0.999, atInner / (atInner - atOuter))) : 0.5;
    UnivariateFunction known =
        at -> at == inner ? atInner : at == outer ? atOuter : excess.applyAsDouble(at);
    return new BracketingNthOrderBrentSolver(1e-10, 1e-9, 1e-7, 5)
        .solve(
            MOST_EVALUATIONS,
            known,
            Math.min(inner, outer),
            Math.max(inner, outer),
            inner + share * (outer - inner));
  }

  /**
   * The best log-likelihood at each value of one parameter, the other followed from value to value.
   */
  private static final class Ridge {

    private final LawLikelihood likelihood;
    private final int along;
    private final double peakAt;
    private final double peakOther;
    private final double slope;

    Ridge(LawLikelihood likelihood, Peak peak, int along) {
      this.likelihood = likelihood;
      this.along = along;
      this.peakAt = along == 0 ? peak.location() : peak.logScale();
      this.peakOther = along == 0 ? peak.logScale() : peak.location();
      this.slope = peak.ridge(along);
    }

    double best(double at) {
      double other = peakOther + Math.max(-3, Math.min(3, slope * (at - peakAt)));
      Slopes here = slopes(at, other);
      if (!here.finite()) {
        other = peakOther;
        here = slopes(at, other);
      }
      for (int i = 0; i < MOST_STEPS && here.finite(); i++) {
        double first = here.first()[1 - along];
        double second = here.second()[2 * (1 - along)];
        double step = second < 0 ? -first / second : Math.signum(first);
        step = Math.max(-1.5, Math.min(1.5, step));
        if (Math.abs(step * first) < GAIN * (1 + Math.abs(here.value()))) {
          break;
        }
        Slopes there = slopes(at, other + step);
        while (!(there.finite() && there.value() > here.value()) && Math.abs(step) > 1e-9) {
          step /= 2;
          there = slopes(at, other + step);
        }
        if (!(there.value() > here.value())) {
          break;
        }
        other += step;
        here = there;
      }
      return here.finite() ? here.value() : Double.NEGATIVE_INFINITY;
    }

    private Slopes slopes(double at, double other) {
      return along == 0 ? likelihood.at(at, other) : likelihood.at(other, at);
    }
  }
}
