package lastcopy.outlook.room;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Units;

/** When a set of drives outgrows its fill limit, again and again, and what it takes then. */
final class DriveCalendar {

  /**
   * A rounding error beyond a limit is within it; more than that of {@link Arrangement#drivesFor}.
   */
  private static final double SLACK = 1 + 1e-11;

  private final Medium.DriveSet set;
  private final FootageCourse course;
  private final double fill;

  DriveCalendar(Medium.DriveSet set, FootageCourse course, double fill) {
    this.set = set;
    this.course = course;
    this.fill = fill;
  }

  /**
   * In the order of time; of a shelf only those drives of its list stand there at the start that
   * what is on hand takes.
   */
  List<DriveDue> dues() {
    List<DriveDue> dues = new ArrayList<>();
    int listed = set.drives();
    int drives = isShelf() ? Math.min(listed, needed(course.most(0)).orElse(listed)) : listed;
    OptionalDouble at = course.exceeds(limit(drives));
    while (at.isPresent()) {
      double most = course.most(at.getAsDouble());
      OptionalInt more = needed(most);
      dues.add(new DriveDue(at.getAsDouble() / Units.HOURS_PER_YEAR, more, most / fill));
      at = more.isPresent() ? course.exceeds(limit(more.getAsInt())) : OptionalDouble.empty();
    }
    return dues;
  }

  private boolean isShelf() {
    return set.arrangement() == Arrangement.SHELF;
  }

  /** How much so many drives may hold. */
  private double limit(int drives) {
    double room = 0;
    if (isShelf()) {
      int listed = Math.min(drives, set.drives());
      for (int i = 0; i < listed; i++) {
        room += set.model(i).sizeBytes();
      }
      room += (drives - listed) * set.model(drives).sizeBytes();
    } else {
      room = set.arrangement().usableDrives(drives) * set.driveBytes();
    }
    return room * fill * SLACK;
  }

  private OptionalInt needed(double bytes) {
    if (!isShelf()) {
      return set.arrangement().drivesFor(bytes, fill * set.driveBytes());
    }
    for (int drives = 1; drives <= set.drives(); drives++) {
      if (bytes <= limit(drives)) {
        return OptionalInt.of(drives);
      }
    }
    double beyond = bytes - limit(set.drives());
    OptionalInt more =
        Arrangement.SHELF.drivesFor(beyond, fill * set.model(set.drives()).sizeBytes());
    return more.isEmpty() ? more : OptionalInt.of(set.drives() + more.getAsInt());
  }
}
