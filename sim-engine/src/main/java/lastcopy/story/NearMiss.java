package lastcopy.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lastcopy.history.report.Happening.Kind;
import lastcopy.history.report.Snapshot;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Medium;

/**
 * How near a history came to a loss: after something was struck, so much footage, at least half of
 * what a copy holds, stood in that copy only, for so long, with so many failures between it and its
 * loss.
 *
 * <p>Nearer is: fewer further failures; then the sooner that copy was struck after all was safe
 * again; then more bytes times hours. The hours count to the earliest end of what was then struck;
 * what stood in one copy is taken at the strike.
 *
 * @param moment the strike after which it was so, an index into the moments of the story
 * @param copy the copy that held it alone, an index into the copies of the story
 * @param bytes how much stood in that copy only
 * @param hours for how long
 * @param escapedBy how many hours after all was safe again that copy was struck; infinite if it was
 *     not
 * @param failures how many more failures in that copy would have lost it, at least 1
 */
public record NearMiss(
    int moment, int copy, double bytes, double hours, double escapedBy, int failures) {

  /** Less than this share of what a copy holds is the newest, which a feed has yet to carry. */
  private static final double LEAST_SHARE = 0.5;

  /** The nearest to a loss comes first. */
  static final Comparator<NearMiss> NEAREST_FIRST =
      Comparator.comparingInt(NearMiss::failures)
          .thenComparingDouble(NearMiss::escapedBy)
          .thenComparingDouble(p -> -p.bytes() * p.hours());

  /**
   * The nearest that a history came to a loss.
   *
   * @param horizonHours where the history ends
   * @return empty if no such amount stood in one copy only after something was struck
   */
  static Optional<NearMiss> nearest(List<Copy> copies, List<Moment> moments, double horizonHours) {
    List<NearMiss> all = new ArrayList<>();
    List<Double> ends = new ArrayList<>();
    for (int i = 0; i < moments.size(); i++) {
      double now = moments.get(i).hours();
      double end = OutageEnds.end(moments, i, horizonHours);
      if (end > now) {
        ends.removeIf(earlier -> earlier <= now);
        ends.add(end);
        double safe = ends.stream().mapToDouble(d -> d).min().orElse(end);
        at(copies, moments, i, safe - now).ifPresent(all::add);
      }
    }
    return all.stream().min(NEAREST_FIRST);
  }

  private static Optional<NearMiss> at(
      List<Copy> copies, List<Moment> moments, int i, double hours) {
    int last = i;
    while (last + 1 < moments.size()
        && moments.get(last + 1).hours() == moments.get(i).hours()
        && moments.get(last + 1).kind() != Kind.END) {
      last++;
    }
    Snapshot scene = moments.get(last).scene();
    int holder = fullest(scene);
    double bytes = inOneCopy(scene, holder);
    if (!(bytes > 0) || bytes < LEAST_SHARE * scene.heldBytes()[holder]) {
      return Optional.empty();
    }
    int survives = copies.get(holder).driveSet().map(Medium.DriveSet::survives).orElse(0);
    int failures = Math.max(1, survives - scene.drivesDown()[holder] + 1);
    double escaped = nextStrike(moments, i, holder) - moments.get(i).hours() - hours;
    return Optional.of(
        new NearMiss(
            i, holder, bytes, hours, escaped <= 0 ? Double.POSITIVE_INFINITY : escaped, failures));
  }

  /** When a copy goes or a drive of it fails next, in hours from the start; infinite if never. */
  private static double nextStrike(List<Moment> moments, int after, int copy) {
    return moments.subList(after + 1, moments.size()).stream()
        .filter(m -> m.kind() == Kind.COPY_GONE || m.kind() == Kind.DRIVE_FAILED)
        .filter(m -> m.happening().copy() == copy)
        .mapToDouble(Moment::hours)
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static int fullest(Snapshot scene) {
    int fullest = 0;
    for (int c = 1; c < scene.heldBytes().length; c++) {
      fullest = scene.heldBytes()[c] > scene.heldBytes()[fullest] ? c : fullest;
    }
    return fullest;
  }

  /**
   * What stands in one copy only. Scenes on the undisturbed course do not count it; there each copy
   * holds what another does and more, so that it is what the fullest has before the next.
   */
  private static double inOneCopy(Snapshot scene, int fullest) {
    double next = 0;
    for (int c = 0; c < scene.heldBytes().length; c++) {
      if (scene.gone()[c]) {
        return scene.bareBytes();
      }
      next = c == fullest ? next : Math.max(next, scene.heldBytes()[c]);
    }
    return Math.max(scene.bareBytes(), scene.heldBytes()[fullest] - next);
  }
}
