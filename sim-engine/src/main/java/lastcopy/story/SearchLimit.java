package lastcopy.story;

import java.time.Duration;
import java.util.Optional;

/**
 * How far a search goes.
 *
 * @param histories how many histories at most, from number 0 on, at least 1
 * @param time how long at most; with such a cap a slower machine may search fewer histories, but
 *     whatever is found is the same
 */
public record SearchLimit(long histories, Optional<Duration> time) {

  /** Checks the range. */
  public SearchLimit {
    if (histories < 1) {
      throw new IllegalArgumentException("histories must be at least 1: " + histories);
    }
  }

  /** So many histories, however long it takes. */
  public static SearchLimit histories(long most) {
    return new SearchLimit(most, Optional.empty());
  }
}
