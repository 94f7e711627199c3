package lastcopy.exact;

import lastcopy.law.Law;
import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * A set of like drives that nobody repairs: lost once more than m of the n have failed.
 *
 * @param drives n, at least 1
 * @param survives m, in [0, n)
 * @param life the law of a drive's life over its age
 * @param ageHours the age of all drives at the start, at least 0
 */
public record KOutOfN(int drives, int survives, Law life, double ageHours) {

  /** Checks the ranges. */
  public KOutOfN {
    Parameters.that(drives >= 1, "drives must be at least 1", drives);
    Parameters.that(
        survives >= 0 && survives < drives, "failures survived must be in [0, drives)", survives);
    Parameters.atLeastZero(ageHours, "age");
  }

  /**
   * The chance that one drive of that age fails within a time, 1 − S(age + t)/S(age).
   *
   * @param hours at least 0
   */
  public double oneFailsBy(double hours) {
    Parameters.atLeastZero(hours, "time");
    return -Math.expm1(life.cumulativeHazard(ageHours) - life.cumulativeHazard(ageHours + hours));
  }

  /**
   * The chance of loss by a time: the upper tail of the binomial of n drives, summed from its small
   * terms.
   *
   * @param hours at least 0
   */
  public double lossBy(double hours) {
    double fails = oneFailsBy(hours);
    double sum = 0;
    for (int down = drives; down > survives; down--) {
      sum +=
          CombinatoricsUtils.binomialCoefficientDouble(drives, down)
              * Math.pow(fails, down)
              * Math.pow(1 - fails, drives - down);
    }
    return sum;
  }
}
