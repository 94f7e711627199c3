package lastcopy.words;

import java.math.BigDecimal;
import java.math.MathContext;

/** Shares as percentages that somebody asked for, such as a confidence or a limit. */
public final class PercentWords {

  /** More than anybody asks for, and too few to show what a double adds to it. */
  private static final MathContext ASKED = new MathContext(12);

  private PercentWords() {}

  /** A share as it was asked for, not rounded: {@code 95}, {@code 99.999} or {@code 0.001}. */
  public static String of(double share) {
    return new BigDecimal(100 * share).round(ASKED).stripTrailingZeros().toPlainString();
  }
}
