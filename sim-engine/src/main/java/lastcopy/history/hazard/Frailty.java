package lastcopy.history.hazard;

import java.util.Arrays;
import lastcopy.history.plan.CopyPlan;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Law;

/**
 * The frailty that drives of one batch share: a Gamma multiplier on their hazard with mean 1 and
 * variance v. Given that drives of a batch have survived cumulative hazards that add to A, it is
 * Gamma with shape 1/v and rate 1/v + A (Hougaard, Analysis of Multivariate Survival Data, 2000,
 * ch. 7).
 *
 * <p>That m drives of a batch fail within a short time goes with its m-th power z^m, so that losses
 * come from batches far frailer than most. Under a bias half of the histories therefore draw from
 * the density that is z^m times as dense, again a Gamma law, of shape 1/v + m; the likelihood ratio
 * of the mixture is at most 2, and keeps the weight of a loss bounded.
 */
public final class Frailty {

  /** Share of the histories under a bias in which a batch is drawn frail. */
  private static final double FRAIL = 0.5;

  /** Beyond so many failures others than of this batch will matter. */
  private static final int MOST_FAILURES = 6;

  private final Plan plan;
  private final Draws draws;
  private final Likelihood likelihood;
  private final double[] ofBatch;
  private final int[] failures;

  /** Of a layout's batches, with the luck of a history, as it falls. */
  public Frailty(Plan plan, Draws draws) {
    this(plan, draws, null);
  }

  /**
   * The same under a bias.
   *
   * @param likelihood keeps the likelihood ratio; null for no bias
   */
  public Frailty(Plan plan, Draws draws, Likelihood likelihood) {
    this.plan = plan;
    this.draws = draws;
    this.likelihood = likelihood;
    ofBatch = new double[plan.batches().length];
    failures = failures(plan);
  }

  /** By batch, how many of its drives fail before the copies that they belong to are gone. */
  private static int[] failures(Plan plan) {
    int[] failures = new int[plan.batches().length];
    for (int c = 0; c < plan.copies(); c++) {
      CopyPlan copy = plan.copy(c);
      int batch = plan.slot(copy.firstSlot()).batch();
      if (batch >= 0) {
        failures[batch] = Math.min(MOST_FAILURES, failures[batch] + copy.breaksIt());
      }
    }
    return failures;
  }

  /** Back to the start of a history. */
  public void clear() {
    Arrays.fill(ofBatch, Double.NaN);
  }

  /** The age at the start of a slot's first drive. */
  public double ageAtStart(SlotPlan slot) {
    return draws.remaining(slot.age(), 0, slot.key(Draws.AGE, 0));
  }

  /** The multiplier of a drive in service at the start; the ages of its batch are drawn with it. */
  public double atStart(SlotPlan slot) {
    int batch = slot.batch();
    if (batch < 0) {
      return 1;
    }
    if (Double.isNaN(ofBatch[batch])) {
      double survived = 0;
      for (int s = 0; s < plan.slots(); s++) {
        SlotPlan other = plan.slot(s);
        if (other.batch() == batch && other.enters() == 0) {
          Law law = other.life();
          survived += law.cumulativeHazard(ageAtStart(other));
        }
      }
      ofBatch[batch] = draw(plan.batches()[batch], slot.spread(), survived, failures[batch]);
    }
    return ofBatch[batch];
  }

  /** The multiplier of a drive that enters later at an age: a batch of its own. */
  public double later(SlotPlan slot, int generation, double age) {
    return slot.batch() < 0
        ? 1
        : draw(
            slot.key(Draws.FRAILTY, generation),
            slot.spread(),
            slot.life().cumulativeHazard(age),
            0);
  }

  private double draw(long key, double spread, double survived, int failures) {
    double shape = 1 / spread;
    if (likelihood == null || !likelihood.biasing() || failures == 0) {
      return draws.gamma(shape, key) / (shape + survived);
    }
    boolean frail = draws.uniform(Draws.key(key, 1, 0)) < FRAIL;
    double gamma = draws.gamma(frail ? shape + failures : shape, key);
    double denser = 1; // x^m Γ(k) / Γ(k + m), the quotient of the two densities
    for (int i = 0; i < failures; i++) {
      denser *= gamma / (shape + i);
    }
    likelihood.placed(1 / (1 - FRAIL + FRAIL * denser));
    return gamma / (shape + survived);
  }
}
