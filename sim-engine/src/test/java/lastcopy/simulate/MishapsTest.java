package lastcopy.simulate;

import static lastcopy.simulate.Agreement.agrees;
import static lastcopy.simulate.Agreement.simulate;

import lastcopy.experiment.LayoutResult;
import lastcopy.law.Fixed;
import lastcopy.law.Never;
import lastcopy.scenario.Feed;
import lastcopy.scenario.Place;
import lastcopy.scenario.Rate;
import org.junit.jupiter.api.Test;

/** Mishaps of places and services, against thinned Poisson processes. */
class MishapsTest {

  private static final double YEARS = 3;
  private static final double HOURS = YEARS * 8_760;

  /** A yearly chance q over three years: 1 − (1 − q)³. Red if q is taken for the hazard. */
  @Test
  void serviceThatLosesACopy() {
    CopyMaker cloud = CopyMaker.service("cloud", Rate.ofYearlyProbability(0.15));
    agrees(simulate(Studios.archive(HOURS, cloud)).anyLoss(), 1 - Math.pow(0.85, YEARS));
  }

  @Test
  void fireTakesWhatIsAtThePlace() {
    Place studio = Studios.place("studio", Rate.ofYearlyProbability(0.1).perHour(), 1);
    LayoutResult result =
        simulate(Studios.archive(HOURS, idle("main").at(studio), far("second").at(studio)));
    agrees(result.anyLoss(), 1 - Math.pow(0.9, YEARS));
  }

  /** Each copy goes by itself: both with takes². Red if one draw serves both copies. */
  @Test
  void eachCopyGoesByItself() {
    Place studio = Studios.place("studio", 1e-4, 0.5);
    LayoutResult result =
        simulate(Studios.archive(HOURS, idle("main").at(studio), far("second").at(studio)));
    agrees(result.anyLoss(), -Math.expm1(-0.25 * 1e-4 * HOURS));
  }

  /**
   * Two places, and copies that come back after 500 h: at the first of two mishaps within 500 h of
   * each other. With both rates r and D = 500 h dead after each, struck while gone changing
   * nothing, the state (none gone, one gone) gives an alternating renewal process; at this horizon,
   * the chance is solved on a grid. Red if a mishap of one place takes a copy at another.
   */
  @Test
  void twoPlacesWithTimeToComeBack() {
    double rate = 1.0 / 4_000;
    double away = 500;
    LayoutResult result =
        simulate(
            Studios.archive(
                8_760,
                idle("main").at(Studios.place("studio", rate, 1)).arrival(new Fixed(away)),
                far("second").at(Studios.place("home", rate, 1)).arrival(new Fixed(away))));
    agrees(result.anyLoss(), lossOfTwo(rate, away, 8_760));
  }

  /**
   * Survival S(t) = e^(−2rt) + ∫ 2r e^(−2rs) g(t − s) ds, where after a first strike the other must
   * hold: g(u) = e^(−ru) for u below the time away, e^(−r·away) S(u − away) from then on.
   */
  private static double lossOfTwo(double rate, double away, int horizon) {
    double step = 1;
    int gap = (int) (away / step);
    int n = (int) (horizon / step);
    double[] survival = new double[n + 1];
    double[] after = new double[n + 1];
    double keep = Math.exp(-2 * rate * step);
    survival[0] = 1;
    after[0] = 1;
    double integral = 0;
    for (int i = 1; i <= n; i++) {
      after[i] = i < gap ? Math.exp(-rate * i * step) : Math.exp(-rate * away) * survival[i - gap];
      // The convolution moves on by one step: I(t + h) = e^(−2rh) I(t) + trapezium of the new part.
      integral = keep * integral + rate * step * (after[i] + keep * after[i - 1]);
      survival[i] = Math.exp(-2 * rate * i * step) + integral;
    }
    return 1 - survival[n];
  }

  private static CopyMaker idle(String id) {
    return CopyMaker.single(id, new Never());
  }

  private static CopyMaker far(String id) {
    return idle(id).fed("main", new Feed.Continuous(), CopyMaker.AT_ONCE);
  }
}
