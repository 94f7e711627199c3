package lastcopy.charts;

import java.util.Locale;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;

/**
 * Ages on an axis, in the largest unit of which the oldest has at least two.
 *
 * @param name of the unit
 * @param hours how long it is
 */
record AgeAxis(String name, double hours) {

  private static final double DAY = 24;
  private static final double MONTH = 730;
  private static final double YEAR = 8_760;

  /** The unit for an oldest age in hours. */
  static AgeAxis upTo(double oldest) {
    if (oldest >= 2 * YEAR) {
      return new AgeAxis("years", YEAR);
    }
    if (oldest >= 2 * MONTH) {
      return new AgeAxis("months", MONTH);
    }
    return oldest >= 2 * DAY ? new AgeAxis("days", DAY) : new AgeAxis("hours", 1);
  }

  /** What stands at the axis. */
  String label() {
    return String.format(Locale.ROOT, "Age of the drive in %s", name);
  }

  /** From new to an age of this unit. */
  NumberAxis axis(double to) {
    NumberAxis axis = new NumberAxis(label());
    axis.setRange(0, to);
    if (to >= 3) {
      axis.setTickUnit(new NumberTickUnit(Math.ceil(to / 12)));
    }
    axis.setNumberFormatOverride(new StudioFormat());
    return axis;
  }
}
