package lastcopy.benchmark;

import java.util.SplittableRandom;
import lastcopy.law.Law;

/**
 * A pair of drives by hand: each drive's failure time is drawn and kept; loss when both are down.
 */
final class PlainPair {

  private final Law life;
  private final Law repair;
  private final double horizon;
  private final SplittableRandom random = new SplittableRandom(1);

  PlainPair(Law life, Law repair, double horizon) {
    this.life = life;
    this.repair = repair;
    this.horizon = horizon;
  }

  /** Whether one history ends in a loss by the horizon. */
  boolean loses() {
    double a = draw(life);
    double b = draw(life);
    while (true) {
      double first = Math.min(a, b);
      double second = Math.max(a, b);
      if (first > horizon) {
        return false;
      }
      double whole = first + draw(repair);
      if (second <= whole) {
        return second <= horizon;
      }
      a = whole + draw(life);
      b = second;
    }
  }

  private double draw(Law law) {
    return law.inverseCumulativeHazard(-Math.log(1 - random.nextDouble()));
  }
}
