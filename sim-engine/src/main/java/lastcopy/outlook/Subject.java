package lastcopy.outlook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import lastcopy.footage.FeedForecast;
import lastcopy.footage.ShootTable;
import lastcopy.scenario.Copy;
import lastcopy.scenario.Layout;
import lastcopy.scenario.Studio;
import lastcopy.scenario.Units;

/**
 * What the rules of warnings look at, and where they leave what they find.
 *
 * @param studio the studio
 * @param layout the layout that is warned about
 * @param copies what is sure about each copy
 * @param shoots when shoots come
 * @param forecast what copies hold while nothing fails
 * @param found what was found so far
 */
record Subject(
    Studio studio,
    Layout layout,
    List<CopyOutlook> copies,
    ShootTable shoots,
    FeedForecast forecast,
    List<Warning> found) {

  /** Warns about a copy, or with an empty id about the layout; the text is a format. */
  @SuppressWarnings("AnnotateFormatMethod") // the annotation is in no dependency of the engine
  void warn(String id, String copy, String text, Object... values) {
    found.add(new Warning(id, copy, String.format(Locale.ROOT, text, values)));
  }

  boolean isWorkingCopy(Copy copy) {
    return copy.equals(layout.workingCopy());
  }

  /** The most bytes that are shot within a time in hours. */
  double mostShotWithin(double hours) {
    double most = 0;
    for (int k = 0; k < shoots.count(); k++) {
      double before = shoots.total(Math.max(0, shoots.time(k) - hours));
      most = Math.max(most, shoots.end(k) - before);
    }
    return most;
  }

  double largestShoot() {
    double largest = 0;
    for (int k = 0; k < shoots.count(); k++) {
      largest = Math.max(largest, shoots.size(k));
    }
    return largest;
  }

  /** The most footage that is to be kept at any time, in bytes. */
  double mostFootage() {
    Room room = new Room(studio, shoots);
    double most = shoots.onHand();
    for (int k = 0; k < shoots.count(); k++) {
      most = Math.max(most, room.footage(shoots.time(k)));
    }
    return most;
  }

  /** All footage that is ever shot, which a shelf keeps. */
  double allFootage() {
    return shoots.total(studio.horizonHours());
  }

  /** An amount in words, such as {@code 2.4 TB}. */
  static String bytes(double amount) {
    return amount >= Units.TB
        ? String.format(Locale.ROOT, "%.1f TB", amount / Units.TB)
        : String.format(Locale.ROOT, "%.0f GB", amount / Units.GB);
  }

  /** A time in words to three digits, in days from three of them on. */
  static String timeExactly(double hours) {
    double days = hours / Units.HOURS_PER_DAY;
    if (Double.isInfinite(hours)) {
      return "ever";
    }
    return days >= 3 ? digits(days) + " days" : digits(hours) + " h";
  }

  private static String digits(double number) {
    return new BigDecimal(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** A number of years in words, such as {@code 1 year} or {@code 2.5 years}. */
  static String years(double years) {
    return digits(years) + (years == 1 ? " year" : " years");
  }

  /** A time in words, in days from three of them on. */
  static String time(double hours) {
    double days = hours / Units.HOURS_PER_DAY;
    return days >= 3
        ? String.format(Locale.ROOT, "%.0f days", days)
        : String.format(Locale.ROOT, "%.0f h", hours);
  }

  /** The chance that a Poisson process strikes within a year, in words such as {@code 1.5 %}. */
  static String yearly(double perHour) {
    return percent(-StrictMath.expm1(-perHour * Units.HOURS_PER_YEAR));
  }

  static String percent(double share) {
    if (share < 0.000995 && share > 0) {
      return new BigDecimal(100 * share).round(new MathContext(2)).toPlainString() + " %";
    }
    return String.format(Locale.ROOT, share < 0.0995 ? "%.1f %%" : "%.0f %%", 100 * share);
  }
}
