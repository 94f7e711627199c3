package lastcopy.story;

import java.util.Optional;

/**
 * What a search keeps of a history in which something happened that was not planned.
 *
 * @param number of the history
 * @param happenings how many such things happened
 * @param lostBytes all that it lost; 0 if it lost nothing
 * @param peril the nearest that it came to a loss, for one that lost nothing
 */
public record Life(long number, long happenings, double lostBytes, Optional<NearMiss> peril) {

  /** Whether it lost anything. */
  public boolean lost() {
    return lostBytes > 0;
  }
}
