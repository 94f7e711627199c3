package lastcopy.cli.scenario.value;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.law.Exponential;
import lastcopy.law.Law;
import lastcopy.law.Never;
import lastcopy.scenario.Rate;
import lastcopy.scenario.Units;

/**
 * A yearly chance, or a rate.
 *
 * @param value a probability in [0, 1), or events per year
 * @param probability whether it is a probability of at least one event within a year
 */
public record Chance(double value, boolean probability) {
  static final String EXAMPLE = "a chance such as 2 %/year, or a rate such as 0.02 per year";

  /** Stands in for a mistake. */
  static final Chance STAND_IN = new Chance(0.01, true);

  private static final Pattern SHARE =
      Pattern.compile("(?:%|percent) ?(?:/|per) ?(month|week|day)");

  private static final Map<String, Double> PER_YEAR = new LinkedHashMap<>();

  static {
    PER_YEAR.put("per year", 1.0);
    PER_YEAR.put("per month", Units.HOURS_PER_YEAR / Units.HOURS_PER_MONTH);
    PER_YEAR.put("per week", Units.HOURS_PER_YEAR / Units.HOURS_PER_WEEK);
    PER_YEAR.put("per day", Units.HOURS_PER_YEAR / Units.HOURS_PER_DAY);
  }

  /** The units, for suggestions only: a probability has no factor. */
  public static final UnitTable UNITS = units();

  private static UnitTable units() {
    Map<String, Double> units = new LinkedHashMap<>(PER_YEAR);
    units.put("%/year", Double.NaN);
    return new UnitTable(
        EXAMPLE, units, Map.of("%", "%/year", "/year", "per year", "percent/year", "%/year"));
  }

  /** What was probably meant, or an empty string. A share of a month is no unit, but a rate. */
  static String suggest(double number, String unit) {
    Matcher shorter = SHARE.matcher(unit);
    if (!shorter.matches()) {
      return unit.startsWith("%") ? "%/year" : UNITS.suggest(unit);
    }
    return BigDecimal.valueOf(number).movePointLeft(2).stripTrailingZeros().toPlainString()
        + " per "
        + shorter.group(1);
  }

  /** A chance of a number with its unit; empty if the unit is none of a chance. */
  static Optional<Chance> of(double number, String unit) {
    if (isPercent(unit)) {
      return Optional.of(new Chance(number / 100, true));
    }
    return Optional.ofNullable(PER_YEAR.get(unit))
        .map(factor -> new Chance(number * factor, false));
  }

  private static boolean isPercent(String unit) {
    return unit.equals("%/year") || unit.equals("% per year");
  }

  boolean holds() {
    return value >= 0 && (probability ? value < 1 : Double.isFinite(value));
  }

  /** What its number may be. */
  String words() {
    return probability ? "a chance from 0 to below 100 %/year" : "a rate of at least 0 per year";
  }

  /** As the rate of a Poisson process. */
  public Rate rate() {
    if (!Double.isFinite(Units.HOURS_PER_YEAR / yearly())) {
      return Rate.NONE; // so rare that a mean is beyond all numbers
    }
    return probability ? Rate.ofYearlyProbability(value) : Rate.perYear(value);
  }

  /** The law of a constant hazard; never, if it is 0. */
  public Law law() {
    if (!Double.isFinite(1 / yearly())) {
      return new Never(); // also where it is so rare that a mean is beyond all numbers
    }
    return probability
        ? Exponential.ofYearlyProbability(value)
        : new Exponential(Units.HOURS_PER_YEAR / value);
  }

  /** The hazard per year. */
  double hazard() {
    return probability ? -StrictMath.log1p(-value) : value;
  }

  /** The probability of at least one event within a year. */
  public double yearly() {
    return probability ? value : -StrictMath.expm1(-value);
  }
}
