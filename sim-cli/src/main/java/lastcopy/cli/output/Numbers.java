package lastcopy.cli.output;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lastcopy.interval.Estimate;
import lastcopy.words.ByteUnit;
import lastcopy.words.OutOf;

/** Numbers in words and in files. */
public final class Numbers {

  /** Up to here every whole double is written without an exponent. */
  private static final double LARGEST_WHOLE = 1e15;

  private static final String BELOW_ONE = "fewer than 1";

  private Numbers() {}

  /** Whether a number can be written as a whole number without loss. */
  static boolean isWhole(double value) {
    return value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE;
  }

  /** Unrounded, for a file; empty where it is not finite. */
  public static String exact(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    return isWhole(value) ? Long.toString((long) value) : Double.toString(value);
  }

  /** Unrounded, for a file; empty where there is none. */
  public static String exact(OptionalDouble value) {
    return exact(value.orElse(Double.NaN));
  }

  /** A chance as studios with its interval, such as {@code 70 (68 to 72)}. */
  public static String studios(Estimate chance, OutOf outOf) {
    return belowOne(chance, outOf) ? BELOW_ONE : scaled(chance, outOf.count(1));
  }

  /** Whether a chance that is not 0 makes less than one studio. */
  public static boolean belowOne(Estimate chance, OutOf outOf) {
    double told = chance.onlyAtMost() ? chance.high() : chance.value();
    return told > 0 && outOf.count(told) < 1 - 1e-9;
  }

  /** A chance as studios without its interval. */
  public static String studiosAlone(Estimate chance, OutOf outOf) {
    if (belowOne(chance, outOf)) {
      return BELOW_ONE;
    }
    if (chance.onlyAtMost()) {
      return "at most " + ByteUnit.digits(outOf.count(chance.high()));
    }
    return fixed(outOf.count(chance.value()), decimals(chance, outOf.count(1)));
  }

  /** An amount of data with its interval, such as {@code 110 GB (108 to 112)}. */
  public static String bytes(Estimate amount) {
    if (!amount.seen() || amount.value() == 0) {
      return amount.high() > 0 ? "at most " + ByteUnit.format(amount.high()) : "none";
    }
    ByteUnit unit = ByteUnit.of(amount.value());
    return String.format(
        Locale.ROOT,
        "%s %s (%s to %s)",
        ByteUnit.digits(unit.in(amount.value())),
        unit.symbol(),
        ByteUnit.digits(unit.in(amount.low())),
        ByteUnit.digits(unit.in(amount.high())));
  }

  /** An amount of money with its interval, such as {@code EUR 1,035 (1,017 to 1,053)}. */
  public static String money(Estimate amount, Optional<String> currency) {
    String label = currency.map(name -> name + " ").orElse("");
    return amount.seen()
        ? label + withRange(amount, 1, decimals(amount, 1))
        : "at most " + label + ByteUnit.digits(amount.high());
  }

  /** A plain figure with its interval, to one decimal at most. */
  public static String figure(Estimate figure) {
    return figure.seen()
        ? withRange(figure, 1, Math.min(1, decimals(figure, 1)))
        : "at most " + ByteUnit.digits(figure.high());
  }

  /** Numbers to so many decimals as the interval supports, two at most. */
  private static String scaled(Estimate estimate, double factor) {
    return estimate.onlyAtMost()
        ? "at most " + ByteUnit.digits(estimate.high() * factor)
        : withRange(estimate, factor, decimals(estimate, factor));
  }

  private static String withRange(Estimate estimate, double factor, int decimals) {
    if (estimate.high() == estimate.low()) {
      return ByteUnit.digits(estimate.value() * factor);
    }
    String value = fixed(estimate.value() * factor, decimals);
    String low = fixed(estimate.low() * factor, decimals);
    String high = fixed(estimate.high() * factor, decimals);
    // An interval that rounding closes says nothing more.
    return low.equals(high) ? value : value + " (" + low + " to " + high + ")";
  }

  /** The interval alone, such as {@code 68 to 72}; empty for an exact figure. */
  public static Optional<String> range(Estimate estimate, double factor) {
    if (estimate.high() == estimate.low()) {
      return Optional.empty();
    }
    int decimals = decimals(estimate, factor);
    return Optional.of(
        fixed(estimate.low() * factor, decimals)
            + " to "
            + fixed(estimate.high() * factor, decimals));
  }

  /** How many decimals the width of an interval supports. */
  public static int decimals(Estimate estimate, double factor) {
    double half = (estimate.high() - estimate.low()) / 2 * factor;
    return half >= 0.95 || half == 0 ? 0 : half >= 0.095 ? 1 : 2;
  }

  /** A number to so many decimals, grouped; never a negative zero. */
  public static String fixed(double number, int decimals) {
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", number);
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
  }
}
