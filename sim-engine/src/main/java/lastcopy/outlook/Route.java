package lastcopy.outlook;

import java.util.Comparator;
import java.util.List;

/**
 * A way on which footage moves, and the part of it that can do least.
 *
 * @param kind feed, rebuild or refill
 * @param from the id of the copy that it reads
 * @param bytesPerSecond the rate that the simulation uses
 * @param slowest the part that can do least
 */
public record Route(Kind kind, String from, double bytesPerSecond, Part slowest) {

  /** What the way is for. */
  public enum Kind {
    /** New footage to a fed copy. */
    FEED("feed"),
    /** A replaced drive of a set. */
    REBUILD("rebuild"),
    /** A copy that was gone. */
    REFILL("refill");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word for text and files. */
    public String word() {
      return word;
    }
  }

  /**
   * A part of a way.
   *
   * @param name what it is, such as {@code drive desk-8tb}
   * @param bytesPerSecond what it can do
   */
  public record Part(String name, double bytesPerSecond) {}

  /** The slowest of the parts; the first of equals. */
  static Part slowestOf(List<Part> parts) {
    return parts.stream()
        .min(Comparator.comparingDouble(Part::bytesPerSecond))
        .orElseThrow(() -> new IllegalArgumentException("a way has at least one part"));
  }

  /** Whether the rate used is more than some part on the way can do. */
  public boolean overstated() {
    return bytesPerSecond > slowest.bytesPerSecond();
  }
}
