package lastcopy.history.hazard;

import java.util.Arrays;
import lastcopy.history.plan.Draws;
import lastcopy.history.plan.Plan;
import lastcopy.history.plan.SlotPlan;
import lastcopy.law.Law;

/**
 * The frailty that drives of one batch share: a Gamma multiplier on their hazard with mean 1 and
 * variance v. Given that drives of a batch have survived cumulative hazards that add to A, it is
 * Gamma with shape 1/v and rate 1/v + A (Hougaard, Analysis of Multivariate Survival Data, 2000,
 * ch. 7).
 */
public final class Frailty {

  private final Plan plan;
  private final Draws draws;
  private final double[] ofBatch;

  /** Of a layout's batches, with the luck of a history. */
  public Frailty(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
    ofBatch = new double[plan.batches().length];
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
      ofBatch[batch] = draw(plan.batches()[batch], slot.spread(), survived);
    }
    return ofBatch[batch];
  }

  /** The multiplier of a drive that enters later at an age: a batch of its own. */
  public double later(SlotPlan slot, int generation, double age) {
    return slot.batch() < 0
        ? 1
        : draw(
            slot.key(Draws.FRAILTY, generation), slot.spread(), slot.life().cumulativeHazard(age));
  }

  private double draw(long key, double spread, double survived) {
    double shape = 1 / spread;
    return draws.gamma(shape, key) / (shape + survived);
  }
}
