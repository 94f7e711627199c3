package lastcopy.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lastcopy.interval.Estimate;
import lastcopy.interval.EventRates;

/**
 * All that some records say.
 *
 * @param lives the records
 * @param rate failures per unit of time at risk, with its interval; after none "at most"
 * @param steps the survival curve: Kaplan-Meier's, or Turnbull's if {@link Records#between}
 * @param exponential empty if nothing failed, or if the likelihood has no peak; so are the others
 * @param weibull empty if all failed at one age, say
 * @param lognormal likewise
 * @param piecewise by year of age
 */
public record Fitted(
    Records lives,
    Estimate rate,
    List<Step> steps,
    Optional<ExponentialFit> exponential,
    Optional<WeibullFit> weibull,
    Optional<LognormalFit> lognormal,
    Optional<PiecewiseFit> piecewise) {

  private static final int MOST_YEARS = 30;

  /** Copies the list. */
  public Fitted {
    steps = List.copyOf(steps);
  }

  /**
   * Fits every law.
   *
   * @param year how long a year is in the unit of the records
   * @param confidence of intervals, in (0, 1)
   */
  public static Fitted of(Records lives, double year, double confidence) {
    Estimate rate = EventRates.of((double) lives.failures(), lives.timeAtRisk(), confidence);
    if (lives.failures() == 0) {
      return new Fitted(
          lives,
          rate,
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
    LawFits fits = new LawFits(lives, confidence);
    Optional<ExponentialFit> exponential = fits.exponential();
    return new Fitted(
        lives,
        exponential.map(ExponentialFit::rate).orElse(rate),
        lives.between() ? Turnbull.of(lives) : KaplanMeier.of(lives, confidence),
        exponential,
        fits.weibull(),
        fits.lognormal(),
        Optional.of(Pieces.of(lives, year, MOST_YEARS, confidence)));
  }

  /** The laws that were fitted. */
  public List<FittedLaw> laws() {
    List<FittedLaw> laws = new ArrayList<>();
    exponential.ifPresent(laws::add);
    weibull.ifPresent(laws::add);
    lognormal.ifPresent(laws::add);
    piecewise.ifPresent(laws::add);
    return laws;
  }

  /** Failures and hazards by stretches of age of any width, thirty at most. */
  public static PiecewiseFit byAge(Records lives, double width, double confidence) {
    return Pieces.of(lives, width, MOST_YEARS, confidence);
  }

  /** The points of a probability plot, one for each step that is not all the way down. */
  public List<PlotPoint> plot() {
    List<PlotPoint> points = new ArrayList<>();
    double before = 1;
    for (Step step : steps) {
      double failed = 1 - (before + step.survival()) / 2;
      if (failed > 0 && failed < 1) {
        points.add(new PlotPoint(step.age(), failed));
      }
      before = step.survival();
    }
    return points;
  }
}
