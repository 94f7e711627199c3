package lastcopy.cli.story;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import lastcopy.scenario.Units;

/**
 * Times of a story in words: days counted from the start, or the dates of a calendar.
 *
 * @param start the date of hour 0, if one was given
 * @param horizonHours where the story ends
 */
public record StoryClock(Optional<LocalDate> start, double horizonHours) {

  private static final int MINUTES = 60;
  private static final int MINUTES_PER_DAY = 24 * MINUTES;

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

  private LocalDateTime at(double hours) {
    return start.orElseThrow().atStartOfDay().plusMinutes(minutes(hours));
  }

  /** An hour of the day as a clock shows it, such as {@code 20:30}. */
  static String ofDay(double hours) {
    long minute = Math.round(hours * MINUTES);
    return String.format(Locale.ROOT, "%02d:%02d", minute / MINUTES, minute % MINUTES);
  }

  /** A little slack, so that 14:05 stays so when it is a rounding error below. */
  private static long minutes(double hours) {
    return (long) Math.floor(hours * MINUTES + 1e-6);
  }
}
