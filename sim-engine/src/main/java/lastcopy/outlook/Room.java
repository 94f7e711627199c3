package lastcopy.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Arrangement;
import lastcopy.scenario.Medium;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/** How much footage there is to keep, over time. Amounts are bytes. */
public final class Room {

  private final Studio studio;
  private final ShootTable shoots;

  Room(Studio studio, ShootTable shoots) {
    this.studio = studio;
    this.shoots = shoots;
  }

  /**
   * The footage at one time.
   *
   * @param years since the start
   * @param footageBytes on hand and shot by then, without what has aged out
   */
  public record Year(double years, double footageBytes) {}

  /** Footage to keep at a time in hours: without what has aged out. */
  double footage(double hours) {
    double since = hours - studio.footage().keepHours().orElse(Double.POSITIVE_INFINITY);
    return shoots.total(hours) - (since < 0 ? 0 : shoots.total(since));
  }

  /** At the start, at the end of each whole year, and at the horizon. */
  List<Year> byYear() {
    List<Year> years = new ArrayList<>();
    for (int year = 0; year < studio.years(); year++) {
      years.add(new Year(year, footage(year * Units.HOURS_PER_YEAR)));
    }
    years.add(new Year(studio.years(), footage(studio.horizonHours())));
    return years;
  }

  /**
   * The first time in years at which what a set holds exceeds its room: of a shelf all that was
   * ever shot, since nothing ages out there.
   */
  OptionalDouble fills(Medium.DriveSet set) {
    boolean keepsAll = set.arrangement() == Arrangement.SHELF;
    if (shoots.onHand() > set.usableBytes()) {
      return OptionalDouble.of(0);
    }
    for (int k = 0; k < shoots.count(); k++) {
      double holds = keepsAll ? shoots.end(k) : footage(shoots.time(k));
      if (holds > set.usableBytes()) {
        return OptionalDouble.of(shoots.time(k) / Units.HOURS_PER_YEAR);
      }
    }
    return OptionalDouble.empty();
  }
}
