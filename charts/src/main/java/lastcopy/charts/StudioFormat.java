package lastcopy.charts;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Ticks in studios: grouped, with decimals only where they are needed. */
final class StudioFormat extends NumberFormat {

  private static final long serialVersionUID = 1L;

  @Override
  public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
    return to.append(ByteUnit.digits(number));
  }

  @Override
  public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
    return format((double) number, to, position);
  }

  @Override
  public Number parse(String source, ParsePosition position) {
    throw new UnsupportedOperationException("ticks are only written");
  }
}
