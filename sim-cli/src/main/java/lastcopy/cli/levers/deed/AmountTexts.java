package lastcopy.cli.levers.deed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lastcopy.scenario.Units;

/** AmountTexts as they stand in a file. */
final class AmountTexts {
  private static final MathContext DIGITS = new MathContext(10);
  private static final Pattern PARTS = Pattern.compile("([-+.\\deE]+)\\s*(.*)");

  private AmountTexts() {}

  /** A number without an exponent and without needless digits. */
  static String number(double value) {
    return BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** A time in days where that is whole, else in hours. */
  static String time(double hours) {
    double days = hours / Units.HOURS_PER_DAY;
    if (days != Math.rint(days)) {
      return number(hours) + " h";
    }
    return number(days) + (days == 1 ? " day" : " days");
  }

  /** An amount with its unit, as it is written, times a factor; empty if it is none. */
  static Optional<String> times(String text, double factor) {
    Matcher parts = PARTS.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          number(Double.parseDouble(parts.group(1)) * factor) + " " + parts.group(2));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
