package lastcopy.words;

import java.util.Locale;

/** Decimal units of data for readers. */
public enum ByteUnit {
  /** 1 byte. */
  B(1),
  /** 1,000 bytes. */
  KB(1e3),
  /** 1,000,000 bytes. */
  MB(1e6),
  /** 1,000 MB. */
  GB(1e9),
  /** 1,000 GB. */
  TB(1e12),
  /** 1,000 TB. */
  PB(1e15);

  private final double bytes;

  ByteUnit(double bytes) {
    this.bytes = bytes;
  }

  /** The largest unit of which an amount in bytes holds at least one; B below one byte. */
  public static ByteUnit of(double amount) {
    ByteUnit found = B;
    for (ByteUnit unit : values()) {
      if (Math.abs(amount) >= unit.bytes * (1 - 1e-9)) {
        found = unit;
      }
    }
    return found;
  }

  /** An amount in bytes in this unit. */
  public double in(double amount) {
    return amount / bytes;
  }

  /** An amount in bytes to three significant digits with its unit, such as {@code 2.5 TB}. */
  public static String format(double amount) {
    ByteUnit unit = of(amount);
    return digits(unit.in(amount)) + " " + unit.symbol();
  }

  /** The symbol. */
  public String symbol() {
    return this == KB ? "kB" : name();
  }

  /** A number to three significant digits without idle zeros. */
  public static String digits(double number) {
    double size = Math.abs(number);
    int decimals = size >= 100 ? 0 : size >= 10 ? 1 : 2;
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", number);
    return decimals == 0 ? text : text.replaceFirst("\\.?0+$", "");
  }
}
