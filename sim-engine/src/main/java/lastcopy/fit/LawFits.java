package lastcopy.fit;

import java.util.Optional;
import lastcopy.fit.Profile.Ends;
import lastcopy.interval.Estimate;
import lastcopy.interval.EventRates;
import lastcopy.number.Elementary;

/** Fits laws with a location and a scale of ln age. */
final class LawFits {

  private final Records lives;
  private final double confidence;
  private final double origin;

  /** For records with at least one failure. */
  LawFits(Records lives, double confidence) {
    this.lives = lives;
    this.confidence = confidence;
    this.origin = Elementary.log(lives.timeAtRisk() / lives.failures());
  }

  /** Weibull's law, or nothing where its likelihood has no peak. */
  Optional<WeibullFit> weibull() {
    LawLikelihood likelihood = new LawLikelihood(Shape.WEIBULL, lives);
    return new Climb(likelihood, origin).peak().map(peak -> weibull(likelihood, peak));
  }

  private WeibullFit weibull(LawLikelihood likelihood, Peak peak) {
    Ends logScale = Profile.of(likelihood, peak, 0, confidence);
    Ends logInverse = Profile.of(likelihood, peak, 1, confidence);
    return new WeibullFit(
        estimate(-peak.logScale(), new Ends(-logInverse.high(), -logInverse.low())),
        estimate(peak.location(), logScale),
        peak.logScaleError(),
        peak.locationError(),
        peak.slopes().value());
  }

  /** The lognormal law, or nothing where its likelihood has no peak. */
  Optional<LognormalFit> lognormal() {
    LawLikelihood likelihood = new LawLikelihood(Shape.LOGNORMAL, lives);
    return new Climb(likelihood, origin).peak().map(peak -> lognormal(likelihood, peak));
  }

  private LognormalFit lognormal(LawLikelihood likelihood, Peak peak) {
    return new LognormalFit(
        estimate(peak.location(), Profile.of(likelihood, peak, 0, confidence)),
        estimate(peak.logScale(), Profile.of(likelihood, peak, 1, confidence)),
        peak.locationError(),
        peak.logScaleError(),
        peak.slopes().value());
  }

  /** A constant hazard: Weibull's law of shape 1. */
  Optional<ExponentialFit> exponential() {
    LawLikelihood likelihood = new LawLikelihood(Shape.WEIBULL, lives);
    return lives.between() ? searched(likelihood) : Optional.of(counted(likelihood));
  }

  /** Where ages at failure are known only the failures and the time at risk matter. */
  private ExponentialFit counted(LawLikelihood likelihood) {
    Estimate rate = EventRates.of((double) lives.failures(), lives.timeAtRisk(), confidence);
    Estimate mean = new Estimate(1 / rate.value(), 1 / rate.high(), 1 / rate.low(), true);
    double error = mean.value() / StrictMath.sqrt((double) lives.failures());
    return new ExponentialFit(mean, error, likelihood.value(origin, 0));
  }

  /** Newton's method on ln mean: concave there. */
  private Optional<ExponentialFit> searched(LawLikelihood likelihood) {
    double at = origin;
    Slopes here = likelihood.at(at, 0);
    for (int i = 0; i < 100 && Math.abs(here.first()[0]) > 1e-10 * lives.failures(); i++) {
      double step = here.second()[0] < 0 ? -here.first()[0] / here.second()[0] : -1;
      at += Math.max(-1, Math.min(1, step));
      here = likelihood.at(at, 0);
    }
    if (!here.finite() || Math.abs(at - origin) > 30) {
      return Optional.empty();
    }
    double error = StrictMath.sqrt(-1 / here.second()[0]);
    Ends ends = Profile.of(a -> likelihood.value(a, 0), at, here.value(), error, confidence);
    Estimate mean = estimate(at, ends);
    return Optional.of(new ExponentialFit(mean, error * mean.value(), here.value()));
  }

  /** From logarithms; the end of an interval is never on the wrong side by rounding. */
  private static Estimate estimate(double log, Ends ends) {
    double value = Elementary.exp(log);
    return new Estimate(
        value,
        Math.min(value, Elementary.exp(ends.low())),
        Math.max(value, Elementary.exp(ends.high())),
        true);
  }
}
