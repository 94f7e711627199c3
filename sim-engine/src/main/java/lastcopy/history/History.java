package lastcopy.history;

import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import lastcopy.footage.ShootTable;
import lastcopy.history.course.RandomShoots;
import lastcopy.history.course.ReckonedCourse;
import lastcopy.history.course.RecordedCourse;
import lastcopy.history.course.UndisturbedCourse;
import lastcopy.history.event.CourseTracker;
import lastcopy.history.hazard.Bias;
import lastcopy.history.hazard.Levels;
import lastcopy.history.hazard.PathStatistics;
import lastcopy.history.hazard.UnlikelyDraws;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Effect;
import lastcopy.history.plan.Plan;
import lastcopy.history.report.GivenUpException;
import lastcopy.history.report.HistoryListener;
import lastcopy.history.report.Ledger;
import lastcopy.history.screen.Screen;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;

/**
 * One simulated history after another of one layout; the number of a history decides it.
 *
 * <p>Two paths. The {@link Screen} decides quickly that nothing is lost, which is so in most
 * histories. Otherwise what happens is simulated event by event ({@link EventLoop}), and while
 * every copy holds what the undisturbed course says ({@link CourseTracker}), no offload and no feed
 * run is simulated.
 *
 * <p>Choices where the model leaves room:
 *
 * <ul>
 *   <li>a mishap of a place or box destroys the drives, so that all are new at the return, while
 *       drives that had not failed when a set lost one too many stay in use;
 *   <li>a working copy that starts empty is filled at time 0 from the copies that start full;
 *   <li>a continuous feed, or a refill, behind a copy that is itself being fed starts at quarters
 *       of an hour by the clock;
 *   <li>shoots that wait on cards do not count as standing in one copy, since they are not
 *       offloaded; a shoot that waited is kept on its cards from its offload on;
 *   <li>a shoot that meets a drive of the working shelf that is down waits as a whole, and all that
 *       come after it wait behind it, even if there is another drive for them, which still enters
 *       service when they are shot;
 *   <li>to an unusable copy people go on offloading, from an unusable working copy they go on
 *       deleting, and both that and malware travels with its feeds; what it is thought to lack,
 *       such as a new drive of a shelf, is still refilled;
 *   <li>a rotated drive whose source is gone when its turn is due is not brought; a feed from a
 *       rotated copy is from its first turn;
 *   <li>drives in service at the start have no latent defect then; drives of a copy that was gone
 *       come back without one;
 *   <li>an unusable copy is found when a refill would turn to it before any other, or when nothing
 *       else has what the working copy lacks; footage offloaded to an unusable working copy stands
 *       on its cards only;
 *   <li>what malware or a deletion took is back at once when it is noticed, where any copy holds
 *       it; the block of a deletion is where the working copy holds it;
 *   <li>mirrored pairs hold even shares of every stretch of footage: a rebuild reads the share of
 *       its pair from the partner, which alone is strained and whose hidden defects alone are met;
 *       a refill from pairs pays for bits in the shares that have no redundancy then; "no
 *       redundancy" is told while any pair lacks a drive;
 *   <li>in one batch drives of several models share one frailty, which multiplies each one's own
 *       hazard; a drive is replaced by one of its own model, and a shelf that outgrows its drives
 *       goes on with the last of its models;
 *   <li>a planned replacement at or below the age at which drives are bought never happens.
 * </ul>
 *
 * <p>One object is used by one thread.
 */
public final class History {

  private final Plan plan;
  private final Draws draws;
  private final EventLoop loop;
  private final Screen screen;

  /** The undisturbed course of all histories; null if there is none. */
  private final RecordedCourse recorded;

  /** The undisturbed course of one history after another; null if there is none. */
  private final ReckonedCourse reckoned;

  private final RandomShoots shoots;
  private final Levels levels;

  /** Plain histories of a layout under a seed. */
  public History(Studio studio, Layout layout, long seed) {
    this(studio, layout, seed, Bias.NONE);
  }

  /** Histories of a layout under a seed and a bias; each loss carries its weight. */
  public History(Studio studio, Layout layout, long seed, Bias bias) {
    this(studio, layout, seed, bias, true);
  }

  /** Without the course every history is simulated event by event, from the start. */
  History(Studio studio, Layout layout, long seed, Bias bias, boolean byCourse) {
    plan = Plan.of(studio, layout);
    draws = new Draws(seed);
    levels = Levels.of(plan);
    loop = new EventLoop(plan, draws);
    shoots = new RandomShoots(plan, draws);
    recorded = byCourse && plan.evenShoots() ? loop.recordCourse() : null;
    reckoned = byCourse && !plan.evenShoots() ? new ReckonedCourse(plan, draws) : null;
    bias(bias);
    screen = new Screen(plan, draws, course(), effects(), loop::step);
  }

  /** By copy, what all mechanisms together can do to it. */
  List<Set<Effect>> effects() {
    return IntStream.range(0, plan.copies())
        .mapToObj(c -> loop.mechanisms().effects(plan.copy(c)))
        .toList();
  }

  /** From the next history on, another bias. */
  public void bias(Bias to) {
    loop.mechanisms().clocks.bias(to, courseOfAll());
  }

  /**
   * Looks every so often, within a history too, whether to give up; without this call a history is
   * given up if its thread is interrupted.
   */
  public void giveUpWhen(BooleanSupplier asked) {
    loop.givesUpWhen(asked);
  }

  /** The undisturbed course; null if histories are simulated event by event. */
  UndisturbedCourse course() {
    return reckoned != null ? reckoned : recorded;
  }

  /** How many groups of sources a bias tells apart. */
  public int groups() {
    return plan.groups().count();
  }

  /** How many levels of trouble a bias tells apart. */
  public int levels() {
    return levels.count();
  }

  /** How many things are wrong at a level of trouble, the last number standing for more too. */
  public int depth(int level) {
    return levels.depth(level);
  }

  /** The largest factor by which the hazard of a group is worth biasing. */
  public double mostFactor(int group) {
    return plan.groups().mostFactor(group);
  }

  /** How many kinds of unlikely draws a ledger is told of. */
  public int channels() {
    return UnlikelyDraws.channels(plan);
  }

  /** What such a draw does when it comes out badly, in words. */
  public String channel(int index) {
    return UnlikelyDraws.words(plan, index);
  }

  /** What sources did in the last biased history up to its first loss, or to the horizon. */
  public PathStatistics statistics() {
    return loop.mechanisms().clocks.likelihood().statistics();
  }

  /** The names of the copies, in the order that happenings and snapshots count them. */
  public List<String> copyNames() {
    return IntStream.range(0, plan.copies()).mapToObj(c -> plan.copy(c).name()).toList();
  }

  /**
   * Simulates one history.
   *
   * @param number its number, at least 0
   * @param to told what happens
   * @throws GivenUpException if it was given up; what was told of it does not count
   */
  public void simulate(long number, Ledger to) {
    boolean plain = !loop.mechanisms().clocks.likelihood().biased();
    if (plain && !to.wantsTime() && screen.nothingIsLost(number)) {
      return;
    }
    draws.start(number);
    loop.audience().counts(to);
    UndisturbedCourse course = plain ? courseOfPlain(to.wantsTime()) : courseOfAll();
    if (plain && to.wantsTime() && course != null && screen.nothingHappens()) {
      loop.exposure().nothingHappens(course);
      loop.mechanisms().spending.nothingHappens();
      return;
    }
    loop.run(shoots(), course);
  }

  /** The course of the plain history of the draws, or null. */
  private UndisturbedCourse courseOfPlain(boolean withTime) {
    if (reckoned == null) {
      return recorded;
    }
    reckoned.begin();
    return reckoned.isWhole(withTime) ? reckoned : null;
  }

  /** What biased histories and stories leave and go back to: a course that all histories have. */
  private RecordedCourse courseOfAll() {
    return plan.copy(0).startsFull() ? recorded : null;
  }

  /**
   * Tells one history from its start to the horizon: the very history that {@link #simulate} counts
   * under that number.
   *
   * @param number its number, at least 0
   * @param to told everything that happens
   * @throws GivenUpException if it was given up
   */
  public void tell(long number, HistoryListener to) {
    draws.start(number);
    loop.audience().listens(to);
    loop.run(shoots(), courseOfAll());
  }

  private ShootTable shoots() {
    if (plan.evenShoots()) {
      return plan.shoots();
    }
    if (reckoned == null) {
      return shoots.until(plan.horizon());
    }
    reckoned.begin();
    return reckoned.shoots();
  }
}
