package lastcopy.exact;

import java.util.Optional;
import lastcopy.law.Law;

/**
 * A single-parity group of drives with latent defects that scrubs find: how many failures fall
 * while another drive is down or has a defect (the double-disk failures of Elerath, Pecht, IEEE
 * Transactions on Computers 58(3), 2009). A defect that comes after the failure does not count.
 *
 * <p>Drives are taken as independent renewal processes. That leaves out only what a group does
 * after two drives were down at once, a share of the result of about the square of the chance to be
 * down.
 *
 * @param drives n, at least 2, all new at the start
 * @param life law of a drive's life
 * @param restore law of the time from a failure until the drive is whole again
 * @param meanToDefect mean of the exponential time to a drive's next defect, above 0
 * @param scrub law of the time until a defect is found and repaired, if ever
 */
public record ScrubbedGroup(
    int drives, Law life, Law restore, double meanToDefect, Optional<Law> scrub) {

  /** Checks the ranges. */
  public ScrubbedGroup {
    Parameters.that(drives >= 2, "drives must be at least 2", drives);
    Parameters.above(meanToDefect, "mean time to a defect");
  }

  /**
   * The expected number of such failures by a time.
   *
   * @param hours above 0
   * @param steps of the grid; a step of a tenth of a mean scrub gives about three digits
   */
  public double expectedLosses(double hours, int steps) {
    double step = hours / steps;
    double[] defective = defective(step, steps);
    DriveSlot slot = new DriveSlot(life::survival, life::survival, restore::survival, hours, steps);
    double[] clean =
        slot.chance(t -> life.survival(t) * (1 - defective[(int) Math.round(t / step)]));
    double sum = 0;
    for (int i = 1; i <= steps; i++) {
      double allClean = Math.pow((clean[i] + clean[i - 1]) / 2, drives - 1);
      sum += drives * slot.failuresIn(i) * (1 - allClean);
    }
    return sum;
  }

  /**
   * The chance q(t) that a drive in service since 0 has a defect alive: defects begin at rate (1 −
   * q)/mean and live until their scrub, q(t) = ∫ (1 − q(s))/mean · S(t − s) ds.
   */
  double[] defective(double step, int steps) {
    double[] alive = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      double since = i * step;
      alive[i] = scrub.map(law -> law.survival(since)).orElse(1.0);
    }
    double rate = step / meanToDefect;
    double[] q = new double[steps + 1];
    for (int i = 1; i <= steps; i++) {
      double known = rate * (alive[i] + 1) / 2;
      for (int j = 1; j < i; j++) {
        known += rate * alive[i - j] * (1 - q[j]);
      }
      q[i] = known / (1 + rate / 2);
    }
    return q;
  }
}
