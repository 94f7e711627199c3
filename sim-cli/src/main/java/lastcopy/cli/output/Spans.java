package lastcopy.cli.output;

import lastcopy.scenario.Units;
import lastcopy.words.ByteUnit;

/** Lengths of time in words. */
public final class Spans {

  private static final int MINUTES = 60;

  /** From here on a span is told in days, then in months, then in years. */
  private static final double DAYS_FROM = 48;

  private static final double MONTHS_FROM = 90 * Units.HOURS_PER_DAY;
  private static final double YEARS_FROM = 24 * Units.HOURS_PER_MONTH;

  private Spans() {}

  /** After how long something is over, such as {@code at once} or {@code 2.5 days}. */
  public static String after(double hours) {
    return hours == 0 ? "at once" : span(hours);
  }

  /** A length of time, such as {@code 9 hours} or {@code 2.5 days}; at least 0. */
  public static String span(double hours) {
    if (hours * MINUTES <= 0.5) {
      return "under a minute";
    }
    if (hours < 1) {
      return number(Math.rint(hours * MINUTES), "minute");
    }
    if (hours < DAYS_FROM) {
      return number(oneDecimal(hours), "hour");
    }
    if (hours < MONTHS_FROM) {
      return number(oneDecimal(hours / Units.HOURS_PER_DAY), "day");
    }
    return hours < YEARS_FROM
        ? number(Math.rint(hours / Units.HOURS_PER_MONTH), "month")
        : number(oneDecimal(hours / Units.HOURS_PER_YEAR), "year");
  }

  /** A period as it stands after "every", such as {@code day} or {@code 7 days}. */
  public static String period(double hours) {
    double days = hours / Units.HOURS_PER_DAY;
    if (days == 1) {
      return "day";
    }
    return days == Math.rint(days) ? number(days, "day") : span(hours);
  }

  private static double oneDecimal(double value) {
    return value < 10 ? Math.rint(value * 10) / 10 : Math.rint(value);
  }

  private static String number(double value, String unit) {
    return ByteUnit.digits(value) + " " + unit + (value == 1 ? "" : "s");
  }
}
