package lastcopy.story;

import java.util.OptionalLong;
import lastcopy.interval.Estimate;
import lastcopy.interval.Proportions;

/**
 * A search for the first history that loses anything.
 *
 * @param number of that history; empty if none was found
 * @param searched how many histories were searched, from number 0 on
 * @param finished false if the search was interrupted
 */
public record LossSearch(OptionalLong number, long searched, boolean finished) {

  /**
   * What the search says of the chance of any loss if it found none: the one-sided limit.
   *
   * @param confidence in (0, 1)
   */
  public Estimate chanceIfNone(double confidence) {
    return Proportions.of(0, Math.max(1, searched), confidence);
  }
}
