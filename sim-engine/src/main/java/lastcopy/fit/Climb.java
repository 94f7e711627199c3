package lastcopy.fit;

import java.util.Optional;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds the greatest log-likelihood: Newton's method with steps that are shortened until they
 * climb; where it gets nowhere, a simplex first.
 */
final class Climb {

  private static final int MOST_STEPS = 100;
  private static final int MOST_HALVINGS = 40;

  /** Longest step in location and in ln scale: a factor of about seven, or three. */
  private static final double[] LONGEST = {2, 1};

  /** Beyond a shape of exp(7), about 1,100, or below one of 1/1,100, there is no peak. */
  private static final double STEEPEST = 7;

  /** Beyond it from where the records are, in ln age, there is none either. */
  private static final double FURTHEST = 60;

  /** A standard error of a logarithm above it is a likelihood that has become flat. */
  private static final double MOST_ERROR = 20;

  /** What a further step may still gain where this one was the last. */
  private static final double GAIN = 1e-14;

  private static final int MOST_EVALUATIONS = 2_000;
  private static final double[] START_SCALES = {-1.6, -0.8, 0, 0.8};

  private final LawLikelihood likelihood;
  private final double origin;

  /**
   * A climb.
   *
   * @param origin ln of an age of the order of the records' mean life
   */
  Climb(LawLikelihood likelihood, double origin) {
    this.likelihood = likelihood;
    this.origin = origin;
  }

  /** The peak, or nothing where the likelihood rises for ever, or to a plain. */
  Optional<Peak> peak() {
    return highest()
        .filter(peak -> peak.locationError() < MOST_ERROR && peak.logScaleError() < MOST_ERROR);
  }

  private Optional<Peak> highest() {
    Optional<Peak> found = newton(new double[] {origin, 0});
    if (found.isPresent()) {
      return found;
    }
    double[] start = start();
    return newton(start).or(() -> simplex(start).flatMap(this::newton));
  }

  /** The best of a coarse grid. */
  private double[] start() {
    double[] best = {origin, 0};
    double most = Double.NEGATIVE_INFINITY;
    for (double logScale : START_SCALES) {
      for (double shift = -1; shift <= 1; shift++) {
        double location = origin + shift * StrictMath.exp(logScale);
        double value = likelihood.value(location, logScale);
        if (value > most) {
          most = value;
          best = new double[] {location, logScale};
        }
      }
    }
    return best;
  }

  private Optional<Peak> newton(double[] start) {
    double[] at = start.clone();
    Slopes here = likelihood.at(at[0], at[1]);
    for (int i = 0; i < MOST_STEPS && here.finite(); i++) {
      double[] step = step(here);
      double gain = step[0] * here.first()[0] + step[1] * here.first()[1];
      if (here.concave() && gain < GAIN) {
        return Optional.of(new Peak(at[0], at[1], here));
      }
      Slopes there = climbed(at, here, step);
      if (there.value() <= here.value() || isFar(at)) {
        // No step climbs any more: either rounding is reached, or there is no peak.
        boolean done = here.concave() && gain < 1e-6 * (1 + Math.abs(here.value())) && !isFar(at);
        return done ? Optional.of(new Peak(at[0], at[1], here)) : Optional.empty();
      }
      here = there;
    }
    return Optional.empty();
  }

  /** Moves by the step, or by a part of it that climbs; stays if none does. */
  private Slopes climbed(double[] at, Slopes here, double[] step) {
    double part = 1;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      Slopes there = likelihood.at(at[0] + part * step[0], at[1] + part * step[1]);
      if (there.finite() && there.value() > here.value()) {
        at[0] += part * step[0];
        at[1] += part * step[1];
        return there;
      }
      part /= 2;
    }
    return here;
  }

  /** Newton's step, cut; where the surface does not bend down, as if it did a little. */
  private static double[] step(Slopes s) {
    double shift = s.concave() ? 0 : excess(s);
    double a = s.second()[0] - shift;
    double b = s.second()[1];
    double c = s.second()[2] - shift;
    double determinant = a * c - b * b;
    double[] step = {
      -(c * s.first()[0] - b * s.first()[1]) / determinant,
      -(a * s.first()[1] - b * s.first()[0]) / determinant
    };
    double over =
        Math.max(Math.abs(step[0]) / LONGEST[0], Math.max(Math.abs(step[1]) / LONGEST[1], 1));
    return new double[] {step[0] / over, step[1] / over};
  }

  /** More than the largest eigenvalue of the second derivatives. */
  private static double excess(Slopes s) {
    double half = (s.second()[0] - s.second()[2]) / 2;
    double root = StrictMath.sqrt(half * half + s.second()[1] * s.second()[1]);
    double largest = (s.second()[0] + s.second()[2]) / 2 + root;
    return largest + 0.1 * root + 1e-6 * (1 + Math.abs(largest));
  }

  private boolean isFar(double... at) {
    return Math.abs(at[1]) > STEEPEST || Math.abs(at[0] - origin) > FURTHEST;
  }

  private Optional<double[]> simplex(double... start) {
    try {
      PointValuePair best =
          new SimplexOptimizer(1e-9, 1e-9)
              .optimize(
                  new MaxEval(MOST_EVALUATIONS),
                  GoalType.MAXIMIZE,
                  new InitialGuess(start),
                  new NelderMeadSimplex(new double[] {0.5, 0.3}),
                  new ObjectiveFunction(this::finite));
      return isFar(best.getPoint()) ? Optional.empty() : Optional.of(best.getPoint());
    } catch (TooManyEvaluationsException e) {
      return Optional.empty();
    }
  }

  private double finite(double... at) {
    double value = isFar(at) ? Double.NaN : likelihood.value(at[0], at[1]);
    return Double.isFinite(value) ? value : -Double.MAX_VALUE;
  }
}
