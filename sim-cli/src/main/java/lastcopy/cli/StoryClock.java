package lastcopy.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import lastcopy.charts.ByteUnit;
import lastcopy.scenario.Units;

/**
 * Times of a story in words: days counted from the start, or the dates of a calendar.
 *
 * @param start the date of hour 0, if one was given
 * @param horizonHours where the story ends
 */
record StoryClock(Optional<LocalDate> start, double horizonHours) {

  private static final int MINUTES = 60;
  private static final int MINUTES_PER_DAY = 24 * MINUTES;

  /** From here on a span is told in days, then in months, then in years. */
  private static final double DAYS_FROM = 48;

  private static final double MONTHS_FROM = 90 * Units.HOURS_PER_DAY;
  private static final double YEARS_FROM = 24 * Units.HOURS_PER_MONTH;

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  /** The heading of the year that an hour is in. */
  String year(double hours) {
    return start.isPresent()
        ? Integer.toString(at(hours).getYear())
        : "Year " + (1 + (long) Math.floor(hours / Units.HOURS_PER_YEAR));
  }

  /** Day and time under the heading of a year, such as {@code day 487 14:05}. */
  String stamp(double hours) {
    if (start.isPresent()) {
      return at(hours).format(STAMP);
    }
    long minute = minutes(hours) % MINUTES_PER_DAY;
    return String.format(
        Locale.ROOT, "%s %02d:%02d", day(hours), minute / MINUTES, minute % MINUTES);
  }

  /** A day anywhere in a sentence, such as {@code day 487} or {@code 3 Apr 2027}. */
  String day(double hours) {
    return start.isPresent()
        ? at(hours).format(DAY)
        : String.format(Locale.ROOT, "day %,d", 1 + minutes(hours) / MINUTES_PER_DAY);
  }

  /** A date and time for a program, where there is a calendar. */
  Optional<String> iso(double hours) {
    return start.map(date -> at(hours).format(DateTimeFormatter.ISO_LOCAL_DATE_TIME));
  }

  /** After how long something is over, such as {@code at once} or {@code 2.5 days}. */
  static String after(double hours) {
    return hours == 0 ? "at once" : span(hours);
  }

  /** A length of time, such as {@code 9 hours} or {@code 2.5 days}; at least 0. */
  static String span(double hours) {
    if (hours * MINUTES < 0.5) {
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
  static String period(double hours) {
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

  private LocalDateTime at(double hours) {
    return start.orElseThrow().atStartOfDay().plusMinutes(minutes(hours));
  }

  /** A little slack, so that 14:05 stays so when it is a rounding error below. */
  private static long minutes(double hours) {
    return (long) Math.floor(hours * MINUTES + 1e-6);
  }
}
