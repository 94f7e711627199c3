package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Law;

/**
 * Latent defects: spots of a drive in service that have become unreadable, one after another, each
 * until a scrub finds it. They are reckoned only when somebody is about to meet them, so that they
 * cost a history nothing until then.
 *
 * <p>Under a bias the hazard of a defect is raised over the time before it is met, in proportion to
 * the chance that a scrub has not found it by then, so that one is alive in a quarter of the
 * histories in which that may cost something; the likelihood ratio is that of {@link Likelihood}.
 */
final class Defects {

  /** Defects met in a history, in the mean, when a bias has raised their hazard. */
  private static final double ALIVE = 0.3;

  private static final double HALF = StrictMath.log(2);

  /** Beyond so many halvings no scrub is that late. */
  private static final int HALVINGS = 60;

  private final HistoryState state;
  private final Plan plan;
  private final int[] generation;
  private final int[] count;
  private final double[] born;
  private final double[] mended;

  /** Under a bias: since when a drive is without a defect, until when that is known. */
  private final double[] clean;

  private final double[] known;

  /** Under a bias: what is left of the unit exponential until the next defect. */
  private final double[] budget;

  /** Where a defect is that has been met, as a uniform; NaN before. */
  private final double[] where;

  /** Failures in a history, at least 1, each of which may lead to a meeting. */
  private final double meetings;

  Defects(HistoryState state) {
    this.state = state;
    plan = state.plan;
    generation = new int[plan.slots];
    count = new int[plan.slots];
    born = new double[plan.slots];
    mended = new double[plan.slots];
    clean = new double[plan.slots];
    known = new double[plan.slots];
    budget = new double[plan.slots];
    where = new double[plan.slots];
    meetings = Arrays.stream(plan.defects).allMatch(law -> law == null) ? 1 : failures(plan);
  }

  private static double failures(Plan plan) {
    return Math.max(1, Arrays.stream(plan.life).mapToDouble(l -> plan.horizon / l.mean()).sum());
  }

  void clear() {
    Arrays.fill(born, Double.POSITIVE_INFINITY);
  }

  /** A drive begins to serve at a time, without a defect. */
  void begin(int slot, int drive, double from) {
    if (plan.defects[plan.copyOfSlot[slot]] != null) {
      generation[slot] = drive;
      count[slot] = 0;
      next(slot, from);
    }
  }

  /** A drive serves again, empty, after its copy was gone. */
  void again(int slot) {
    if (plan.defects[plan.copyOfSlot[slot]] != null) {
      count[slot]++;
      next(slot, state.now);
    }
  }

  private void next(int slot, double from) {
    where[slot] = Double.NaN;
    if (state.clocks.likelihood().biased()) {
      clean[slot] = from;
      known[slot] = from;
      budget[slot] = state.draws.budget(key(slot, Draws.DEFECT));
      born[slot] = Double.POSITIVE_INFINITY;
    } else {
      Law defect = plan.defects[plan.copyOfSlot[slot]];
      isBorn(slot, from + state.delay(defect, key(slot, Draws.DEFECT)));
    }
  }

  private void isBorn(int slot, double at) {
    born[slot] = at;
    mended[slot] = at + state.delay(plan.scrub[plan.copyOfSlot[slot]], key(slot, Draws.SCRUB));
  }

  private long key(int slot, int use) {
    return Draws.key(Draws.key(plan.slotSource[slot], use, generation[slot]), use, count[slot]);
  }

  /** Whether a drive has an unreadable spot now. */
  boolean alive(int slot) {
    bringToNow(slot);
    while (mended[slot] <= state.now && born[slot] <= state.now) {
      count[slot]++;
      next(slot, mended[slot]);
      bringToNow(slot);
    }
    boolean alive = born[slot] <= state.now;
    if (alive && Double.isNaN(where[slot])) {
      state.cameOutBadly(plan.shocks.length + plan.copyOfSlot[slot]);
    }
    return alive;
  }

  /** Under a bias the time of the next defect is known only so far. */
  private void bringToNow(int slot) {
    if (born[slot] == Double.POSITIVE_INFINITY
        && state.clocks.likelihood().biased()
        && known[slot] < state.now) {
      double raise = raise(slot);
      for (int k = raise > 0 ? halvings(slot, raise) : 0; k >= 0; k--) {
        double to = k == 0 ? state.now : state.now - scrubbed(slot, k);
        if (to > known[slot] && pass(slot, to, raise * StrictMath.pow(0.5, k))) {
          return;
        }
      }
    }
  }

  /** The hazard of a defect passes, raised; whether one is born. */
  private boolean pass(int slot, double to, double raise) {
    Law law = plan.defects[plan.copyOfSlot[slot]];
    Likelihood likelihood = state.clocks.likelihood();
    double age = known[slot] - clean[slot];
    double ran = hazard(slot, known[slot], to);
    if (budget[slot] <= (1 + raise) * ran) {
      double left = budget[slot] / (1 + raise);
      likelihood.raised(raise, left, true);
      isBorn(slot, known[slot] + law.remaining(age, left));
      return true;
    }
    likelihood.raised(raise, ran, false);
    budget[slot] -= (1 + raise) * ran;
    known[slot] = to;
    return false;
  }

  private double hazard(int slot, double from, double to) {
    Law law = plan.defects[plan.copyOfSlot[slot]];
    return law.cumulativeHazard(to - clean[slot]) - law.cumulativeHazard(from - clean[slot]);
  }

  /** By how much more, of itself, the hazard of a defect is raised that no scrub has found. */
  private double raise(int slot) {
    if (!state.clocks.likelihood().biasing() || !state.clocks.mayLoseNow()) {
      return 0;
    }
    double alive = 0;
    double to = state.now;
    for (int k = 1; k < HALVINGS && to > known[slot]; k++) {
      double from = Math.max(known[slot], state.now - scrubbed(slot, k));
      alive += hazard(slot, from, to) * StrictMath.pow(0.5, k - 1);
      to = from;
    }
    int copy = plan.copyOfSlot[slot];
    state.risk(plan.shocks.length + copy, Math.min(1, alive));
    double wanted = ALIVE / (plan.firstSlot[copy + 1] - plan.firstSlot[copy]) / meetings;
    return alive > 0 && alive < wanted ? wanted / alive - 1 : 0;
  }

  /** Halvings of the chance that no scrub has come, until a raise is less than the hazard. */
  private int halvings(int slot, double raise) {
    int k = 0;
    while (k < HALVINGS && raise * StrictMath.pow(0.5, k) > 1 && reaches(slot, k)) {
      k++;
    }
    return k;
  }

  private boolean reaches(int slot, int k) {
    return state.now - (k == 0 ? 0 : scrubbed(slot, k)) > known[slot];
  }

  /** Hours after which a scrub has not come with a chance of 2^−k. */
  private double scrubbed(int slot, int k) {
    return plan.scrub[plan.copyOfSlot[slot]].inverseCumulativeHazard(k * HALF);
  }

  /** Key of where the spot is that is alive now. */
  long spot(int slot) {
    return key(slot, Draws.DEFECT_SPOT);
  }

  /** Where the spot was put that is alive now, as a uniform; NaN if it has not been. */
  double where(int slot) {
    return where[slot];
  }

  void where(int slot, double uniform) {
    where[slot] = uniform;
  }
}
