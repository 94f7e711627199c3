package lastcopy.history.hazard;

import java.util.stream.IntStream;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.kernel.SimulationClock;
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
public final class Defects {

  /** Defects met in a history, in the mean, when a bias has raised their hazard. */
  private static final double ALIVE = 0.3;

  private static final double HALF = StrictMath.log(2);

  /** Beyond so many halvings no scrub is that late. */
  private static final int HALVINGS = 60;

  private final Draws draws;
  private final SimulationClock time;
  private final Clocks clocks;
  private final Likelihood likelihood;
  private final UnlikelyDraws unlikely;

  /** By slot; null where drives have none. */
  private final LatentDefect[] defect;

  /** Failures in a history, at least 1, each of which may lead to a meeting. */
  private final double meetings;

  /** The defects of a layout's drives. */
  public Defects(
      Plan plan, Draws draws, SimulationClock time, Clocks clocks, UnlikelyDraws unlikely) {
    this.draws = draws;
    this.time = time;
    this.clocks = clocks;
    likelihood = clocks.likelihood();
    this.unlikely = unlikely;
    defect = new LatentDefect[plan.slots()];
    boolean any = false;
    for (int s = 0; s < defect.length; s++) {
      SlotPlan slot = plan.slot(s);
      if (plan.copyOf(slot).set().defects() != null) {
        defect[s] = new LatentDefect(slot, plan.copyOf(slot).set());
        any = true;
      }
    }
    meetings = any ? failures(plan) : 1;
  }

  private static double failures(Plan plan) {
    return Math.max(
        1,
        IntStream.range(0, plan.slots())
            .mapToDouble(s -> plan.horizon() / plan.slot(s).life().mean())
            .sum());
  }

  /** Back to the start of a history. */
  public void clear() {
    for (LatentDefect each : defect) {
      if (each != null) {
        each.born = Double.POSITIVE_INFINITY;
      }
    }
  }

  /** A drive begins to serve at a time, without a defect. */
  public void begin(int slot, int drive, double from) {
    LatentDefect d = defect[slot];
    if (d != null) {
      d.generation = drive;
      d.count = 0;
      next(d, from);
    }
  }

  /** A drive serves again, empty, after its copy was gone. */
  public void again(int slot) {
    LatentDefect d = defect[slot];
    if (d != null) {
      d.count++;
      next(d, time.now());
    }
  }

  private void next(LatentDefect d, double from) {
    d.met = 0;
    if (likelihood.biased()) {
      d.clean = from;
      d.known = from;
      d.budget = draws.budget(d.key(Draws.DEFECT));
      d.born = Double.POSITIVE_INFINITY;
    } else {
      isBorn(d, from + draws.remaining(d.set.defects(), 0, d.key(Draws.DEFECT)));
    }
  }

  private void isBorn(LatentDefect d, double at) {
    d.born = at;
    d.mended = at + draws.remaining(d.set.scrub(), 0, d.key(Draws.SCRUB));
  }

  /** Whether a drive has an unreadable spot now. */
  public boolean alive(int slot) {
    LatentDefect d = defect[slot];
    bringToNow(d);
    while (d.isMended(time.now())) {
      d.count++;
      next(d, d.mended);
      bringToNow(d);
    }
    boolean alive = d.isAlive(time.now());
    if (alive && d.met == 0) {
      unlikely.cameOutBadly(unlikely.defectsOf(d.slot.copy()));
    }
    return alive;
  }

  /** Under a bias the time of the next defect is known only so far. */
  private void bringToNow(LatentDefect d) {
    if (d.born == Double.POSITIVE_INFINITY && likelihood.biased() && d.known < time.now()) {
      double raise = raise(d);
      for (int k = raise > 0 ? halvings(raise) : 0; k >= 0; k--) {
        double to = k == 0 ? time.now() : time.now() - scrubbed(d, k);
        if (to > d.known && pass(d, to, raise * StrictMath.pow(0.5, k))) {
          return;
        }
      }
    }
  }

  /** The hazard of a defect passes, raised; whether one is born. */
  private boolean pass(LatentDefect d, double to, double raise) {
    Law law = d.set.defects();
    double age = d.known - d.clean;
    double ran = d.hazard(d.known, to);
    if (d.budget <= (1 + raise) * ran) {
      double left = d.budget / (1 + raise);
      likelihood.raised(raise, left, true);
      isBorn(d, d.known + law.remaining(age, left));
      return true;
    }
    likelihood.raised(raise, ran, false);
    d.budget -= (1 + raise) * ran;
    d.known = to;
    return false;
  }

  /** By how much more, of itself, the hazard of a defect is raised that no scrub has found. */
  private double raise(LatentDefect d) {
    if (!likelihood.biasing() || !clocks.mayLoseNow()) {
      return 0;
    }
    double alive = 0;
    double to = time.now();
    for (int k = 1; k < HALVINGS && to > d.known; k++) {
      double from = Math.max(d.known, time.now() - scrubbed(d, k));
      alive += d.hazard(from, to) * StrictMath.pow(0.5, k - 1);
      to = from;
    }
    unlikely.risk(unlikely.defectsOf(d.slot.copy()), Math.min(1, alive));
    double wanted = ALIVE / d.set.together() / meetings;
    return alive > 0 && alive < wanted ? wanted / alive - 1 : 0;
  }

  /** Halvings of the chance that no scrub has come, until a raise is less than the hazard. */
  private static int halvings(double raise) {
    int k = 0;
    while (k < HALVINGS && raise * StrictMath.pow(0.5, k) > 1) {
      k++;
    }
    return k;
  }

  /** Hours after which a scrub has not come with a chance of 2^−k. */
  private static double scrubbed(LatentDefect d, int k) {
    return d.set.scrub().inverseCumulativeHazard(k * HALF);
  }

  /** Key of where the spots are that the defect costs which is alive now. */
  public long spot(int slot) {
    return defect[slot].key(Draws.DEFECT_SPOT);
  }

  /** The defect that is alive now is met; how often it was before. */
  public int countMeeting(int slot) {
    return defect[slot].met++;
  }
}
