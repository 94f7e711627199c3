package lastcopy.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.DriveModel;
import lastcopy.scenario.Medium;

/** What unlike drives in one set give away. */
final class SetRules {

  /** Below it an order of pairs is as good as the best, as far as anybody knows the rates. */
  private static final double WORTH_TELLING = 1.05;

  /** An order of so many drives is written out. */
  private static final int SHORT = 8;

  private SetRules() {}

  static void apply(Subject subject, CopyOutlook outlook) {
    outlook
        .copy()
        .driveSet()
        .ifPresent(
            set -> {
              idleRoom(subject, outlook.copy().id(), set);
              likeBesideLike(subject, outlook.copy().id(), set);
            });
  }

  /** In a set the smallest drive counts for each. */
  private static void idleRoom(Subject subject, String copy, Medium.DriveSet set) {
    double idle =
        set.models().stream().mapToDouble(drive -> drive.sizeBytes() - set.driveBytes()).sum();
    if (set.arrangement() != Arrangement.SHELF && idle > 0) {
      subject.warn(
          "idle-room",
          copy,
          "Its smallest drive, %s, counts for each: %s of the larger ones is never used. Drives of"
              + " one size use all they have.",
          Subject.bytes(set.driveBytes()),
          Subject.bytes(idle));
    }
  }

  /**
   * The rate at which a pair loses both is as the product of their hazards, and a sum of products
   * is least where the greatest meets the least (rearrangement inequality: Hardy, Littlewood,
   * Pólya, Inequalities, 1934, section 10.2).
   */
  private static void likeBesideLike(Subject subject, String copy, Medium.DriveSet set) {
    if (set.arrangement() != Arrangement.PAIRS) {
      return;
    }
    double horizon = subject.studio().horizonHours();
    List<DriveModel> best = best(set, horizon);
    double times = together(set, set.models(), horizon) / together(set, best, horizon);
    if (times > WORTH_TELLING && times < Double.POSITIVE_INFINITY) {
      subject.warn(
          "like-beside-like",
          copy,
          "Its pairs put drives that fail often side by side: both of a pair fail together about"
              + " %.1f times as often as if each stood beside a better one%s.",
          times,
          best.size() > SHORT
              ? ""
              : best.stream().map(DriveModel::id).collect(Collectors.joining(", ", " (", ")")));
    }
  }

  private static List<DriveModel> best(Medium.DriveSet set, double horizon) {
    List<DriveModel> sorted = new ArrayList<>(set.models());
    sorted.sort(Comparator.comparingDouble(drive -> hazard(set, drive, horizon)));
    List<DriveModel> pairs = new ArrayList<>();
    for (int i = 0; i < sorted.size() / 2; i++) {
      pairs.add(sorted.get(i));
      pairs.add(sorted.get(sorted.size() - 1 - i));
    }
    return pairs;
  }

  private static double together(Medium.DriveSet set, List<DriveModel> order, double horizon) {
    double sum = 0;
    for (int i = 0; i < order.size(); i += 2) {
      sum += hazard(set, order.get(i), horizon) * hazard(set, order.get(i + 1), horizon);
    }
    return sum;
  }

  private static double hazard(Medium.DriveSet set, DriveModel drive, double horizon) {
    return -StrictMath.log1p(-DriveChances.failsWithin(set, drive, horizon));
  }
}
