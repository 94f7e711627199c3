package lastcopy.charts;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Labels of ticks: numbers that are only written, in words of their own. */
abstract class Ticks extends NumberFormat {

  private static final long serialVersionUID = 1L;

  /** The label of a number. */
  abstract String label(double number);

  @Override
  public final StringBuffer format(double number, StringBuffer to, FieldPosition position) {
    return to.append(label(number));
  }

  @Override
  public final StringBuffer format(long number, StringBuffer to, FieldPosition position) {
    return format((double) number, to, position);
  }

  @Override
  public final Number parse(String source, ParsePosition position) {
    throw new UnsupportedOperationException("ticks are only written");
  }
}
