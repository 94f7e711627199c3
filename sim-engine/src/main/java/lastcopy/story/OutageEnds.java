package lastcopy.story;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import lastcopy.history.report.Happening;
import lastcopy.history.report.Happening.Kind;

/** When what was struck in a told history is whole again. */
final class OutageEnds {

  private static final Set<Kind> HEALED = Set.of(Kind.NOTICED, Kind.DROPPED, Kind.LOST);

  private OutageEnds() {}

  /**
   * The end of the trouble that a moment begins, in hours from the start; NaN if it begins none.
   *
   * @param horizonHours what has no end by then lasts to it
   */
  static double end(List<Moment> moments, int i, double horizonHours) {
    Happening it = moments.get(i).happening();
    double end =
        switch (it.kind()) {
          case DRIVE_FAILED ->
              next(moments, i, m -> of(m, it, Kind.DRIVE_READY, Kind.COPY_GONE), it.until());
          case COPY_GONE -> refilled(moments, i, it);
          case SPOILT ->
              next(moments, i, m -> of(m, it, Kind.SPOIL_FOUND, Kind.COPY_GONE), Double.NaN);
          case DELETED, MALWARE -> next(moments, i, m -> HEALED.contains(m.kind()), it.until());
          default -> Double.NEGATIVE_INFINITY;
        };
    if (end == Double.NEGATIVE_INFINITY) {
      return Double.NaN;
    }
    return Double.isNaN(end) ? horizonHours : Math.min(end, horizonHours);
  }

  private static double refilled(List<Moment> moments, int i, Happening gone) {
    double back = Double.NaN;
    for (Moment later : moments.subList(i + 1, moments.size())) {
      if (of(later.happening(), gone, Kind.REFILLED)) {
        return later.hours();
      }
      if (of(later.happening(), gone, Kind.COPY_GONE)) {
        break;
      }
      if (Double.isNaN(back) && of(later.happening(), gone, Kind.COPY_BACK)) {
        back = later.hours();
      }
    }
    return back;
  }

  private static double next(
      List<Moment> moments, int i, Predicate<Happening> ends, double otherwise) {
    return moments.subList(i + 1, moments.size()).stream()
        .map(Moment::happening)
        .filter(ends)
        .findFirst()
        .map(Happening::hours)
        .orElse(otherwise);
  }

  /** One of some kinds, of the same copy; a drive that is ready must be the same drive. */
  private static boolean of(Happening later, Happening first, Kind... kinds) {
    boolean sameDrive = later.kind() != Kind.DRIVE_READY || later.drive() == first.drive();
    return List.of(kinds).contains(later.kind()) && later.copy() == first.copy() && sameDrive;
  }
}
