package lastcopy.prove;

import java.math.BigDecimal;

/**
 * What a figure of this program is held against.
 *
 * @param kind what sort of value it is
 * @param value the value
 * @param text the value as it is printed where it comes from, or empty for one computed here
 * @param low the least figure that agrees with it
 * @param high the largest figure that agrees with it
 */
public record Reference(Kind kind, double value, String text, double low, double high) {

  /** What rounding of doubles may change in a closed form, as a share. */
  private static final double ROUNDING = 1e-9;

  /** Sorts of reference. */
  public enum Kind {
    /** Printed in a source, or computed from its formula by another tool. */
    PUBLISHED,
    /** A closed form or a Markov chain, solved here beside the figure. */
    EXACT,
    /** An approximation that a source prints or a rule of thumb: a known deviation is right. */
    APPROXIMATION
  }

  /** Checks the order. */
  public Reference {
    if (!(low <= high) || Double.isNaN(value)) {
      throw new IllegalArgumentException("a reference needs a range: " + low + " to " + high);
    }
  }

  /**
   * A printed value: a figure agrees if it rounds to it, or would with one digit more of rounding.
   *
   * @param text such as {@code 0.0333} or {@code 8.2e5}; its digits say how precise it is
   */
  public static Reference published(String text) {
    return within(new BigDecimal(text), text);
  }

  private static Reference within(BigDecimal printed, String text) {
    // Half a unit of the last digit, and a little for a figure that lies on that edge.
    double half = 0.5 * printed.ulp().doubleValue() * (1 + ROUNDING);
    double value = printed.doubleValue();
    return new Reference(Kind.PUBLISHED, value, text, value - half, value + half);
  }

  /** A value from a closed form or a chain. */
  public static Reference exact(double value) {
    double slack = Math.abs(value) * ROUNDING;
    return new Reference(Kind.EXACT, value, "", value - slack, value + slack);
  }

  /**
   * A printed approximation: a figure agrees if its deviation is the expected one.
   *
   * @param text the value as printed
   * @param least the least deviation expected, as a share of the value, such as −0.01
   * @param most the largest deviation expected
   */
  public static Reference approximation(String text, double least, double most) {
    return approximation(new BigDecimal(text).doubleValue(), text, least, most);
  }

  /** An approximation by a formula that is computed here. */
  public static Reference approximation(double value, double least, double most) {
    return approximation(value, "", least, most);
  }

  private static Reference approximation(double value, String text, double least, double most) {
    return new Reference(Kind.APPROXIMATION, value, text, value * (1 + least), value * (1 + most));
  }

  /** Whether a figure that lies between two ends may agree with it. */
  boolean agrees(double from, double to) {
    return from <= high && low <= to;
  }
}
