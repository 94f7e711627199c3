package lastcopy.outlook.room;

import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Footage;

/** The most footage that there was to keep, over time, shoots evenly spaced. Bytes and hours. */
final class FootageCourse {

  private final ShootTable shoots;
  private final double keep;
  private final double[] peaks;

  private FootageCourse(ShootTable shoots, double keep, double[] peaks) {
    this.shoots = shoots;
    this.keep = keep;
    this.peaks = peaks;
  }

  /** Of footage that ages out as the studio says, or of a shelf, where nothing does. */
  static FootageCourse of(Footage footage, ShootTable shoots, boolean keepsAll) {
    double keep =
        keepsAll ? Double.POSITIVE_INFINITY : footage.keepHours().orElse(Double.POSITIVE_INFINITY);
    double[] peaks = new double[shoots.count()];
    double most = shoots.onHand();
    for (int k = 0; k < peaks.length; k++) {
      double since = shoots.time(k) - keep;
      double aged = since < 0 ? 0 : shoots.total(since);
      most = Math.max(most, shoots.end(k) - aged);
      peaks[k] = most;
    }
    return new FootageCourse(shoots, keep, peaks);
  }

  /** What there is to keep at a time. */
  double at(double hours) {
    return shoots.total(hours) - (hours < keep ? 0 : shoots.total(hours - keep));
  }

  /** The most until a time. */
  double most(double hours) {
    int shot = shoots.shotBy(hours);
    return shot == 0 ? shoots.onHand() : peaks[shot - 1];
  }

  /** The first time in hours at which there is more than a room; empty if not by the horizon. */
  OptionalDouble exceeds(double bytes) {
    if (shoots.onHand() > bytes) {
      return OptionalDouble.of(0);
    }
    int low = 0;
    int high = peaks.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (peaks[middle] > bytes) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low == peaks.length ? OptionalDouble.empty() : OptionalDouble.of(shoots.time(low));
  }
}
