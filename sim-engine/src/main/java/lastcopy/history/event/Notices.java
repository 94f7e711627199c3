package lastcopy.history.event;

import java.util.Arrays;
import lastcopy.history.hazard.Likelihood;
import lastcopy.history.hazard.UnlikelyDraws;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.ShockProcess;
import lastcopy.law.Fixed;
import lastcopy.law.Law;

/**
 * When somebody notices what disappeared at the desk. That it is noticed only after the last copy
 * has dropped it may be very unlikely, and nothing but this one draw makes it likelier. So under a
 * bias some notices are drawn from what the law is beyond a time at which copies may drop it, with
 * the likelihood ratio of the two densities: beyond h of cumulative hazard the law is e^h times as
 * dense as the law itself. The ratio is never above 1/(1 − share), whatever the law.
 */
public final class Notices {

  /** Share of a history's notices that are drawn late, where one is expected in a history. */
  private static final double LATE = 0.3;

  /** Cumulative hazards beyond which a notice is likely anyway, or too unlikely to matter. */
  private static final double LEAST = 0.7;

  private static final double MOST = 60;

  private final Draws draws;
  private final Likelihood likelihood;
  private final UnlikelyDraws unlikely;

  /** By shock, cumulative hazards of its notice by the times at which copies may drop. */
  private final double[][] beyond;

  private final double[] share;

  /** By shock, the cumulative hazard of its notice by the time the last copy drops. */
  private final double[] last;

  /** Notices of a layout's shocks at the desk. */
  public Notices(Plan plan, Draws draws, Likelihood likelihood, UnlikelyDraws unlikely) {
    this.draws = draws;
    this.likelihood = likelihood;
    this.unlikely = unlikely;
    beyond = new double[plan.shocks()][];
    share = new double[beyond.length];
    last = new double[beyond.length];
    double longest = 0;
    for (int c = 0; c < plan.copies(); c++) {
      longest = Math.max(longest, plan.copy(c).keepsDeleted());
    }
    for (int i = 0; i < beyond.length; i++) {
      Law law = plan.shock(i).noticed();
      beyond[i] = law == null || law instanceof Fixed ? new double[0] : beyond(plan, law);
      last[i] = beyond[i].length == 0 ? 0 : law.cumulativeHazard(longest);
      share[i] = LATE / Math.max(1, plan.shock(i).perHour() * plan.horizon());
    }
  }

  private static double[] beyond(Plan plan, Law law) {
    double[] times = new double[3 * plan.copies()];
    for (int c = 0; c < plan.copies(); c++) {
      double keeps = plan.copy(c).keepsDeleted();
      double lag = lag(plan, plan.copy(c));
      times[3 * c] = keeps;
      times[3 * c + 1] = keeps + lag / 2;
      times[3 * c + 2] = keeps + lag;
    }
    return Arrays.stream(times)
        .filter(time -> time < plan.horizon())
        .map(law::cumulativeHazard)
        .filter(hazard -> hazard > LEAST && hazard < MOST)
        .sorted()
        .distinct()
        .toArray();
  }

  /** Hours after which what disappeared at the desk has surely been due to reach a copy. */
  private static double lag(Plan plan, CopyPlan copy) {
    double hours = 0;
    for (CopyPlan c = copy; c.way() != null; c = plan.copy(c.way().source())) {
      hours += c.way().everyHours();
    }
    return hours;
  }

  /**
   * Hours until a strike is noticed.
   *
   * @param key of draws that are used for nothing else
   */
  public double delay(ShockProcess shock, long key) {
    int i = shock.index();
    double[] hazards = beyond[i];
    if (hazards.length == 0 || !likelihood.biasing()) {
      return draws.remaining(shock.noticed(), 0, key);
    }
    if (last[i] < MOST) {
      unlikely.risk(i, StrictMath.exp(-last[i]));
    }
    double late = share[i];
    double which = draws.uniform(Draws.key(key, 1, 0)) / late * hazards.length;
    double from = which <= hazards.length ? hazards[(int) Math.ceil(which) - 1] : 0;
    double hazard = from + draws.budget(key);
    double density = 1 - late;
    for (double each : hazards) {
      density += hazard >= each ? late / hazards.length * StrictMath.exp(each) : 0;
    }
    likelihood.placed(1 / density);
    if (hazard >= last[i]) {
      unlikely.cameOutBadly(i);
    }
    return shock.noticed().remaining(0, hazard);
  }
}
