package lastcopy.cli.fit;

import lastcopy.scenario.Units;

/** Units of ages in a file of records, and of the results. */
enum AgeUnit {
  hours(1),
  days(Units.HOURS_PER_DAY),
  months(Units.HOURS_PER_MONTH),
  years(Units.HOURS_PER_YEAR);

  private final double length;

  AgeUnit(double length) {
    this.length = length;
  }

  /** An age of this unit in hours. */
  double toHours(double age) {
    return age * length;
  }

  /** Hours in this unit. */
  double ofHours(double hours) {
    return hours / length;
  }

  /** How long a year is. */
  double year() {
    return Units.HOURS_PER_YEAR / length;
  }
}
