package lastcopy.simulate.rare;

import lastcopy.experiment.Method;
import lastcopy.experiment.Settings;
import lastcopy.interval.MeanTally;
import lastcopy.simulate.count.Goal;
import lastcopy.simulate.count.LossTally;

/**
 * Decides, from counts only and so the same on any machine, whether biased histories of a layout
 * are worth their while.
 */
public final class Pilot {

  /** Plain histories of the pilot: those that exposure comes from. */
  public static final long HISTORIES = LossTally.TIMED_HISTORIES;

  /** So many plain histories, a second of work, are not worth tuning anything. */
  private static final double PATIENCE = 2e6;

  /**
   * A biased history, full of events, costs as much as so many plain ones, most of them screened.
   */
  private static final double COST = 100;

  /** One loss in so many plain histories is not rare. */
  private static final long COMMON = 20;

  private final Settings settings;
  private final Goal goal;
  private final LossTally plain;

  public Pilot(Settings settings, LossTally plain) {
    this.settings = settings;
    goal = Goal.of(settings);
    this.plain = plain;
  }

  /** Whether to tune at all. */
  public boolean triesRare() {
    return switch (settings.method()) {
      case PLAIN -> false;
      case RARE -> true;
      case AUTO -> isRare() && plainNeeds() > patience();
    };
  }

  /**
   * Whether to count biased histories, now that it is known how well they do; and also how well
   * plain ones would, of which the pilot has seen too few to know how uneven their losses are.
   */
  public boolean takesRare(Tuning.Tuned tuned) {
    return pays(goal.needs(tuned.anyVariance(), tuned.bytesVariance()), tuned);
  }

  /** The same where it is known better how many biased histories it takes. */
  boolean pays(double histories, Tuning.Tuned tuned) {
    double plainNeeds = goal.needs(tuned.plainAnyVariance(), tuned.plainBytesVariance());
    return settings.method() == Method.RARE || histories * cost() < plainNeeds;
  }

  /** Losses that are common gain little by a bias, and pairing with other layouts is lost by it. */
  private boolean isRare() {
    return plain.losses() * COMMON < plain.histories();
  }

  private double patience() {
    return Math.min(PATIENCE, (double) settings.histories().orElse(Long.MAX_VALUE));
  }

  /** Where histories are rationed, one is as dear as another. */
  private double cost() {
    return settings.histories().isPresent() ? 1 : COST;
  }

  private double plainNeeds() {
    double any = plain.histories() / (plain.losses() + 0.5);
    MeanTally bytes = plain.bytes();
    double spread =
        bytes.nonZero() == 0 ? any : plain.histories() * (bytes.sumSquares() / square(bytes.sum()));
    return goal.needs(any, spread);
  }

  private static double square(double x) {
    return x * x;
  }
}
