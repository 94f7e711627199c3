package lastcopy.outlook;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lastcopy.law.Competing;
import lastcopy.law.Law;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/** What is sure about the lives of the drives of a set. Hours. */
final class DriveChances {

  /** Equally likely values that stand for a law. */
  private static final int VALUES = 2_000;

  private DriveChances() {}

  /**
   * The chance that the likeliest to fail of the drives that are in service at the start fails by a
   * time, planned swaps taken into account. Drives of a batch share a Gamma frailty, conditioned on
   * all of it having lived so far.
   */
  static double failsWithin(Medium.DriveSet set, double hours) {
    return set.kinds().stream().mapToDouble(m -> failsWithin(set, m, hours)).max().orElseThrow();
  }

  /** The same of a drive of one of its models. */
  static double failsWithin(Medium.DriveSet set, DriveModel model, double hours) {
    return mean(model.age(), age -> failsWithin(set, model, age, hours));
  }

  private static double failsWithin(
      Medium.DriveSet set, DriveModel model, double age, double hours) {
    Law life = model.fails();
    double swap = set.replaceAtHours().orElse(Double.POSITIVE_INFINITY);
    double first = Math.min(hours, Math.max(0, swap - age));
    double lived = life.cumulativeHazard(age);
    double hazard = life.cumulativeHazard(age + first) - lived;
    double survives = survives(set, lived, hazard);
    double fresh = model.boughtAtHours();
    double span = swap - fresh;
    for (double left = hours - first; left > 0 && span > 0; left -= span) {
      double more =
          life.cumulativeHazard(fresh + Math.min(left, span)) - life.cumulativeHazard(fresh);
      survives *= survives(set, 0, more);
    }
    return 1 - survives;
  }

  /** Gamma frailty of mean 1 and variance v: (1 / (1 + v·H)) to the power of 1/v. */
  private static double survives(Medium.DriveSet set, double lived, double hazard) {
    double spread = set.batch().map(Medium.Batch::spread).orElse(0.0);
    if (spread == 0) {
      return StrictMath.exp(-hazard);
    }
    double rate = 1 / spread + set.drives() * lived;
    return StrictMath.pow(rate / (rate + hazard), 1 / spread);
  }

  /** The mean time until the first of some new drives fails; infinite if it may never. */
  static double untilFirst(List<Law> lives) {
    Law life = lives.get(0);
    if (!lives.stream().allMatch(life::equals)) {
      return new Competing(lives).mean();
    }
    return Double.isInfinite(life.mean())
        ? Double.POSITIVE_INFINITY
        : meanOfDeviates(e -> life.inverseCumulativeHazard(e / lives.size()));
  }

  private static double mean(Law law, DoubleUnaryOperator of) {
    return meanOfDeviates(e -> of.applyAsDouble(law.inverseCumulativeHazard(e)));
  }

  /** Over unit-exponential deviates. */
  private static double meanOfDeviates(DoubleUnaryOperator of) {
    double sum = 0;
    for (int i = 0; i < VALUES; i++) {
      sum += of.applyAsDouble(-StrictMath.log1p(-(i + 0.5) / VALUES));
    }
    return sum / VALUES;
  }
}
