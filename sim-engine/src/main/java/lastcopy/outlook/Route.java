package lastcopy.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/**
 * A way on which footage moves, and the part of it that can do least.
 *
 * @param kind feed, rebuild or refill
 * @param from the id of the copy that it reads
 * @param bytesPerSecond the rate that the simulation uses
 * @param slowest the part that can do least
 * @param parts all parts, a stated rate first
 * @param stated whether a rate is stated, which is then taken as it is
 */
public record Route(
    Kind kind, String from, double bytesPerSecond, Part slowest, List<Part> parts, boolean stated) {

  /** Copies the list. */
  public Route {
    parts = List.copyOf(parts);
  }

  /** A way over parts, the first of which is the rate that is stated, if one is. */
  static Route over(
      Kind kind, String from, double bytesPerSecond, List<Part> parts, boolean stated) {
    return new Route(kind, from, bytesPerSecond, slowestOf(parts), parts, stated);
  }

  /** The same way for another end. */
  Route as(Kind other) {
    return new Route(other, from, bytesPerSecond, slowest, parts, stated);
  }

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

  /** The drives of a copy and its box, where their speeds are known. */
  public static List<Part> hardware(Copy copy) {
    List<Part> parts = new ArrayList<>();
    copy.driveSet().map(Medium.DriveSet::kinds).stream()
        .flatMap(List::stream)
        .forEach(model -> parts.add(new Part("drive " + model.id(), model.speed())));
    copy.box()
        .ifPresent(
            box ->
                box.bytesPerSecond()
                    .ifPresent(speed -> parts.add(new Part("box " + box.id(), speed))));
    return parts;
  }

  /** The slowest of the parts; the first of equals. */
  public static Part slowestOf(List<Part> parts) {
    return parts.stream()
        .min(Comparator.comparingDouble(Part::bytesPerSecond))
        .orElseThrow(() -> new IllegalArgumentException("a way has at least one part"));
  }

  /** Whether the rate used is more than some part on the way can do. */
  public boolean overstated() {
    return bytesPerSecond > slowest.bytesPerSecond();
  }
}
