package lastcopy.cli.scenario.value;

import lastcopy.scenario.Units;

/** What a number may be. */
public enum Bound {
  ABOVE_ZERO("a number above 0"),
  AT_LEAST_ZERO("a number of at least 0"),
  SHARE("a number from 0 to 1"),
  PART("a number from 0 to below 1"),
  ABOVE_MINUS_ONE("a yearly growth above -100 %"),
  YEARS("a number above 0 and at most 1000"),
  SHAPE("a number from 0.01 to 1000"),
  SPREAD("a number above 0 and at most 10"),
  FACTOR("a number from 0 to 1000000"),
  TIMES("a number from 0.000001 to 1000000"),
  MONEY("a number from 0 to 1000000000000"),
  WATTS("a power from 0 to 1000000 W"),
  OWN_TIME("a time from 0 to a year");

  private static final double MOST_YEARS = 1_000;
  private final String words;

  Bound(String words) {
    this.words = words;
  }

  /** What a message says is accepted. */
  String words() {
    return words;
  }

  boolean holds(double value) {
    return Double.isFinite(value)
        && switch (this) {
          case ABOVE_ZERO -> value > 0;
          case AT_LEAST_ZERO -> value >= 0;
          case SHARE -> value >= 0 && value <= 1;
          case PART -> value >= 0 && value < 1;
          case ABOVE_MINUS_ONE -> value > -1;
          case YEARS -> value > 0 && value <= MOST_YEARS;
          case SHAPE -> value >= 0.01 && value <= 1_000;
          case SPREAD -> value > 0 && value <= 10;
          case FACTOR, WATTS -> value >= 0 && value <= 1e6;
          case TIMES -> value >= 1e-6 && value <= 1e6;
          case MONEY -> value >= 0 && value <= 1e12;
          case OWN_TIME -> value >= 0 && value <= Units.HOURS_PER_YEAR;
        };
  }
}
