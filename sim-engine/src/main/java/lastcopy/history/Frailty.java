package lastcopy.history;

import java.util.Arrays;
import lastcopy.law.Law;

/**
 * The frailty that drives of one batch share: a Gamma multiplier on their hazard with mean 1 and
 * variance v. Given that drives of a batch have survived cumulative hazards that add to A, it is
 * Gamma with shape 1/v and rate 1/v + A (Hougaard, Analysis of Multivariate Survival Data, 2000,
 * ch. 7).
 */
final class Frailty {

  private final Plan plan;
  private final Draws draws;
  private final double[] ofBatch;

  Frailty(Plan plan, Draws draws) {
    this.plan = plan;
    this.draws = draws;
    ofBatch = new double[plan.batchSource.length];
  }

  void clear() {
    Arrays.fill(ofBatch, Double.NaN);
  }

  /** The age at the start of a slot's first drive. */
  double ageAtStart(int slot) {
    return draws.remaining(plan.age[slot], 0, Draws.key(plan.slotSource[slot], Draws.AGE, 0));
  }

  /** The multiplier of a drive in service at the start; the ages of its batch are drawn with it. */
  double atStart(int slot) {
    int batch = plan.batchOf[slot];
    if (batch < 0) {
      return 1;
    }
    if (Double.isNaN(ofBatch[batch])) {
      double survived = 0;
      for (int s = 0; s < plan.slots; s++) {
        if (plan.batchOf[s] == batch && plan.enters[s] == 0) {
          Law law = plan.life[s];
          survived += law.cumulativeHazard(ageAtStart(s));
        }
      }
      ofBatch[batch] = draw(plan.batchSource[batch], plan.spread[slot], survived);
    }
    return ofBatch[batch];
  }

  /** The multiplier of a drive that enters later at an age: a batch of its own. */
  double later(int slot, int generation, double age) {
    return plan.batchOf[slot] < 0
        ? 1
        : draw(
            Draws.key(plan.slotSource[slot], Draws.FRAILTY, generation),
            plan.spread[slot],
            plan.life[slot].cumulativeHazard(age));
  }

  private double draw(long key, double spread, double survived) {
    double shape = 1 / spread;
    return draws.gamma(shape, key) / (shape + survived);
  }
}
