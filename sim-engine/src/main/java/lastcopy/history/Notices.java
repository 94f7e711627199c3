package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Fixed;
import lastcopy.law.Law;
import lastcopy.scenario.Periodic;

/**
 * When somebody notices what disappeared at the desk. That it is noticed only after the last copy
 * has dropped it may be very unlikely, and nothing but this one draw makes it likelier. So under a
 * bias some notices are drawn from what the law is beyond a time at which copies may drop it, with
 * the likelihood ratio of the two densities: beyond h of cumulative hazard the law is e^h times as
 * dense as the law itself. The ratio is never above 1/(1 − share), whatever the law.
 */
final class Notices {

  /** Share of a history's notices that are drawn late, where one is expected in a history. */
  private static final double LATE = 0.3;

  /** Cumulative hazards beyond which a notice is likely anyway, or too unlikely to matter. */
  private static final double LEAST = 0.7;

  private static final double MOST = 60;

  private final HistoryState state;

  /** By shock, cumulative hazards of its notice by the times at which copies may drop. */
  private final double[][] beyond;

  private final double[] share;

  /** By shock, the cumulative hazard of its notice by the time the last copy drops. */
  private final double[] last;

  Notices(HistoryState state) {
    this.state = state;
    Plan plan = state.plan;
    beyond = new double[plan.shocks.length][];
    share = new double[beyond.length];
    last = new double[beyond.length];
    double longest = Arrays.stream(plan.keepsDeleted).max().orElseThrow();
    for (int i = 0; i < beyond.length; i++) {
      Law law = law(plan, plan.shocks[i]);
      beyond[i] = law == null || law instanceof Fixed ? new double[0] : beyond(plan, law);
      last[i] = beyond[i].length == 0 ? 0 : law.cumulativeHazard(longest);
      share[i] = LATE / Math.max(1, plan.shocks[i].perHour() * plan.horizon);
    }
  }

  /** The law of a shock's notice; null if it has none. */
  private static Law law(Plan plan, ShockProcess shock) {
    return switch (shock.kind()) {
      case DELETION -> plan.studio.desk().deletion().orElseThrow().noticed();
      case MALWARE -> plan.studio.desk().malware().orElseThrow().noticed();
      default -> null;
    };
  }

  private static double[] beyond(Plan plan, Law law) {
    double[] times = new double[3 * plan.copies];
    for (int c = 0; c < plan.copies; c++) {
      double keeps = plan.keepsDeleted[c];
      double lag = lag(plan, c);
      times[3 * c] = keeps;
      times[3 * c + 1] = keeps + lag / 2;
      times[3 * c + 2] = keeps + lag;
    }
    return Arrays.stream(times)
        .filter(time -> time < plan.horizon)
        .map(law::cumulativeHazard)
        .filter(hazard -> hazard > LEAST && hazard < MOST)
        .sorted()
        .distinct()
        .toArray();
  }

  /** Hours after which what disappeared at the desk has surely been due to reach a copy. */
  private static double lag(Plan plan, int copy) {
    double hours = 0;
    for (int c = copy; plan.ways[c] != null; c = plan.ways[c].source()) {
      hours += plan.ways[c].due().map(Periodic::every).orElse(0.0);
    }
    return hours;
  }

  /**
   * Hours until a strike is noticed.
   *
   * @param key of draws that are used for nothing else
   */
  double delay(int shock, long key) {
    Law law = law(state.plan, state.plan.shocks[shock]);
    double[] hazards = beyond[shock];
    if (hazards.length == 0 || !state.clocks.likelihood().biasing()) {
      return state.delay(law, key);
    }
    if (last[shock] < MOST) {
      state.risk(shock, StrictMath.exp(-last[shock]));
    }
    double late = share[shock];
    double which = state.draws.uniform(Draws.key(key, 1, 0)) / late * hazards.length;
    double from = which <= hazards.length ? hazards[(int) Math.ceil(which) - 1] : 0;
    double hazard = from + state.draws.budget(key);
    double density = 1 - late;
    for (double each : hazards) {
      density += hazard >= each ? late / hazards.length * StrictMath.exp(each) : 0;
    }
    state.clocks.likelihood().placed(1 / density);
    if (hazard >= last[shock]) {
      state.cameOutBadly(shock);
    }
    return law.remaining(0, hazard);
  }
}
