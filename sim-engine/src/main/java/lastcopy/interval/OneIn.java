package lastcopy.interval;

import java.util.Locale;

/** A small chance as a layman says it: 1 in so many. */
public final class OneIn {

  private static final String[] NAMES = {"", " million", " billion", " trillion"};

  private OneIn() {}

  /**
   * The words, such as {@code 1 in 350} or {@code 1 in 8.33 million}: never less than the chance,
   * to three digits.
   *
   * @param chance above 0, at most 1
   */
  public static String words(double chance) {
    return "1 in " + many(chance);
  }

  /** How many, such as {@code 8.33 million}. */
  public static String many(double chance) {
    double many = Math.min(1 / chance, 999e12);
    double digit = Math.pow(10, Math.max(0, Math.floor(Math.log10(many)) - 2));
    double whole = Math.floor(many / digit * (1 + 1e-12)) * digit;
    int name = 0;
    double shown = whole;
    if (whole >= 1e6) {
      name = (int) (Math.log10(whole * (1 + 1e-12)) / 3) - 1;
      shown = whole / Math.pow(1_000, name + 1.0);
    }
    String number =
        String.format(Locale.ROOT, "%,.2f", shown).replaceFirst("\\.0+$|(?<=\\.[0-9])0$", "");
    return number + NAMES[name];
  }
}
