package lastcopy.cli.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import lastcopy.interval.Estimate;

/**
 * Rates in words, as chances to fail within a year.
 *
 * @param year how long a year is in the unit of the records
 */
record Yearly(double year) {

  /** Above it a chance a year says less than a number of failures. */
  private static final double MOST_CHANCE = 0.9;

  /** The chance to fail within a year. */
  double chance(double rate) {
    return -Math.expm1(-rate * year);
  }

  /** Whether a rate is told as a chance. */
  boolean asChance(double rate) {
    return chance(rate) <= MOST_CHANCE;
  }

  /** A rate, such as {@code 1.9 % a year}. */
  String told(double rate) {
    return asChance(rate)
        ? percent(chance(rate)) + " % a year"
        : number(rate * year, 2) + " failures a drive and year";
  }

  /** An interval, such as {@code 1.2 to 4.9 % a year}. */
  String range(double low, double high) {
    return asChance(high)
        ? percent(chance(low)) + " to " + percent(chance(high)) + " % a year"
        : number(low * year, 2) + " to " + number(high * year, 2) + " failures a drive and year";
  }

  /** Drives of 100 with their interval, such as {@code 11 (6 to 18)}; after none at most. */
  static String ofHundred(Estimate chance) {
    if (!chance.seen()) {
      return "at most " + percent(chance.high());
    }
    return percent(chance.value())
        + " ("
        + percent(chance.low())
        + " to "
        + percent(chance.high())
        + ")";
  }

  /** A chance as a percentage to two digits, without the sign. */
  static String percent(double chance) {
    double percent = 100 * chance;
    return percent > 99 && percent < 100 ? "99+" : number(percent, 2);
  }

  /** A number to so many digits, and all those before the point; without idle zeros. */
  static String number(double value, int digits) {
    if (!Double.isFinite(value) || value == 0) {
      return value == 0 ? "0" : "any number";
    }
    int decimals = new BigDecimal(value).round(new MathContext(digits)).scale();
    String text = String.format(Locale.ROOT, "%,." + Math.max(0, decimals) + "f", value);
    return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
  }
}
